// SPDX-License-Identifier: GPL-3.0-or-later
// Whatever an audit holds, its BCF file fits the schemas of the format and reads back by parsers of others.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <set>

#include "base/text.h"
#include "provisions/bcf.h"
#include "tests/provisions/bcf_archive.h"
#include "tests/provisions/made_audit.h"
#include "tests/provisions/schema.h"

namespace seamward::test {

namespace {

constexpr std::uint64_t audits = 300;

const Schema& schema(const std::string& name) {
    static const Schema markup("markup.xsd"), view("visinfo.xsd"), project("project.xsd"), version("version.xsd");
    if (name.ends_with("markup.bcf")) return markup;
    if (name.ends_with("viewpoint.bcfv")) return view;
    return name == "project.bcfp" ? project : version;
}

void expect_valid(const BcfArchive& archive) {
    for (const auto& [name, bytes] : archive.files) {
        if (name.ends_with(".png") || name.ends_with(".xsd")) continue;
        EXPECT_EQ(schema(name).faults(bytes), std::vector<std::string>{}) << name;
        EXPECT_TRUE(is_utf8(bytes)) << name;
    }
    // markup.xsd with the words of this file alone: all words that topics have are offered.
    const Schema own = Schema::from_text(archive.bytes("extensions.xsd"));
    for (const std::string& topic : archive.topics)
        EXPECT_EQ(own.faults(archive.bytes(topic + "/markup.bcf")), std::vector<std::string>{});
}

double size(const std::vector<double>& v) { return std::hypot(v[0], v[1], v[2]); }

void expect_sound(const BcfArchive& archive, const Audit& audit, Language language) {
    ASSERT_EQ(archive.topics.size(), audit.findings.size());
    EXPECT_EQ(std::set<std::string>(archive.topics.begin(), archive.topics.end()).size(), audit.findings.size());
    std::set<std::string> known;
    for (const AuditedPart& part : audit.parts) known.insert(part.global_id);
    for (std::size_t i = 0; i < archive.topics.size(); ++i) {
        EXPECT_EQ(archive.topics[i][14], '5') << "a name-based GUID";
        const PageElement markup = archive.markup(i);
        EXPECT_EQ(markup.named("Topic").front()->attribute("Guid"), archive.topics[i]);
        const std::string title = audit.findings[i].title.english();
        if (language == Language::english && !title.empty() && printable(title) == title &&
            title.find("\xef\xbf") == std::string::npos) {
            EXPECT_EQ(only(markup, "Title"), title) << "what is harmless stays as it is";
        }
        if (!archive.has(archive.topics[i] + "/viewpoint.bcfv")) continue;
        const PageElement view = archive.view(i);
        for (const PageElement* component : view.named("Component")) {
            const std::string id = component->attribute("IfcGuid");
            EXPECT_TRUE(id.empty() || known.contains(id)) << id;
        }
        if (view.named("PerspectiveCamera").empty()) continue;
        EXPECT_NEAR(size(numbers(view, "CameraDirection")), 1, 1e-6);
        EXPECT_NEAR(size(numbers(view, "CameraUpVector")), 1, 1e-6);
        EXPECT_LT(size(numbers(view, "CameraViewPoint")), 1e9);
    }
}

TEST(BcfSchemas, RefuseWhatIsWrong) {
    const Schema markup("markup.xsd");
    EXPECT_FALSE(markup.faults("<Markup/>").empty());
    EXPECT_FALSE(markup.faults("<Markup>").empty());
    EXPECT_FALSE(Schema("visinfo.xsd").faults("<VisualizationInfo Guid=\"x\"/>").empty());
}

TEST(BcfHostile, AlwaysFitsTheSchemas) {
    std::size_t topics = 0, views = 0;
    for (std::uint64_t seed = 0; seed < audits; ++seed) {
        SCOPED_TRACE(seed);
        RandomAudit random(seed);
        const Audit audit = random.hostile();
        const BcfSettings settings = random.hostile_settings(audit);
        const std::string bytes = bcf_bytes(audit, settings);
        EXPECT_EQ(bcf_bytes(audit, settings), bytes);
        const BcfArchive archive(bytes);
        expect_valid(archive);
        expect_sound(archive, audit, settings.language);
        topics += archive.topics.size();
        views += static_cast<std::size_t>(std::count_if(archive.names.begin(), archive.names.end(),
                                                        [](const std::string& name) { return name.ends_with(".bcfv"); }));
    }
    EXPECT_GT(topics, audits) << "the audits have findings";
    EXPECT_GT(views, audits / 2);
}

TEST(BcfHostile, SmallAuditsFitToo) {
    expect_valid(BcfArchive(bcf_bytes(small_audit(), small_settings())));
    Audit nothing;
    nothing.date = small_audit().date;
    const BcfArchive archive(bcf_bytes(nothing, {}));
    expect_valid(archive);
    EXPECT_TRUE(archive.topics.empty());
}

}  // namespace

}  // namespace seamward::test
