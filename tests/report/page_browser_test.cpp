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

/// A folder of pages, and what people do with them.
class PageInABrowser : public testing::Test {
protected:
    void write(const std::string& name, const std::string& page) const { folder.write(name + ".html", page); }
    void write_demo() const { write("demo", page_of(demo, Audience::homeowner)); }

    void write_all() const {
        const Job corner = hostile(with_solids("wall-corner"));
        write_demo();
        write("demo-es", page_of(demo, Audience::homeowner, Language::spanish));
        write("builder", page_of(demo, Audience::builder));
        write("builder-a4", page_of(demo, Audience::builder, Language::english, Paper::a4));
        write("crew", page_of(demo, Audience::crew));
        write("crew-es-a4", page_of(demo, Audience::crew, Language::spanish, Paper::a4));
        write("diy", page_of(demo, Audience::diy));
        write("sheet", sheet_of(demo, "demo"));
        write("hostile", page_of(corner, Audience::homeowner));
        write("hostile-sheet", sheet_of(corner, "wall-corner"));
    }

    /// Every check of that part is well; what was said of them. Skips where there is no browser.
    void use(const std::string& part) {
        const Ran ran = run_shell(shell_word(SEAMWARD_PAGE_CHECK "/check") + ' ' + shell_word(SEAMWARD_PAGE_CHECK_BUILD) + ' ' +
                                  part + ' ' + shell_word(SEAMWARD_PAGE_PICTURES) + ' ' + shell_word(folder.path().string()));
        constexpr int no_browser = 77;
        if (ran.exit_code == no_browser) GTEST_SKIP() << ran.out;
        std::cout << ran.out;
        EXPECT_EQ(ran.exit_code, 0) << ran.err;
        EXPECT_EQ(ran.out.find("failed: "), std::string::npos);
        said = ran.out;
    }

    ScratchFolder folder;
    Job demo = with_solids("demo");
    std::string said;
};

TEST_F(PageInABrowser, ShowsTheHouse) {
    write_demo();
    use("house");
    if (IsSkipped()) return;
    EXPECT_NE(said.find("ok: phone: after the work no way is open"), std::string::npos);
}

TEST_F(PageInABrowser, TellsWhatEachPriceBuys) {
    write_demo();
    use("ladder");
    if (IsSkipped()) return;
    EXPECT_NE(said.find("ok: phone: nothing went wrong at the chart"), std::string::npos);
}

TEST_F(PageInABrowser, CanBeReadByAnybody) {
    write_all();
    EXPECT_LT(std::filesystem::file_size(folder.path() / "demo.html"), 2'500'000U);
    use("pages");
    if (IsSkipped()) return;
    EXPECT_NE(said.find("ok: hostile"), std::string::npos);
}

TEST_F(PageInABrowser, PrintsWholeRows) {
    write_all();
    use("print");
    if (IsSkipped()) return;
    EXPECT_TRUE(said.find("ok: ") != std::string::npos || said.find("left out: ") != std::string::npos);
}

TEST_F(PageInABrowser, HandsBackASheetThatWasFilledIn) {
    write("sheet", sheet_of(demo, "demo"));
    use("sheet");
    if (IsSkipped()) return;
    expect_handed_back(demo, read_file(folder.path() / "demo-survey.json", "handed back", Document::most_bytes));
}

}  // namespace
}  // namespace seamward::test
