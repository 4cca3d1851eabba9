// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/provisions/made_audit.h"

#include <algorithm>
#include <array>
#include <limits>
#include <numeric>

namespace seamward::test {

namespace {

Finding finding(const std::string& rule, const std::string& key, const Message& title) {
    Finding made;
    made.rule = rule;
    made.key = key;
    made.title = title;
    return made;
}

Pest pest(const std::string& id, const std::string& name) {
    Pest made;
    made.id = id;
    made.name = name;
    return made;
}

constexpr double not_a_number = std::numeric_limits<double>::quiet_NaN();
constexpr double infinite = std::numeric_limits<double>::infinity();

}  // namespace

ProvisionResult result(const std::string& rule, Verdict verdict) {
    ProvisionResult made;
    made.provision.id = rule;
    made.verdict = verdict;
    return made;
}

Audit small_audit() {
    Audit audit;
    audit.heading = "Larkspur Court, unit 4";
    audit.date = std::chrono::year(2026) / 3 / 9;
    audit.pests = {pest("house-mouse", "House mouse"), pest("roof-rat", "Roof rat")};
    audit.parts = {{"slab", "Slab", "IfcSlab", "0DWgwt6o1FOx7466fPk$jl"},
                   {"south-wall", "South wall", "IfcWallStandardCase", "3cUkl32yn9qRSPvBJVyWYp"},
                   {"south-screed", "Weep screed", "", ""},
                   {"hatch", "Attic hatch", "", ""}};
    ProvisionResult screed = result("screed-above-earth", Verdict::fail);
    screed.provision.group = "Walls";
    screed.provision.document = "IRC";
    screed.provision.confidence = Confidence::high;
    audit.results = {screed, result("hatch-gasket", Verdict::fail)};
    audit.findings.push_back(finding("screed-above-earth", "screed-above-earth south", "Weep screed above earth: south side"));
    audit.findings.back().text = "It is 60 mm above earth; 102 mm are due.";
    audit.findings.back().source = as_it_stands("IRC 2021, R703.7.2.1");
    audit.findings.back().at = Point{4, 0, 0.1};
    audit.findings.back().parts = {0, 1, 2};
    audit.findings.push_back(finding("hatch-gasket", "hatch-gasket hall", "Attic hatch without a gasket"));
    audit.findings.back().at = Point{5, 4, 2.7};
    audit.findings.push_back(finding("way-in", "way-in west", "Way in for the house mouse"));
    audit.findings.back().gap = GapIndex{0};
    audit.findings.back().parts = {1};
    WayIn way;
    way.way.path.gaps = {GapIndex{0}, GapIndex{1}, GapIndex{2}};
    way.open_to = {0};
    way.parts = {0, 1};
    audit.ways.push_back(way);
    audit.caution = "The local code and its official decide.";
    return audit;
}

BcfSettings small_settings() {
    BcfSettings settings;
    settings.author = "inspector@example.org";
    settings.model = "unit-4.ifc";
    settings.building = AxisBox{{0, 0, 0}, {10, 8, 5}};
    settings.gap_places = {Point{0, 3, 0.1}, std::nullopt, Point{2, 3, 1}};
    return settings;
}

double RandomAudit::between(double low, double high) {
    return low + (high - low) * static_cast<double>(random_() >> 11U) * 0x1p-53;
}

std::string RandomAudit::text() {
    static const std::array<std::string, 16> hostile{"",
                                                     " ",
                                                     "wall",
                                                     std::string("a\0b", 3),
                                                     "<script>&amp;]]>\"'",
                                                     "\x1b[31mred\x7f",
                                                     "line\r\nline\rline\nline\ttab",
                                                     "\xff\xfe\x80",
                                                     "\xef\xbf\xbe\xef\xbf\xbf",
                                                     "\xed\xa0\x80 surrogate",
                                                     "\xc2\x85 next line",
                                                     "ñandú 木 \xf0\x9f\xa6\x82",
                                                     "../../etc/{}{1}{2}",
                                                     "<?xml version=\"1.0\"?><!DOCTYPE a [<!ENTITY b \"c\">]>&b;",
                                                     "<![CDATA[x]]>",
                                                     "-->"};
    if (chance(12)) return std::string(10'000, 'x');
    if (chance(12)) {
        std::string bytes;
        for (std::size_t i = below(40); i > 0; --i) bytes += static_cast<char>(below(256));
        return bytes;
    }
    return hostile.at(below(hostile.size())) + (chance(2) ? hostile.at(below(hostile.size())) : "");
}

std::string RandomAudit::global_id() {
    constexpr std::string_view letters = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz_$";
    if (chance(3)) return chance(2) ? "" : chance(2) ? std::string("0,0,0,0,0,0,0,0,0,0,00") : text();
    std::string id;
    for (int i = 0; i < 22; ++i) id += letters[below(letters.size())];
    return id;
}

double RandomAudit::coordinate() {
    constexpr std::array odd{not_a_number, infinite, -infinite, 1e300, -1e300, 1e-320, -0.0, 9e7, 0.0};
    return chance(12) ? odd.at(below(odd.size())) : between(-30, 30);
}

Point RandomAudit::place() {
    const double x = coordinate(), y = coordinate(), z = coordinate();
    return {x, y, z};
}

std::vector<std::size_t> RandomAudit::parts() {
    std::vector<std::size_t> parts;
    for (std::size_t i = below(5); i > 0; --i) parts.push_back(below(12));
    return parts;
}

void RandomAudit::add_way(Audit& audit) {
    WayIn way;
    for (std::size_t i = below(5); i > 0; --i) way.way.path.gaps.push_back(GapIndex{static_cast<std::uint32_t>(below(8))});
    for (std::size_t i = below(3); i > 0; --i) way.open_to.push_back(below(4));
    way.parts = parts();
    audit.ways.push_back(way);
}

Audit RandomAudit::hostile() {
    Audit audit;
    audit.heading = text();
    audit.date = std::chrono::sys_days(std::chrono::year(1900) / 1 / 1) + std::chrono::days(below(400'000));
    for (std::size_t i = below(4); i > 0; --i) audit.pests.push_back(pest(text(), text()));
    for (std::size_t i = below(10); i > 0; --i) audit.parts.push_back({text(), text(), text(), global_id()});
    for (std::size_t i = 0; i < below(4); ++i) {
        audit.results.push_back(result(i == 0 ? text() : "rule-" + std::to_string(i), Verdict::fail));
        audit.results.back().provision.group = text();
        audit.results.back().provision.document = text();
        audit.results.back().provision.confidence = static_cast<Confidence>(below(3));
    }
    for (std::size_t i = below(4); i > 0; --i) add_way(audit);
    for (std::size_t i = below(8); i > 0; --i) {
        const std::string rule = chance(3) ? "way-in" : chance(3) ? text() : "rule-" + std::to_string(below(4));
        audit.findings.push_back(finding(rule, text(), chance(2) ? Message(text()) : as_it_stands(text())));
        Finding& made = audit.findings.back();
        made.text = chance(2) ? message("{} and {}", {as_named(text()), as_it_stands(text())}) : Message(text());
        if (chance(2)) made.source = text();
        if (chance(2)) made.at = place();
        if (chance(2)) made.gap = GapIndex{static_cast<std::uint32_t>(below(10))};
        made.parts = parts();
    }
    if (chance(2)) audit.caution = text();
    return audit;
}

BcfSettings RandomAudit::hostile_settings(const Audit& audit) {
    BcfSettings settings;
    settings.author = text();
    settings.model = text();
    settings.language = chance(2) ? Language::english : Language::spanish;
    if (chance(2)) settings.building = AxisBox{place(), place()};
    if (chance(2)) settings.building = AxisBox{{-20, -15, -1}, {20, 15, 9}};
    for (std::size_t i = below(10); i > 0; --i) settings.gap_places.push_back(chance(4) ? std::nullopt : std::optional(place()));
    for (std::size_t i = below(audit.findings.size() + 2); i > 0; --i) {
        BcfSight sight;
        if (chance(2)) sight.outward = Vector{coordinate(), coordinate(), coordinate()};
        if (chance(3)) sight.route = {place(), place(), place()};
        if (chance(3)) sight.snapshot = text();
        settings.sights.push_back(sight);
    }
    return settings;
}

Audit RandomAudit::crowded(std::size_t most) {
    Audit audit;
    for (std::size_t i = 0; i < 5; ++i)
        audit.parts.push_back({"part-" + std::to_string(i), "", "", i == 4 ? "" : std::string(22, static_cast<char>('A' + i))});
    for (std::size_t i = 0; i < 2; ++i) audit.results.push_back(result("rule-" + std::to_string(i), Verdict::fail));
    std::vector<std::size_t> names(2 * most);
    std::iota(names.begin(), names.end(), 0);
    std::shuffle(names.begin(), names.end(), random_);
    for (std::size_t i = below(most + 1); i > 0; --i) {
        audit.findings.push_back(finding("rule-" + std::to_string(below(2)), "key-" + std::to_string(names.at(i)), "x"));
        if (!chance(5)) audit.findings.back().at = Point{between(0, 0.7), between(0, 0.7), 0};
        for (std::size_t part = 0; part < 5; ++part) {
            if (chance(4)) audit.findings.back().parts.push_back(part);
        }
    }
    return audit;
}

Audit RandomAudit::shuffled(const Audit& audit) {
    std::vector<std::size_t> order(audit.parts.size());
    std::iota(order.begin(), order.end(), 0);
    std::shuffle(order.begin(), order.end(), random_);
    Audit moved = audit;
    for (std::size_t i = 0; i < order.size(); ++i) moved.parts[order[i]] = audit.parts[i];
    for (Finding& finding : moved.findings) {
        for (std::size_t& part : finding.parts) part = order[part];
        std::sort(finding.parts.begin(), finding.parts.end());
    }
    std::shuffle(moved.findings.begin(), moved.findings.end(), random_);
    std::shuffle(moved.results.begin(), moved.results.end(), random_);
    return moved;
}

}  // namespace seamward::test
