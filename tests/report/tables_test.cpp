// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/tables.h"

#include <gtest/gtest.h>
#include <zlib.h>

#include <cmath>
#include <map>
#include <sstream>

#include "report/report_facts.h"

namespace seamward {
namespace {

const RunContext context;

/// A shipped job with all that a report has of it.
struct Reported {
    Job job;
    ReportFacts facts;

    explicit Reported(const std::string& name)
        : job(read_job(std::string(SEAMWARD_SOURCE_FOLDER "/scenarios/") + name, context)),
          facts(gather_facts(job, name, settings(job), context)) {}

    static ReportSettings settings(const Job& job) {
        ReportSettings settings;
        settings.planning.against = job.pests;
        settings.planning.date = *parse_date("2026-06-15");
        return settings;
    }
};

const Reported& demo() {
    static const Reported reported("demo.yaml");
    return reported;
}

unsigned little(std::string_view bytes, std::size_t at, int count) {
    unsigned value = 0;
    for (int i = count - 1; i >= 0; --i)
        value = value << 8U | static_cast<unsigned char>(bytes[at + static_cast<std::size_t>(i)]);
    return value;
}

/// The files of a zip archive, read by its own rules (PKWARE APPNOTE 6.3): by its central directory.
std::map<std::string, std::string> unzipped(std::string_view bytes) {
    std::map<std::string, std::string> files;
    const std::size_t end = bytes.rfind("PK\5\6");
    if (end == std::string_view::npos) return files;
    std::size_t entry = little(bytes, end + 16, 4);
    for (unsigned i = 0; i < little(bytes, end + 10, 2); ++i) {
        const unsigned method = little(bytes, entry + 10, 2), packed = little(bytes, entry + 20, 4),
                       size = little(bytes, entry + 24, 4);
        const unsigned name = little(bytes, entry + 28, 2);
        const std::size_t local = little(bytes, entry + 42, 4);
        const std::size_t data = local + 30 + little(bytes, local + 26, 2) + little(bytes, local + 28, 2);
        std::string in(bytes.substr(data, packed)), out(size, '\0');
        if (method == 8) {
            z_stream stream{};
            inflateInit2(&stream, -MAX_WBITS);
            stream.next_in = reinterpret_cast<Bytef*>(in.data());
            stream.avail_in = packed;
            stream.next_out = reinterpret_cast<Bytef*>(out.data());
            stream.avail_out = size;
            inflate(&stream, Z_FINISH);
            inflateEnd(&stream);
        } else {
            out = in;
        }
        files[std::string(bytes.substr(entry + 46, name))] = out;
        entry += 46 + name + little(bytes, entry + 30, 2) + little(bytes, entry + 32, 2);
    }
    return files;
}

/// What a sheet's XML has as the value of its one formula beginning so.
double value_of_formula(const std::string& xml, const std::string& formula) {
    const std::size_t at = xml.find("<f>" + formula);
    if (at == std::string::npos) return std::nan("");
    const std::size_t value = xml.find("<v>", at);
    return std::stod(xml.substr(value + 3));
}

std::size_t count_of(const std::string& text, const std::string& part) {
    std::size_t count = 0;
    for (std::size_t at = text.find(part); at != std::string::npos; at = text.find(part, at + 1)) ++count;
    return count;
}

TEST(Tables, WorkbookSumsToTheCostOfThePlan) {
    const Translator say(Language::english);
    const ReportFacts& facts = demo().facts;
    const std::vector<DataTable> tables{closings_table(facts, say), materials_table(facts, say), gaps_table(facts, say)};
    const auto files = unzipped(xlsx_bytes(tables, facts, say));
    ASSERT_TRUE(files.contains("xl/worksheets/sheet3.xml"));
    const std::string& closings = files.at("xl/worksheets/sheet1.xml");
    EXPECT_DOUBLE_EQ(value_of_formula(closings, "SUM(I2:I"), static_cast<double>(facts.plan.cost.cents) / 100);
    EXPECT_NEAR(value_of_formula(closings, "SUM(J2:J"), facts.plan.minutes, 1e-6);
    EXPECT_EQ(count_of(closings, "<row "), facts.plan.steps.size() + 2);  // heads and sums
    Money materials;
    for (const Purchase& purchase : facts.plan.materials) materials = materials + purchase.cost;
    EXPECT_DOUBLE_EQ(value_of_formula(files.at("xl/worksheets/sheet2.xml"), "SUM(I2:I"),
                     static_cast<double>(materials.cents) / 100);
    EXPECT_EQ(count_of(files.at("xl/worksheets/sheet3.xml"), "<row "), facts.survey().gaps.size() + 1);
    EXPECT_NE(files.at("xl/workbook.xml").find("name=\"Closings\""), std::string::npos);
}

TEST(Tables, SameFactsGiveTheSameWorkbook) {
    const Translator say(Language::spanish);
    const ReportFacts& facts = demo().facts;
    const std::vector<DataTable> tables{materials_table(facts, say)};
    EXPECT_EQ(xlsx_bytes(tables, facts, say), xlsx_bytes(tables, facts, say));
}

TEST(Tables, CsvHasALineForEachGapWithItsWidth) {
    const Translator say(Language::english);
    const ReportFacts& facts = demo().facts;
    std::istringstream lines(csv_text(gaps_table(facts, say), say));
    std::string line;
    std::getline(lines, line);
    EXPECT_TRUE(line.starts_with("Gap,Name,From,To,Shape,Pieces,\"Width, mm\""));
    EXPECT_TRUE(line.ends_with("\r"));
    std::size_t count = 0;
    while (std::getline(lines, line)) {
        EXPECT_TRUE(line.starts_with(facts.survey().gaps.at(count).id + ',')) << line;
        ++count;
    }
    EXPECT_EQ(count, facts.survey().gaps.size());
}

TEST(Tables, CsvKeepsTextsWholeAndTakesNoneForAFormula) {
    const Translator say(Language::english);
    const DataTable table{
        "t", "T", {{"One"}, {"Two"}, {"Three"}}, {{std::string("=cmd|'/c calc'!A1"), std::string("a \"b\", c\nd"), Money{-105}}}};
    EXPECT_EQ(csv_text(table, say), "One,Two,Three\r\n'=cmd|'/c calc'!A1,\"a \"\"b\"\", c\nd\",-1.05\r\n");
}

TEST(Tables, StandForEveryShippedJob) {
    const Translator say(Language::english);
    for (const char* name : {"two-story.yaml", "brick-crawl.yaml", "apartments.yaml"}) {
        const Reported reported(name);
        const DataTable closings = closings_table(reported.facts, say);
        EXPECT_EQ(closings.rows.size(), reported.facts.plan.steps.size()) << name;
        for (const DataTable& table : {closings, materials_table(reported.facts, say), gaps_table(reported.facts, say)}) {
            for (const std::vector<Cell>& row : table.rows) EXPECT_EQ(row.size(), table.columns.size()) << name << table.id;
        }
    }
}

}  // namespace
}  // namespace seamward
