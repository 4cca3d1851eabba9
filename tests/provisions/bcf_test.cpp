// SPDX-License-Identifier: GPL-3.0-or-later
#include "provisions/bcf.h"

#include <gtest/gtest.h>

#include <cstdlib>
#include <ctime>
#include <filesystem>
#include <fstream>

#include "base/file_io.h"
#include "provisions/name_guid.h"
#include "tests/provisions/bcf_archive.h"
#include "tests/provisions/made_audit.h"

namespace seamward::test {

namespace {

using Names = std::vector<std::string>;

BcfArchive small_archive() { return BcfArchive(bcf_bytes(small_audit(), small_settings())); }

/// RFC 9562, appendix A.4, and the documentation of Python's uuid module.
TEST(NameGuid, AgreesWithPublishedOnes) {
    const std::string dns = "6ba7b810-9dad-11d1-80b4-00c04fd430c8";
    EXPECT_EQ(name_guid(dns, "www.example.com"), "2ed6657d-e927-568b-95e1-2665a8aea6a2");
    EXPECT_EQ(name_guid(dns, "python.org"), "886313e1-3b8a-5372-9b90-0c9aee199e5d");
    EXPECT_THROW(static_cast<void>(name_guid("no guid", "x")), std::invalid_argument);
}

TEST(Bcf, HasAFolderForEachFinding) {
    const BcfArchive archive = small_archive();
    ASSERT_EQ(archive.topics.size(), 3U);
    Names due{"bcf.version", "project.bcfp", "extensions.xsd"};
    for (const std::string& topic : archive.topics) {
        for (const char* file : {"/", "/markup.bcf", "/viewpoint.bcfv"}) due.push_back(topic + file);
    }
    EXPECT_EQ(archive.names, due);
    EXPECT_EQ(archive.xml("bcf.version").attribute("VersionId"), "2.1");
    EXPECT_EQ(only(archive.xml("project.bcfp"), "Name"), "Larkspur Court, unit 4");
    EXPECT_EQ(only(archive.xml("project.bcfp"), "ExtensionSchema"), "extensions.xsd");
}

TEST(Bcf, SaysWhatTheFindingSays) {
    const PageElement markup = small_archive().markup(0);
    const PageElement& topic = *markup.named("Topic").front();
    EXPECT_EQ(topic.attribute("TopicType"), "Provision not met");
    EXPECT_EQ(topic.attribute("TopicStatus"), "Open");
    EXPECT_EQ(only(topic, "Title"), "Weep screed above earth: south side");
    EXPECT_EQ(only(topic, "Priority"), "High");
    EXPECT_EQ(only(topic, "Index"), "0");
    EXPECT_EQ(all_of(topic, "Labels"), (Names{"Walls", "IRC", "screed-above-earth"}));
    EXPECT_EQ(only(topic, "CreationDate"), "2026-03-09T12:00:00Z");
    EXPECT_EQ(only(topic, "CreationAuthor"), "inspector@example.org");
    EXPECT_EQ(
        only(topic, "Description"),
        "It is 60 mm above earth; 102 mm are due.\n\nSource: IRC 2021, R703.7.2.1\n\nThe local code and its official decide.");
    EXPECT_EQ(only(markup, "Filename"), "unit-4.ifc");
    EXPECT_EQ(only(markup, "Viewpoint"), "viewpoint.bcfv");
    EXPECT_TRUE(markup.named("Snapshot").empty());
    EXPECT_EQ(markup.named("Viewpoints").front()->attribute("Guid"), small_archive().view(0).attribute("Guid"));
}

TEST(Bcf, WaysSayWhoGetsIn) {
    const PageElement markup = small_archive().markup(2);
    EXPECT_EQ(markup.named("Topic").front()->attribute("TopicType"), "Way in");
    EXPECT_EQ(all_of(markup, "Labels"), (Names{"House mouse", "way-in"}));
    EXPECT_EQ(only(markup, "Priority"), "High");
}

TEST(Bcf, NamesPartsByGlobalIdOrById) {
    const BcfArchive archive = small_archive();
    Names global, own;
    const PageElement view = archive.view(0);
    for (const PageElement* component : view.named("Component")) {
        const std::string id = component->attribute("IfcGuid");
        if (!id.empty()) global.push_back(id);
        EXPECT_EQ(component->children.empty(), !id.empty());
    }
    EXPECT_EQ(global, (Names{"0DWgwt6o1FOx7466fPk$jl", "3cUkl32yn9qRSPvBJVyWYp"}));
    EXPECT_EQ(only(view, "AuthoringToolId"), "south-screed");
    EXPECT_EQ(only(view, "OriginatingSystem"), "Seamward");
    EXPECT_EQ(view.named("Visibility").front()->attribute("DefaultVisibility"), "true");
    EXPECT_TRUE(archive.view(1).named("Component").empty()) << "no part is known";
    EXPECT_EQ(archive.view(2).named("Component").size(), 2U) << "the finding's and the way's, each once";
}

TEST(Bcf, LooksFromOutsideAndCutsAwayWhatStandsBefore) {
    const BcfArchive archive = small_archive();
    const PageElement screed = archive.view(0), hatch = archive.view(1);
    EXPECT_LT(numbers(screed, "CameraViewPoint")[1], -1) << "the south side, at least 1 m out";
    EXPECT_GT(numbers(screed, "CameraDirection")[1], 0.8) << "northward";
    EXPECT_EQ(only(screed, "FieldOfView"), "45");
    EXPECT_TRUE(screed.named("ClippingPlane").empty());
    EXPECT_EQ(hatch.named("ClippingPlane").size(), 1U);
}

TEST(Bcf, DrawsWaysFromGapToGapOrAlongTheirRoute) {
    BcfSettings settings = small_settings();
    const PageElement short_way = BcfArchive(bcf_bytes(small_audit(), settings)).view(2);
    ASSERT_EQ(short_way.named("Line").size(), 1U) << "of the gap in the middle no place is known";
    EXPECT_EQ(numbers(short_way, "StartPoint"), (std::vector<double>{0, 3, 0.1}));
    EXPECT_EQ(numbers(short_way, "EndPoint"), (std::vector<double>{2, 3, 1}));
    EXPECT_LT(numbers(short_way, "CameraViewPoint")[0], -1) << "from the west, where it enters";
    settings.sights.resize(3);
    settings.sights[2].route = {{0, 3, 0.1}, {0, 3, 0.1}, {0.1, 3, 0.5}, {2, 3, 1}};
    EXPECT_EQ(BcfArchive(bcf_bytes(small_audit(), settings)).view(2).named("Line").size(), 2U)
        << "a step of no length is no line";
}

TEST(Bcf, HoldsSnapshots) {
    BcfSettings settings = small_settings();
    const std::string png = std::string("\x89PNG\r\n\x1a\n\0\0", 10);
    settings.sights = {BcfSight{}, BcfSight{{}, {}, png}};
    const BcfArchive archive(bcf_bytes(small_audit(), settings));
    EXPECT_EQ(archive.bytes(archive.topics[1] + "/snapshot.png"), png);
    EXPECT_EQ(only(archive.markup(1), "Snapshot"), "snapshot.png");
    EXPECT_FALSE(archive.has(archive.topics[0] + "/snapshot.png"));
}

TEST(Bcf, IsNoViewWhereThereIsNothingToSee) {
    Audit audit = small_audit();
    audit.findings = {audit.findings[1]};
    audit.findings[0].at.reset();
    const BcfArchive archive(bcf_bytes(audit, {}));
    EXPECT_FALSE(archive.has(archive.topics[0] + "/viewpoint.bcfv"));
    EXPECT_TRUE(archive.markup(0).named("Viewpoints").empty());
    const BcfArchive with_house(bcf_bytes(audit, small_settings()));
    EXPECT_EQ(with_house.view(0).named("PerspectiveCamera").size(), 1U) << "the house as a whole";
}

TEST(Bcf, SpeaksSpanish) {
    BcfSettings settings = small_settings();
    settings.language = Language::spanish;
    const BcfArchive archive(bcf_bytes(small_audit(), settings));
    EXPECT_EQ(archive.markup(0).named("Topic").front()->attribute("TopicType"), "Requisito no cumplido");
    EXPECT_EQ(archive.markup(2).named("Topic").front()->attribute("TopicType"), "Camino de entrada");
    EXPECT_EQ(archive.markup(0).named("Topic").front()->attribute("TopicStatus"), "Open") << "programs act on it";
    EXPECT_EQ(only(archive.markup(0), "Priority"), "Alta");
    EXPECT_NE(only(archive.markup(0), "Description").find("Fuente: IRC 2021"), std::string::npos);
    EXPECT_EQ(all_of(archive.markup(2), "Labels"), (Names{"Ratón casero", "way-in"}));
    EXPECT_EQ(archive.topics, small_archive().topics) << "the same topics";
}

TEST(Bcf, TopicsKeepTheirGuidsInLaterAudits) {
    Audit later = small_audit();
    later.date = std::chrono::year(2027) / 1 / 1;
    later.findings.erase(later.findings.begin());
    const BcfArchive then = small_archive(), now(bcf_bytes(later, {}));
    EXPECT_EQ(now.topics, (Names{then.topics[1], then.topics[2]}));
    later.heading = "Larkspur Court, unit 5";
    EXPECT_NE(BcfArchive(bcf_bytes(later, {})).topics, now.topics);
}

/// In zones of other days and other summers; the program itself never asks for one.
TEST(Bcf, IsTheSameEverywhere) {
    const char* zone = std::getenv("TZ");
    const std::string kept = zone == nullptr ? "" : zone;
    std::vector<std::string> made;
    for (const char* other : {"UTC0", "Etc/GMT+12", "Pacific/Kiritimati", "MST7MDT"}) {
        setenv("TZ", other, 1);
        tzset();
        made.push_back(bcf_bytes(small_audit(), small_settings()));
    }
    zone == nullptr ? unsetenv("TZ") : setenv("TZ", kept.c_str(), 1);
    tzset();
    for (const std::string& bytes : made) EXPECT_EQ(bytes, made.front());
}

TEST(Bcf, RefusesWhatIsNoDay) {
    Audit audit = small_audit();
    audit.date = {};
    EXPECT_THROW(static_cast<void>(bcf_bytes(audit, {})), std::invalid_argument);
}

/// Info-ZIP's unzip shares no code with libzip.
TEST(Bcf, UnpacksWithUnzip) {
    namespace fs = std::filesystem;
    const fs::path folder = fs::path(testing::TempDir()) / "seamward-bcf";
    fs::remove_all(folder);
    fs::create_directories(folder);
    const std::string bytes = bcf_bytes(small_audit(), small_settings());
    std::ofstream(folder / "audit.bcf", std::ios::binary) << bytes;
    const std::string archive = "'" + (folder / "audit.bcf").string() + "'";
    ASSERT_EQ(std::system(("unzip -tqq " + archive).c_str()), 0);
    ASSERT_EQ(std::system(("unzip -qq " + archive + " -d '" + (folder / "out").string() + "'").c_str()), 0);
    const BcfArchive read(bytes);
    for (const auto& [name, content] : read.files) EXPECT_EQ(read_file(folder / "out" / name, name, 1U << 20U), content);
    fs::remove_all(folder);
}

}  // namespace

}  // namespace seamward::test
