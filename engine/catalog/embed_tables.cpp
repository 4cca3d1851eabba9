// SPDX-License-Identifier: GPL-3.0-or-later
// A step of the build: checks the tables and writes them as a C++ file of string literals.
// embed_tables FOLDER OUTPUT.cpp
#include <cstdio>
#include <exception>
#include <filesystem>
#include <fstream>
#include <functional>

#include "base/file_io.h"
#include "catalog/drill_scores.h"
#include "catalog/duties.h"
#include "catalog/envelope.h"
#include "catalog/features.h"
#include "catalog/free_areas.h"
#include "catalog/joint_figures.h"
#include "catalog/prices.h"
#include "catalog/provisions.h"
#include "catalog/removals.h"
#include "catalog/site_cautions.h"
#include "catalog/text_table.h"

namespace {

void append_literal(std::string& out, const std::string& name, const std::string& text) {
    out += "const std::string_view " + name + " =";
    constexpr std::size_t piece = 8000;  // compilers limit one literal, not a row of them
    for (std::size_t at = 0; at < text.size(); at += piece) out += "\n    R\"~~~(" + text.substr(at, piece) + ")~~~\"";
    out += ";\n";
}

}  // namespace

int main(int argc, char** argv) try {
    if (argc != 3) {
        std::fprintf(stderr, "usage: embed_tables FOLDER OUTPUT.cpp\n");
        return 2;
    }
    const std::filesystem::path folder = argv[1];
    std::string out = "#include \"catalog/shipped_text.h\"\n\nnamespace seamward::shipped_text {\n\n";
    const auto embed = [&](const std::string& name, const std::function<void(const std::string&, const std::string&)>& check) {
        const std::filesystem::path path = folder / (name + ".yaml");
        const std::string text = seamward::read_file(path, path.string(), 1 << 20);
        check(text, path.string());
        append_literal(out, name, text);
    };
    seamward::Table<seamward::Pest> pests;
    embed("pests", [&](const std::string& text, const std::string& path) { pests = seamward::read_pests(text, path); });
    embed("gauges", [](const std::string& text, const std::string& path) { (void)seamward::read_gauges(text, path); });
    seamward::Table<seamward::Treatment> treatments;
    embed("treatments",
          [&](const std::string& text, const std::string& path) { treatments = seamward::read_treatments(text, path); });
    seamward::Table<seamward::Feature> features;
    embed("features",
          [&](const std::string& text, const std::string& path) { features = seamward::read_features(text, path, treatments); });
    embed("duties", [&](const std::string& text, const std::string& path) { (void)seamward::read_duties(text, path, features); });
    embed("meshes", [](const std::string& text, const std::string& path) { (void)seamward::read_meshes(text, path); });
    seamward::Table<seamward::FreeAreaRule> areas;
    embed("free_areas", [&](const std::string& text, const std::string& path) { areas = seamward::read_free_areas(text, path); });
    embed("drill_scores",
          [](const std::string& text, const std::string& path) { (void)seamward::read_drill_scores(text, path); });
    embed("envelope", [](const std::string& text, const std::string& path) { (void)seamward::read_envelope(text, path); });
    embed("joints", [](const std::string& text, const std::string& path) { (void)seamward::read_joints(text, path); });
    seamward::Table<seamward::Measure> measures;
    embed("measures", [&](const std::string& text, const std::string& path) { measures = seamward::read_measures(text, path); });
    embed("provisions", [&](const std::string& text, const std::string& path) {
        (void)seamward::read_provisions(text, path, measures, features, areas);
    });
    embed("removals",
          [&](const std::string& text, const std::string& path) { (void)seamward::read_removals(text, path, pests); });
    embed("site_cautions",
          [](const std::string& text, const std::string& path) { (void)seamward::read_site_cautions(text, path); });
    embed("prices", [](const std::string& text, const std::string& path) { (void)seamward::read_price_book(text, path); });
    embed("spanish", [](const std::string& text, const std::string& path) { (void)seamward::read_texts(text, path); });
    out += "\n}  // namespace seamward::shipped_text\n";
    std::ofstream file(argv[2], std::ios::binary);
    file << out;
    file.close();
    return file ? 0 : 1;
} catch (const std::exception& fault) {
    std::fprintf(stderr, "%s\n", fault.what());
    return 1;
}
