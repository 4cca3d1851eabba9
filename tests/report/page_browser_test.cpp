// SPDX-License-Identifier: GPL-3.0-or-later
// Pages opened and used in a browser: page/run.mjs says how. docs/dependencies.md says what it takes.
#include <gtest/gtest.h>

#include "base/document.h"
#include "base/file_io.h"
#include "job_file/job_json.h"
#include "tests/report/made_page.h"
#include "tests/support/run_program.h"

namespace seamward::test {
namespace {

Job with_solids(const char* name) {
    return read_job(std::filesystem::path(SEAMWARD_SOURCE_FOLDER) / "scenarios" / (std::string(name) + ".yaml"), RunContext(),
                    Make::solids);
}

std::string page_of(const Job& job, Audience audience, Language language = Language::english, Paper paper = Paper::letter) {
    ReportSettings settings = settings_for(job, audience, language);
    settings.paper = paper;
    return report_page(gather_facts(job, heading(job, "job.yaml"), settings, RunContext()));
}

Job hostile(Job job) {
    const std::string text = "<script>seamwardHacked=1</script>\"'><img src=x onerror=\"seamwardHacked=1\"></script><!--";
    job.name = job.address = job.notes = text;
    for (Space& space : job.survey.spaces) {
        space.name = text;
        space.spoken = {};
    }
    for (Gap& gap : job.survey.gaps) {
        gap.name = text;
        gap.spoken = {};
        gap.note = text;
    }
    for (Pest& pest : job.pests) pest.name = text;
    return job;
}

/// A survey sheet that hands back a file of this name.
std::string sheet_of(const Job& job, const std::string& name) {
    ReportFacts facts = gather_facts(job, heading(job, "job.yaml"), settings_for(job, Audience::survey), RunContext());
    const std::filesystem::path path = std::filesystem::path(SEAMWARD_SOURCE_FOLDER) / "scenarios" / (name + ".yaml");
    facts.job_file = {name, job_as_json(read_file(path, "job", Document::most_bytes), path)};
    return report_page(facts);
}

const Gap& gap_of(const Job& job, const std::string& id) {
    for (const Gap& gap : job.survey.gaps) {
        if (gap.id == id) return gap;
    }
    throw std::runtime_error("no gap " + id);
}

/// What sheet_checks.mjs wrote, read as a job that stands beside the old one.
void expect_handed_back(const Job& before, const std::string& text) {
    const Job job = parse_job(text, std::filesystem::path(SEAMWARD_SOURCE_FOLDER) / "scenarios" / "demo-survey.json");
    EXPECT_EQ(job.survey.gaps.size(), before.survey.gaps.size() + 1);
    EXPECT_EQ(job.closed.size(), before.closed.size());
    EXPECT_EQ(job.pests.size(), before.pests.size());
    const Gap& added = gap_of(job, "crack-beside-the-b-laundry-b-door");
    EXPECT_NEAR(clear_width(added.shape), 3.0 / 64 * 0.0254, 1e-12);
    EXPECT_EQ(added.evidence.how, Evidence::How::measured);
    EXPECT_NEAR(added.evidence.plus_minus, 1e-3, 1e-12);
    const Gap& bibb = gap_of(job, "hose-bibb-north");
    EXPECT_NEAR(clear_width(bibb.shape), 0.0254 / 8, 1e-12);
    EXPECT_NE(bibb.evidence.plus_minus, gap_of(before, "hose-bibb-north").evidence.plus_minus);
    EXPECT_NEAR(bibb.evidence.plus_minus, 0.3e-3, 1e-12);
}

TEST(PageInABrowser, CanBeUsedWithTheNetworkOff) {
    const ScratchFolder folder;
    const Job demo = with_solids("demo");
    const std::string page = page_of(demo, Audience::homeowner);
    EXPECT_LT(page.size(), 2'500'000U);
    folder.write("demo.html", page);
    folder.write("demo-es.html", page_of(demo, Audience::homeowner, Language::spanish));
    folder.write("builder.html", page_of(demo, Audience::builder));
    folder.write("crew.html", page_of(demo, Audience::crew));
    folder.write("crew-es-a4.html", page_of(demo, Audience::crew, Language::spanish, Paper::a4));
    folder.write("builder-a4.html", page_of(demo, Audience::builder, Language::english, Paper::a4));
    folder.write("sheet.html", sheet_of(demo, "demo"));
    folder.write("diy.html", page_of(demo, Audience::diy));
    folder.write("hostile-sheet.html", sheet_of(hostile(with_solids("wall-corner")), "wall-corner"));
    folder.write("hostile.html", page_of(hostile(with_solids("wall-corner")), Audience::homeowner));
    const Ran ran = run_shell(shell_word(SEAMWARD_PAGE_CHECK "/check") + ' ' + shell_word(SEAMWARD_PAGE_CHECK_BUILD) + ' ' +
                              shell_word(SEAMWARD_PAGE_PICTURES) + ' ' + shell_word(folder.path().string()));
    constexpr int no_browser = 77;
    if (ran.exit_code == no_browser) GTEST_SKIP() << ran.out;
    std::cout << ran.out;
    EXPECT_EQ(ran.exit_code, 0) << ran.err;
    EXPECT_EQ(ran.out.find("failed: "), std::string::npos);
    expect_handed_back(demo, read_file(folder.path() / "demo-survey.json", "handed back", Document::most_bytes));
    EXPECT_NE(ran.out.find("ok: phone: after the work no way is open"), std::string::npos);
}

}  // namespace
}  // namespace seamward::test
