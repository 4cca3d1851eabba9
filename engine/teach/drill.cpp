// SPDX-License-Identifier: GPL-3.0-or-later
#include "teach/drill.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <fstream>
#include <tuple>
#include <unordered_map>

#include "base/file_io.h"
#include "base/nearest_word.h"
#include "base/text.h"
#include "catalog/shipped.h"
#include "job_file/id_index.h"
#include "teach/key.h"
#include "teach/reading.h"
#include "teach/score.h"

namespace seamward {

namespace {

constexpr std::array<std::string_view, 13> drill_keys{"seamward-drill", "id",     "title", "difficulty", "story",  "job", "scope",
                                                      "animals",        "decoys", "names", "pass",       "widths", "seen"};
constexpr std::array<std::string_view, 3> scope_keys{"spaces", "gaps", "not"};
constexpr std::array<std::string_view, 4> decoy_keys{"gap", "name", "at", "looks"};
constexpr std::array<std::string_view, 2> name_keys{"gap", "name"};
constexpr std::array<std::string_view, 3> width_keys{"share", "least", "why"};
constexpr std::array<std::string_view, 2> seen_keys{"room", "animal"};
constexpr std::array<std::string_view, 3> difficulty_words{"easy", "medium", "hard"};
constexpr std::uint64_t most_bytes = 16ULL << 20;

double figure(DrillScore::Of of) { return drill_figure(shipped_drill_scores(), of); }

/// Where a place stands in the walk: outdoors round the house, then space by space.
class Walk {
public:
    explicit Walk(const Job& job) : job_(job) {
        double count = 0;
        for (const Gap& gap : job.survey.gaps) {
            if (!gap.at) continue;
            middle_.x += gap.at->x;
            middle_.y += gap.at->y;
            ++count;
        }
        if (count > 0) middle_ = {middle_.x / count, middle_.y / count, 0};
    }

    [[nodiscard]] std::tuple<std::uint32_t, double, double, double> of(const DrillPlace& place) const {
        std::uint32_t zone = 0;  // outdoors, and where nobody can tell
        if (place.gap) {
            const Gap& gap = job_.survey[*place.gap];
            const bool outside = job_.survey[gap.between[0]].kind == SpaceKind::outdoors ||
                                 job_.survey[gap.between[1]].kind == SpaceKind::outdoors;
            if (!outside) zone = 1 + zone_of(gap);
        }
        if (!place.at) return {zone, 10, 0, 0};
        if (zone > 0) return {zone, place.at->z, place.at->x, place.at->y};
        return {zone, std::atan2(place.at->y - middle_.y, place.at->x - middle_.x), place.at->z, place.at->x};
    }

private:
    /// The room, where there is one; else the first space.
    [[nodiscard]] std::uint32_t zone_of(const Gap& gap) const {
        for (const SpaceIndex end : gap.between) {
            if (job_.survey[end].is_living()) return end.value;
        }
        return std::min(gap.between[0].value, gap.between[1].value);
    }

    const Job& job_;
    Point middle_;
};

class DrillReader {
public:
    DrillReader(const Document& document, const std::filesystem::path& path, const RunContext& context, Make make,
                const FileTexts& newer)
        : path_(path), diagnostics_(document.file()), file_(document.root(), drill_keys, "drill file", diagnostics_) {
        check_version(file_, "seamward-drill");
        read_job_of_drill(context, make, newer);
    }

    DrillRound read() {
        read_head();
        IdIndex spaces(round_.job.survey.spaces.size()), gaps(round_.job.survey.gaps.size());
        for (const Space& space : round_.job.survey.spaces) spaces.add(space.id);
        for (const Gap& gap : round_.job.survey.gaps) gaps.add(gap.id);
        read_animals();
        read_decoys(gaps);
        read_scope(spaces, gaps);
        read_names(gaps);
        read_seen(spaces);
        diagnostics_.throw_if_any();
        order_places();
        check_key();
        diagnostics_.throw_if_any();
        return std::move(round_);
    }

private:
    void read_job_of_drill(const RunContext& context, Make make, const FileTexts& newer) {
        const std::string job = file_.required_line("job");
        if (job.empty()) diagnostics_.throw_if_any();  // without its job, no id of a drill can be judged
        const std::filesystem::path path = path_.parent_path() / job;
        std::error_code error;
        const auto text = newer.find(newer.empty() ? path : std::filesystem::weakly_canonical(path, error));
        if (text == newer.end() && !std::filesystem::exists(path, error)) {
            file_.report(file_["job"].place(), "no such file: " + path.string(),
                         "check the path; it is taken from the folder of the drill file");
            diagnostics_.throw_if_any();
        }
        try {
            round_.job =
                text == newer.end() ? read_job(path, context, make) : parse_job(text->second, path, context, make, newer);
        } catch (const BadInput& bad) {
            std::vector<Diagnostic> faults = bad.diagnostics();
            for (Diagnostic& fault : faults) fault.what += " (in the job of " + diagnostics_.file() + ")";
            throw BadInput(std::move(faults));
        }
    }

    void read_head() {
        Drill& drill = round_.drill;
        file_.require({"title", "story", "difficulty"});
        drill.id = file_.required_line("id");
        drill.title = read_spoken(file_, "title", diagnostics_);
        drill.story = read_spoken(file_, "story", diagnostics_);
        drill.difficulty = static_cast<Difficulty>(file_.word("difficulty", difficulty_words).value_or(0));
        drill.pass_mark = file_.percent("pass").value_or(figure(DrillScore::Of::pass_mark));
        if (drill.pass_mark > 1)
            file_.report(file_["pass"].place(), "no answers have more than all points", "write 100 % or less");
        drill.widths = {figure(DrillScore::Of::width_share), figure(DrillScore::Of::width_least), {}};
        if (!file_.has("widths")) return;
        const Record widths(file_["widths"], width_keys, "widths", diagnostics_);
        widths.require({"share", "least", "why"});
        drill.widths = {widths.percent("share").value_or(0), widths.length("least").value_or(0),
                        read_spoken(widths, "why", diagnostics_)};
    }

    [[nodiscard]] std::optional<Pest> find_animal(Node node) {
        const std::optional<std::string> id = read_line(node, "animal", diagnostics_);
        if (!id) return std::nullopt;
        for (const Pest& pest : round_.job.pests) {
            if (pest.id == *id) return pest;
        }
        if (const Pest* shipped = shipped_pests().find(*id)) return *shipped;
        const std::string mend = suggestion(*id, shipped_pests().ids());
        diagnostics_.add(node.place(), "unknown animal " + in_quotes(*id), mend.empty() ? "docs/catalog.md lists them" : mend);
        return std::nullopt;
    }

    void read_animals() {
        file_.each("animals", [&](Node node) {
            if (std::optional<Pest> pest = find_animal(node)) round_.drill.animals.push_back(std::move(*pest));
        });
        if (!is_listed(file_, "animals")) round_.drill.animals = round_.job.pests;
        if (round_.drill.animals.empty())
            file_.report(file_.place(), "neither the drill nor its job names an animal", "add animals: [bark-scorpion]");
    }

    void read_decoys(const IdIndex& gaps) {
        file_.each("decoys", [&](Node node) {
            const Record record(node, decoy_keys, "decoy", diagnostics_);
            if (!record.usable()) return;
            Decoy decoy;
            DrillPlace place;
            decoy.looks = read_spoken(record, "looks", diagnostics_);
            place.name = read_spoken(record, "name", diagnostics_);
            place.decoy = round_.drill.decoys.size();
            if (record.has("gap")) {
                if (const auto gap = gaps.resolve(record["gap"], "gap", diagnostics_)) decoy.gap = place.gap = GapIndex{*gap};
                if (record.has("at"))
                    record.report(record["at"].place(), "a decoy that is a gap of the job is where that is", "remove at or gap");
                if (place.gap) place.at = round_.job.survey[*place.gap].at;
            } else {
                record.require({"name", "at"});
                if (record.has("at")) place.at = read_at(record["at"], diagnostics_);
            }
            decoy_places_.push_back(node.place());
            round_.drill.decoys.push_back(std::move(decoy));
            add(std::move(place), node.place());
        });
    }

    void add(DrillPlace place, Place where) {
        if (place.gap && place_of_.contains(place.gap->value)) {
            diagnostics_.add(where, "gap \"" + round_.job.survey[*place.gap].id + "\" stands twice among the decoys", "keep one");
            return;
        }
        if (place.gap) place_of_.emplace(place.gap->value, round_.places.size());
        round_.places.push_back(std::move(place));
    }

    void read_scope(const IdIndex& spaces, const IdIndex& gaps) {
        const Survey& survey = round_.job.survey;
        std::vector<bool> within(survey.gaps.size(), !file_.has("scope"));
        const Record scope(file_["scope"], scope_keys, "scope", diagnostics_);
        std::vector<bool> around(survey.spaces.size(), false);
        scope.each("spaces", [&](Node node) {
            if (const auto space = spaces.resolve(node, "space", diagnostics_)) around[*space] = true;
        });
        for (std::size_t i = 0; i < survey.gaps.size(); ++i) {
            const auto& [a, b] = survey.gaps[i].between;
            within[i] = within[i] || around[a.value] || around[b.value];
        }
        scope.each("gaps", [&](Node node) {
            if (const auto gap = gaps.resolve(node, "gap", diagnostics_)) within[*gap] = true;
        });
        scope.each("not", [&](Node node) {
            if (const auto gap = gaps.resolve(node, "gap", diagnostics_)) within[*gap] = false;
        });
        for (std::uint32_t i = 0; i < within.size(); ++i) {
            if (within[i] && !place_of_.contains(i)) add({GapIndex{i}, {}, survey.gaps[i].at, std::nullopt}, {});
        }
    }

    void read_names(const IdIndex& gaps) {
        file_.each("names", [&](Node node) {
            const Record record(node, name_keys, "name of a place", diagnostics_);
            if (!record.require({"gap", "name"})) return;
            const auto gap = gaps.resolve(record["gap"], "gap", diagnostics_);
            const Spoken name = read_spoken(record, "name", diagnostics_);
            if (!gap) return;
            const auto place = place_of_.find(*gap);
            if (place == place_of_.end())
                record.report(record["gap"].place(), "gap \"" + round_.job.survey.gaps[*gap].id + "\" is no place of this drill",
                              "add it to scope, or remove its name");
            else
                round_.places[place->second].name = name;
        });
    }

    void read_seen(const IdIndex& spaces) {
        if (!file_.has("seen")) return;
        const Record record(file_["seen"], seen_keys, "seen", diagnostics_);
        if (!record.require({"room", "animal"})) return;
        const auto room = spaces.resolve(record["room"], "space", diagnostics_);
        std::optional<Pest> animal = find_animal(record["animal"]);
        if (room && animal) round_.drill.seen = SeenAnimal{{*room}, std::move(*animal)};
    }

    void order_places() {
        const Walk walk(round_.job);
        std::stable_sort(round_.places.begin(), round_.places.end(),
                         [&](const DrillPlace& a, const DrillPlace& b) { return walk.of(a) < walk.of(b); });
    }

    /// A drill that nobody can do, or that has no answer, is a fault of its file.
    void check_key() {
        const std::vector<PlaceKey> key = drill_key(round_);
        if (std::none_of(key.begin(), key.end(), [](const PlaceKey& place) { return place.due(); }))
            file_.report(file_.place(), "nothing is open to an animal of this drill, and nothing has to stay open",
                         "widen its scope, or name other animals");
        for (std::size_t i = 0; i < round_.places.size(); ++i) {
            const DrillPlace& place = round_.places[i];
            if (!place.decoy || key[i].state != PlaceState::open) continue;
            diagnostics_.add(decoy_places_[*place.decoy],
                             "decoy \"" + round_.job.survey[*place.gap].id + "\" lets " +
                                 round_.drill.animals[key[i].passes.front()].name +
                                 " through and may be closed: it is a gap to find",
                             "take it out of the decoys, or make it narrower in the job");
        }
        if (round_.drill.seen) check_entry();
    }

    /// By which entry a seen animal came is asked of the places of the drill.
    void check_entry() {
        const std::vector<GapIndex> right = right_entries(round_);
        if (right.empty()) {
            file_.report(file_["seen"].place(), "no open way leads that animal to that room", "name another room or animal");
            return;
        }
        if (std::any_of(right.begin(), right.end(), [&](GapIndex gap) { return place_of_.contains(gap.value); })) return;
        const std::string& id = round_.job.survey[right.front()].id;
        file_.report(file_["seen"].place(),
                     "the animal came by gap \"" + id + "\", which is no place of this drill: no answer would be right",
                     "add " + id + " to scope, or name another room or animal");
    }

    std::filesystem::path path_;
    Diagnostics diagnostics_;
    Record file_;
    DrillRound round_;
    std::unordered_map<std::uint32_t, std::size_t> place_of_;  ///< by gap, before places are put in order
    std::vector<Place> decoy_places_;                          ///< in the file, by decoy
};

}  // namespace

const char* difficulty_word(Difficulty difficulty) { return difficulty_words.at(static_cast<std::size_t>(difficulty)).data(); }

bool begins_as_drill(std::string_view text) {
    constexpr std::string_view mark = "\xef\xbb\xbf", key = "seamward-drill";
    if (text.starts_with(mark)) text.remove_prefix(mark.size());
    while (!text.empty()) {
        const bool whole_line = text[0] == '#' || text[0] == '%' || text.starts_with("---");
        const bool passed_over = whole_line || std::string_view(" \t\r\n{").find(text[0]) != std::string_view::npos;
        if (!passed_over) break;
        text.remove_prefix(whole_line ? std::min(text.find('\n'), text.size()) : 1);
    }
    const bool quoted = text.starts_with('"') || text.starts_with('\'');
    const char quote = quoted ? text[0] : ' ';
    if (quoted) text.remove_prefix(1);
    if (!text.starts_with(key)) return false;
    text.remove_prefix(key.size());
    if (quoted && !text.starts_with(quote)) return false;
    if (quoted) text.remove_prefix(1);
    const std::size_t colon = text.find_first_not_of(" \t\r\n");
    return colon != std::string_view::npos && text[colon] == ':';
}

std::optional<std::vector<std::filesystem::path>> drill_files(const std::filesystem::path& folder) {
    constexpr std::size_t head = 65'536;  // bytes in which the first key stands, whatever is said above it
    std::error_code error;
    std::vector<std::filesystem::path> files;
    for (std::filesystem::directory_iterator entry(folder, error), end; !error && entry != end; entry.increment(error)) {
        const std::string ending = entry->path().extension().string();
        std::error_code unknown;
        if ((ending != ".yaml" && ending != ".yml" && ending != ".json") || !entry->is_regular_file(unknown)) continue;
        std::ifstream file(entry->path(), std::ios::binary);
        std::string text(head, '\0');
        file.read(text.data(), static_cast<std::streamsize>(text.size()));
        text.resize(static_cast<std::size_t>(file.gcount()));
        if (begins_as_drill(text)) files.push_back(entry->path());
    }
    if (error) return std::nullopt;
    std::sort(files.begin(), files.end());
    return files;
}

DrillRound parse_drill(std::string_view text, const std::filesystem::path& path, const RunContext& context, Make make,
                       const FileTexts& newer) {
    const std::string name = path.string();
    const Document document = path.extension() == ".json" ? parse_json(text, name) : parse_yaml(text, name);
    return DrillReader(document, path, context, make, newer).read();
}

DrillRound read_drill(const std::filesystem::path& path, const RunContext& context, Make make) {
    return parse_drill(read_file(path, path.string(), most_bytes), path, context, make);
}

Job job_to_inspect(const DrillRound& round) {
    Job job = round.job;
    job.survey.gaps.clear();
    job.closed.clear();
    job.occupied.clear();
    job.sightings.clear();
    job.gaps_of_house = 0;
    job.house.survey.gaps.clear();
    job.house.places.clear();
    return job;
}

}  // namespace seamward
