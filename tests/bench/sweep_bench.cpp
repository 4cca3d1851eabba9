// SPDX-License-Identifier: GPL-3.0-or-later
// A sweep over a made-up subdivision, beside a shell's loop over its lots, and two processes beside one.
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>

#include "base/run_context.h"
#include "sweep/make_lots.h"
#include "tests/bench/bench.h"
#include "tests/support/run_program.h"

namespace seamward::bench {

namespace {

namespace fs = std::filesystem;
using test::run_shell;
using test::shell_word;

constexpr std::uint32_t lots = 900, looped = 30;

class Terrace {
public:
    Terrace() { make_lots({lots, 7, 0}, path("lots"), RunContext()); }
    [[nodiscard]] fs::path path(const std::string& name) const { return folder_.path() / name; }

    /// Sweeps into a new folder; the text of its lots.csv.
    std::string sweep(const std::string& before, const std::string& more) const {
        const fs::path out = path("out-" + std::to_string(++runs_));
        const test::Ran ran =
            run_shell("cd " + shell_word(folder_.path().string()) + " && " + before + ' ' + shell_word(SEAMWARD_PROGRAM) +
                      " sweep lots --do plan --on 2026-06-15 -o " + shell_word(out.string()) + ' ' + more);
        require(ran.exit_code == 0, "a sweep fails: " + ran.err);
        std::ostringstream text;
        text << std::ifstream(out / "lots.csv", std::ios::binary).rdbuf();
        fs::remove_all(out);
        return text.str();
    }

    /// Sweeps the two halves of the lots at once, by two programs that know nothing of each other.
    void sweep_apart() const {
        std::string both = "cd " + shell_word(folder_.path().string());
        for (const char* half : {"1", "2"}) {
            const bool first = *half == '1';
            both += " && ls lots/lot-*.yaml | " + std::string(first ? "head -n " : "tail -n ") + std::to_string(lots / 2) +
                    " > half-" + half;
        }
        for (const char* half : {"1", "2"})
            both += std::string(*half == '1' ? " && { " : "") + shell_word(SEAMWARD_PROGRAM) + " sweep half-" + half +
                    " --do plan --on 2026-06-15 --threads 1 -o apart-" + half + " & ";
        const test::Ran ran = run_shell(both + "wait; }");
        require(ran.exit_code == 0, "two sweeps fail: " + ran.err);
        for (const char* half : {"1", "2"}) require(fs::remove_all(path(std::string("apart-") + half)) > 0, "a half is missing");
    }

    /// The costs that single runs answer, one a line.
    [[nodiscard]] std::string loop() const {
        const test::Ran ran = run_shell("cd " + shell_word(folder_.path().string()) + " && for f in $(ls lots/*.yaml | head -n " +
                                        std::to_string(looped) + "); do " + shell_word(SEAMWARD_PROGRAM) +
                                        " plan $f --json --on 2026-06-15 | grep -m 1 -E '^  \"(cost|open_path)\"' || true; done");
        require(ran.exit_code == 0, "a single run fails: " + ran.err);
        return ran.out;
    }

private:
    test::ScratchFolder folder_;
    mutable int runs_ = 0;
};

/// The column `cost` of the first rows, as `loop` has it. Texts before it have no quotes but the names, which have one comma.
std::vector<double> costs_of(const std::string& csv) {
    std::vector<double> costs;
    std::istringstream lines(csv);
    std::string line;
    std::getline(lines, line);
    while (costs.size() < looped && std::getline(lines, line)) {
        std::size_t at = 0;
        bool quoted = false;
        for (int commas = 0; commas < 7; ++at) {
            quoted = quoted != (line[at] == '"');
            commas += line[at] == ',' && !quoted ? 1 : 0;
        }
        costs.push_back(std::strtod(line.c_str() + at, nullptr));
    }
    return costs;
}

std::vector<double> costs_of_loop(const std::string& answers) {
    std::vector<double> costs;
    std::istringstream lines(answers);
    for (std::string line; std::getline(lines, line);)
        costs.push_back(line.find("open_path") != std::string::npos ? 0
                                                                    : std::strtod(line.c_str() + line.find(':') + 1, nullptr));
    return costs;
}

std::string rate(double seconds) {
    char text[64];
    std::snprintf(text, sizeof text, "%.0f lots a second and core", lots / seconds);
    return text;
}

}  // namespace

std::vector<Row> bench_sweep() {
    const Terrace terrace;
    const std::string one = terrace.sweep("", "--threads 1");
    require(costs_of(one) == costs_of_loop(terrace.loop()), "costs of a sweep and of single runs");
    Row alone{"sweep 900 lots, one thread, against a loop"};
    alone.ours = median_seconds([&] { require(terrace.sweep("", "--threads 1") == one, "sweeps"); });
    alone.peer = median_seconds([&] { (void)terrace.loop(); }) * lots / looped;
    alone.note = rate(alone.ours) + "; a shell's loop of seamward plan, from 30 lots";
    std::vector<Row> rows{alone};
    if (run_shell("command -v mpirun").exit_code != 0) {
        std::printf("mpirun is not installed: the line of two processes is left out\n");
        return rows;
    }
    const std::string mpirun =
        "env OMPI_ALLOW_RUN_AS_ROOT=1 OMPI_ALLOW_RUN_AS_ROOT_CONFIRM=1 mpirun --oversubscribe --bind-to none -n ";
    Row both{"sweep 900 lots, two ranks against one"};
    both.peer = median_seconds([&] { require(terrace.sweep(mpirun + "1", "--threads 1") == one, "one rank"); });
    both.ours = median_seconds([&] { require(terrace.sweep(mpirun + "2", "--threads 1") == one, "two ranks"); });
    const double apart = median_seconds([&] { terrace.sweep_apart(); });
    char text[160];
    std::snprintf(text, sizeof text, "efficiency %.2f, start of mpirun included; two programs apart, half the lots each: %.2f",
                  both.ratio() / 2, alone.ours / apart / 2);
    both.note = text;
    rows.push_back(both);
    return rows;
}

}  // namespace seamward::bench
