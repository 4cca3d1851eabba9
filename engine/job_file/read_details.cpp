// SPDX-License-Identifier: GPL-3.0-or-later
#include "job_file/read_details.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <map>
#include <set>
#include <string>
#include <utility>

#include "base/nearest_word.h"
#include "base/text.h"
#include "catalog/shipped.h"

namespace seamward {

namespace {

constexpr std::array<std::string_view, 4> construction_keys{"cladding", "foundation", "has", "without"};
constexpr std::array<std::string_view, 3> appliance_keys{"in", "burns", "note"};
constexpr std::array<std::string_view, 6> detail_keys{"what", "gap", "at", "is", "plus_minus", "note"};

bool holds(const std::vector<std::string>& words, const std::string& word) {
    return std::find(words.begin(), words.end(), word) != words.end();
}

class DetailReader {
public:
    DetailReader(const HistorySource& source, bool has_house, Job& job) : source_(source), has_house_(has_house), job_(job) {}

    void read() {
        read_construction();
        source_.file.each("appliances", [&](Node node) { read_appliance(node); });
        if (!job_.inputs.empty() && holds(job_.built_of.without, "fuel-appliances"))
            source_.diagnostics.add(source_.file["construction"].place(),
                                    "the house has no fuel-appliances, and appliances burn fuel there",
                                    "remove the word from without, or what burns");
        source_.file.each("details", [&](Node node) { read_detail(node); });
    }

private:
    void read_construction() {
        const Record record(source_.file["construction"], construction_keys, "construction", source_.diagnostics);
        if (!record.usable()) return;
        BuiltOf& built = job_.built_of;
        for (const std::string_view key : {"cladding", "foundation"}) {
            if (has_house_ && record.has(key))
                record.report(record[key].place(), "the file of the house says what its " + std::string(key) + " is",
                              "remove it");
        }
        if (!has_house_) {
            record.each("cladding", [&](Node node) {
                if (auto line = read_line(node, "cladding", source_.diagnostics)) built.cladding.push_back(std::move(*line));
            });
            if (const auto foundation = record.word("foundation", foundation_words()))
                built.foundation = foundation_words()[*foundation];
        }
        read_words(record, "has", built.has, built.without);
        read_words(record, "without", built.without, built.has);
    }

    /// What a described house does not show may stand there all the same; what it shows cannot be missing.
    void read_words(const Record& record, std::string_view key, std::vector<std::string>& words,
                    std::vector<std::string>& other) {
        record.each(key, [&](Node node) {
            const std::optional<std::string> word = read_line(node, key, source_.diagnostics);
            if (!word) return;
            const Words known = built_with_words();
            if (std::find(known.begin(), known.end(), *word) == known.end()) {
                record.report(node.place(), "unknown word " + in_quotes(*word), suggestion(*word, known));
                return;
            }
            const bool of_house = key == "has" && holds(job_.house.built_of.without, *word);
            if (of_house)
                std::erase(other, *word);
            else if (holds(other, *word))
                record.report(node.place(), "the house has " + *word + " and has it not",
                              has_house_ ? "the file of the house shows one: remove it here" : "keep one of them");
            if (!holds(words, *word)) words.push_back(*word);
        });
    }

    /// All that burn fuel in one space count together.
    void read_appliance(Node node) {
        const Record record(node, appliance_keys, "appliance", source_.diagnostics);
        (void)record.text("note");
        const bool whole = record.require({"in"});
        const std::string burns = record.required_line("burns");
        if (!whole || burns.empty()) return;
        const auto space = source_.spaces.resolve(record["in"], "space", source_.diagnostics);
        const std::optional<double> input = parse_input(burns);
        if (!input) {
            record.report(record["burns"].place(), "burns is the input of the appliance, not " + in_quotes(burns),
                          "write for example 40000 Btu/h or 12 kW");
            return;
        }
        if (!space) return;
        for (SpaceInput& known : job_.inputs) {
            if (known.space.value != *space) continue;
            known.btu_per_hour += *input;
            return;
        }
        job_.inputs.push_back({SpaceIndex{*space}, *input});
    }

    void read_detail(Node node) {
        const Record record(node, detail_keys, "detail", source_.diagnostics);
        if (!record.usable()) return;
        (void)record.text("note");
        const bool whole = record.require({"is"});
        const std::string id = record.required_line("what");
        if (id.empty() || !whole) return;
        const Measure* measure = shipped_measures().find(id);
        if (measure == nullptr || measure->stated == Measure::Stated::no) {
            std::vector<std::string_view> known;
            for (const Measure& row : shipped_measures().rows) {
                if (row.stated != Measure::Stated::no) known.emplace_back(row.id);
            }
            record.report(record["what"].place(),
                          measure == nullptr ? "unknown measure " + in_quotes(id) : id + " is reckoned from gaps, not stated",
                          measure == nullptr ? suggestion(id, known) : "say it of the gaps themselves");
            return;
        }
        Detail detail;
        detail.measure = id;
        detail.at = record.line("at").value_or("");
        detail.value = read_value(record, "is", measure->unit).value_or(0);
        if (record.has("plus_minus")) {
            if (measure->unit == Unit::answer)
                record.report(record["plus_minus"].place(), "an answer is sure", "remove it");
            else
                detail.plus_minus = read_value(record, "plus_minus", measure->unit).value_or(0);
        }
        if (!read_subject(record, *measure, detail)) return;
        if (measure->stated == Measure::Stated::place) check_mixed(record, detail);
        if (!seen_.emplace(detail.measure, detail.gap ? std::to_string(detail.gap->value) : "at " + detail.at).second)
            record.report(record.place(), id + " is stated twice of the same",
                          "keep one entry, or say `at` which place each is of");
        job_.details.push_back(std::move(detail));
    }

    /// What is said of the whole house is said of its worst place; a place beside it would contradict it or say nothing.
    void check_mixed(const Record& record, const Detail& detail) {
        const auto& [known, is_new] = of_house_.emplace(detail.measure, detail.at.empty());
        if (is_new || known->second == detail.at.empty()) return;
        record.report(record.place(), detail.measure + " is stated of the whole house and of a place",
                      "state it place by place with `at`, or once without it, where it is worst");
    }

    bool read_subject(const Record& record, const Measure& measure, Detail& detail) {
        if (measure.stated == Measure::Stated::place) {
            if (!record.has("gap")) return true;
            record.report(record["gap"].place(), measure.id + " is of the house, not of a gap", "say where in words, with `at`");
            return false;
        }
        if (!record.require({"gap"})) return false;
        const auto position = source_.gaps.resolve(record["gap"], "gap", source_.diagnostics);
        if (!position) return false;
        detail.gap = GapIndex{*position};
        return true;
    }

    const HistorySource& source_;
    bool has_house_;
    Job& job_;
    std::set<std::pair<std::string, std::string>> seen_;
    std::map<std::string, bool> of_house_;  ///< by measure: whether it was stated of the house, and not of places
};

}  // namespace

std::optional<double> parse_input(std::string text) {
    constexpr double btu_per_hour_of_a_kilowatt = 3412.142;
    std::erase(text, ',');
    double value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc() || !(value > 0) || !std::isfinite(value)) return std::nullopt;
    const std::string unit = end;
    if (unit == " Btu/h") return value;
    if (unit == " kW") return value * btu_per_hour_of_a_kilowatt;
    return std::nullopt;
}

void read_details(const HistorySource& source, bool has_house, Job& job) { DetailReader(source, has_house, job).read(); }

}  // namespace seamward
