// SPDX-License-Identifier: GPL-3.0-or-later
// How time and memory of `find` grow with triangles: one process for each model, so that each has a peak of its own.
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <chrono>
#include <cstdio>
#include <optional>
#include <stdexcept>
#include <string>
#include <utility>
#include <vector>

#include "interior/air.h"
#include "interior/find.h"
#include "job_file/job.h"
#include "tests/bench/bench.h"
#include "tests/support/plain_solids.h"

namespace seamward::bench {

namespace {

struct Case {
    const char* name;
    const char* scenario;
    int copies = 1;  ///< side by side, along x
    int times = 0;   ///< that each triangle is cut in four
};

constexpr std::array<Case, 8> cases{{{"wall-corner", "wall-corner"},
                                     {"wall-corner-in-64", "wall-corner", 1, 3},
                                     {"demo", "demo"},
                                     {"demo-in-4", "demo", 1, 1},
                                     {"demo-x2", "demo", 2},
                                     {"dwellings-24", "apartments"},
                                     {"demo-x4", "demo", 4},
                                     {"demo-x14", "demo", 14}}};

constexpr double apart = 3;        // meters between copies
constexpr double air_margin = 1;   // meters, as find_gaps has it; for the number of cells
constexpr double megabyte = 1024;  // of the kilobytes that getrusage tells

/// What the child tells its parent.
struct Figures {
    std::size_t triangles = 0, cells = 0, spaces = 0, gaps = 0;
    double wall = 0, cpu = 0;     ///< seconds
    double before = 0, peak = 0;  ///< megabytes of the process: with the model in memory, and at most
    bool left_out = false;        ///< too many triangles
};

Model model_of(const Case& of) {
    const RunContext run;
    const std::string file = std::string(SEAMWARD_SOURCE_FOLDER "/scenarios/") + of.scenario + ".yaml";
    const Job job = read_job(file, run, Make::solids);
    double low = 1e300, high = -1e300;
    for (const Part& part : job.house.parts) {
        for (const Point& p : part.mesh.points) low = std::min(low, p.x), high = std::max(high, p.x);
    }
    Model model;
    for (int i = 0; i < of.copies; ++i) {
        for (const Part& part : job.house.parts) {
            ModelPart copy{
                .id = std::to_string(i) + "/" + part.id, .name = part.name, .mesh = test::cut_in_four(part.mesh, of.times)};
            for (Point& p : copy.mesh.points) p.x += i * (high - low + apart);
            model.parts.push_back(std::move(copy));
        }
    }
    return model;
}

std::size_t cells_of(const Model& model) {
    std::vector<CleanPart> parts;
    for (const ModelPart& part : model.parts) parts.push_back(clean_part(part.mesh));
    return cut_air(parts, std::vector<char>(parts.size()), air_margin, RunContext()).complex.cells.size();
}

rusage usage() {
    rusage now{};
    getrusage(RUSAGE_SELF, &now);
    return now;
}

double cpu_seconds(const rusage& of) {
    const auto seconds = [](const timeval& time) {
        return static_cast<double>(time.tv_sec) + 1e-6 * static_cast<double>(time.tv_usec);
    };
    return seconds(of.ru_utime) + seconds(of.ru_stime);
}

Figures measure(const Case& of, std::size_t most) {
    const Model model = model_of(of);
    Figures figures;
    for (const ModelPart& part : model.parts) figures.triangles += part.mesh.triangles.size();
    figures.left_out = figures.triangles > most;
    if (figures.left_out) return figures;
    const rusage before = usage();
    const auto begin = std::chrono::steady_clock::now();
    const Found found = find_gaps(model, {}, RunContext());
    figures.wall = std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count();
    const rusage after = usage();
    figures.cpu = cpu_seconds(after) - cpu_seconds(before);
    figures.before = static_cast<double>(before.ru_maxrss) / megabyte;
    figures.peak = static_cast<double>(after.ru_maxrss) / megabyte;
    figures.spaces = found.spaces.size();
    figures.gaps = found.gaps.size();
    figures.cells = cells_of(model);
    return figures;
}

/// Runs in a process of its own. No thread may have been started before.
Figures measure_apart(const Case& of, std::size_t most) {
    std::array<int, 2> pipe_ends{};
    if (pipe(pipe_ends.data()) != 0) throw std::runtime_error("no pipe");
    std::fflush(stdout);
    const pid_t child = fork();
    if (child < 0) throw std::runtime_error("no process");
    if (child == 0) {
        int status = 1;
        try {
            const Figures figures = measure(of, most);
            if (write(pipe_ends[1], &figures, sizeof figures) == static_cast<ssize_t>(sizeof figures)) status = 0;
        } catch (const std::exception& fault) {
            std::fprintf(stderr, "bench: %s: %s\n", of.name, fault.what());
        }
        _exit(status);
    }
    close(pipe_ends[1]);
    Figures figures;
    const bool told = read(pipe_ends[0], &figures, sizeof figures) == static_cast<ssize_t>(sizeof figures);
    close(pipe_ends[0]);
    int status = 0;
    waitpid(child, &status, 0);
    if (!told || status != 0) throw std::runtime_error(std::string("the process for ") + of.name + " failed");
    return figures;
}

}  // namespace

void print_find_curve(std::size_t most, const std::string& only) {
    std::printf("%-18s %10s %8s %7s %6s %9s %9s %9s %9s\n", "model", "triangles", "cells", "spaces", "gaps", "wall [s]",
                "CPU [s]", "peak [MB]", "model [MB]");
    for (const Case& of : cases) {
        if (!only.empty() && only != of.name) continue;
        const Figures f = measure_apart(of, most);
        if (f.left_out) {
            std::printf("%-18s %10zu  left out\n", of.name, f.triangles);
        } else {
            std::printf("%-18s %10zu %8zu %7zu %6zu %9.2f %9.2f %9.0f %9.0f\n", of.name, f.triangles, f.cells, f.spaces, f.gaps,
                        f.wall, f.cpu, f.peak, f.before);
        }
        std::fflush(stdout);
    }
}

}  // namespace seamward::bench
