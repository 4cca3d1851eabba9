// SPDX-License-Identifier: GPL-3.0-or-later
// From the text of a described house to its solids, beside Assimp's bare load of the same solids from a GLB file.
#include <assimp/postprocess.h>
#include <assimp/scene.h>

#include <assimp/Importer.hpp>
#include <cstdio>
#include <filesystem>
#include <fstream>

#include "exchange/gltf.h"
#include "job_file/job.h"
#include "tests/bench/bench.h"

namespace seamward::bench {

namespace {

std::size_t triangles_in(const std::vector<Part>& parts) {
    std::size_t sum = 0;
    for (const Part& part : parts) sum += part.mesh.triangles.size();
    return sum;
}

Row build_against_load(const std::string& scenario, const std::string& name) {
    const RunContext context;
    const std::filesystem::path job_file = std::string(SEAMWARD_SOURCE_FOLDER "/scenarios/") + scenario + ".yaml";
    const Job job = read_job(job_file, context, Make::solids);
    const std::filesystem::path glb = std::filesystem::temp_directory_path() / ("seamward-bench-" + scenario + ".glb");
    std::ofstream(glb, std::ios::binary) << gltf_binary(job.house.parts, job.survey, job.name);
    const auto load = [&] {
        Assimp::Importer importer;
        const aiScene* scene = importer.ReadFile(glb.string(), 0);
        std::size_t faces = 0;
        if (scene != nullptr) {
            for (unsigned i = 0; i < scene->mNumMeshes; ++i) faces += scene->mMeshes[i]->mNumFaces;
        }
        return faces;
    };
    const std::size_t triangles = triangles_in(job.house.parts);
    require(load() == triangles, "triangles of " + scenario);
    Row row{name};
    row.ours = median_seconds(
        [&] { require(triangles_in(read_job(job_file, context, Make::solids).house.parts) == triangles, scenario); });
    row.peer = median_seconds([&] { require(load() == triangles, scenario); });
    row.note = "description to " + std::to_string(triangles) + " triangles; Assimp loads them from GLB";
    std::filesystem::remove(glb);
    return row;
}

}  // namespace

std::vector<Row> bench_houses() {
    return {build_against_load("demo", "build the demo house"), build_against_load("apartments", "build 24 dwellings")};
}

}  // namespace seamward::bench
