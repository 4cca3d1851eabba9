// SPDX-License-Identifier: GPL-3.0-or-later
#include "job_file/read_history.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <string>

#include "base/nearest_word.h"
#include "base/text.h"
#include "catalog/shipped.h"

namespace seamward {

namespace {

constexpr std::array<std::string_view, 6> closed_keys{"gap", "with", "opening", "date", "callback", "note"};
constexpr std::array<std::string_view, 3> callback_keys{"date", "cause", "mended"};
constexpr std::array<std::string_view, 6> occupied_keys{"space", "animal", "seen", "way", "left", "note"};
constexpr std::array<std::string_view, 5> sighting_keys{"room", "pest", "date", "count", "note"};
constexpr std::array<std::string_view, 4> check_keys{"check", "date", "by", "note"};
constexpr std::array<std::string_view, 2> check_words{"combustion-safety", "co-alarms"};
constexpr std::array<std::string_view, 8> site_keys{"state",       "built", "roof", "occupants",
                                                    "association", "gates", "pets", "note"};
constexpr std::array<std::string_view, 5> roof_words{"tile", "shingle", "metal", "membrane", "foam"};
constexpr std::array<std::string_view, 3> occupant_words{"owner", "tenant", "vacant"};
/// Of the United States: states, the District of Columbia and territories, as the Postal Service abbreviates them.
constexpr std::array<std::string_view, 56> states{
    "AL", "AK", "AZ", "AR", "CA", "CO", "CT", "DE", "DC", "FL", "GA", "HI", "ID", "IL", "IN", "IA", "KS", "KY", "LA",
    "ME", "MD", "MA", "MI", "MN", "MS", "MO", "MT", "NE", "NV", "NH", "NJ", "NM", "NY", "NC", "ND", "OH", "OK", "OR",
    "PA", "RI", "SC", "SD", "TN", "TX", "UT", "VT", "VA", "WA", "WV", "WI", "WY", "PR", "GU", "VI", "AS", "MP"};
constexpr int first_year_built = 1600;
constexpr int last_year_built = 2999;

class HistoryReader {
public:
    HistoryReader(const HistorySource& source, Job& job)
        : file_(source.file), spaces_(source.spaces), gaps_(source.gaps), diagnostics_(source.diagnostics), job_(job) {}

    void read() {
        read_closed();
        file_.each("occupied", [&](Node node) { read_occupant(node); });
        file_.each("sightings", [&](Node node) { read_sighting(node); });
        file_.each("checks", [&](Node node) { read_check(node); });
        read_site();
    }

private:
    void read_closed() {
        std::vector<bool> seen(job_.survey.gaps.size(), false);
        file_.each("closed", [&](Node node) {
            const Record record(node, closed_keys, "closed entry", diagnostics_);
            (void)record.text("note");
            if (!record.require({"gap"})) return;
            const auto position = gaps_.resolve(record["gap"], "gap", diagnostics_);
            const std::string with = record.line("with").value_or("");
            const Treatment* treatment = with.empty() ? nullptr : shipped_treatments().find(with);
            if (!with.empty() && treatment == nullptr) {
                record.report(record["with"].place(), "unknown treatment \"" + with + '"', meant_treatment(with));
                return;
            }
            ClosedGap closed{{position.value_or(0)}, with, {}, record.date("date"), read_callback(record)};
            check_days(record, closed);
            const double opening = opening_left(record, treatment);
            if (!position) return;
            if (seen[*position])
                record.report(record.place(), "gap \"" + job_.survey.gaps[*position].id + "\" is closed twice", "keep one entry");
            seen[*position] = true;
            Gap& gap = job_.survey.gaps[*position];
            closed.before = gap.shape;
            closed.plus_minus = gap.evidence.plus_minus;
            if (closed.holds()) close_gap(gap, opening);
            job_.closed.push_back(std::move(closed));
        });
    }

    /// What to write instead: the id of the treatment of that name, or the nearest id.
    static std::string meant_treatment(const std::string& text) {
        for (const Treatment& row : shipped_treatments().rows) {
            if (row.name == text) return "write " + row.id;
        }
        return suggestion(text, shipped_treatments().ids());
    }

    /// A callback comes after the work, and its mending after the callback.
    static void check_days(const Record& record, const ClosedGap& closed) {
        if (!closed.callback || !closed.callback->date.ok()) return;
        if (closed.date && *closed.date > closed.callback->date)
            record.report(record["callback"].place(), "called back before it was closed", "check both dates");
        if (closed.callback->mended && *closed.callback->mended < closed.callback->date)
            record.report(record["callback"].place(), "mended before it was called back", "check both dates");
    }

    /// The clear opening that a closing left: a mesh's own, or the one that the file states. Meters.
    [[nodiscard]] static double opening_left(const Record& record, const Treatment* treatment) {
        const bool leaves_mesh = treatment != nullptr && treatment->leaves_mesh();
        if (leaves_mesh && !(treatment->opening > 0)) record.require({"opening"});
        if (!leaves_mesh && record.has("opening")) {
            record.report(record["opening"].place(), "only a mesh leaves an opening", "write with: mesh, or leave opening out");
        }
        const double stated = record.length("opening").value_or(leaves_mesh ? treatment->opening : 0);
        return leaves_mesh ? stated : 0;
    }

    [[nodiscard]] std::optional<Callback> read_callback(const Record& closed) const {
        if (!closed.has("callback")) return std::nullopt;
        const Record record(closed["callback"], callback_keys, "callback", diagnostics_);
        record.require({"date"});
        return Callback{record.date("date").value_or(Date{}), record.required_line("cause"), record.date("mended")};
    }

    /// An animal by its id: of the job's own list, or of the catalog.
    [[nodiscard]] std::optional<Pest> read_animal(const Record& record, std::string_view key) const {
        const std::string id = record.required_line(key);
        if (id.empty()) return std::nullopt;
        const auto of_job = std::find_if(job_.pests.begin(), job_.pests.end(), [&](const Pest& pest) { return pest.id == id; });
        if (of_job != job_.pests.end()) return *of_job;
        if (const Pest* shipped = shipped_pests().find(id)) return *shipped;
        std::string mend = suggestion(id, shipped_pests().ids());
        if (mend.empty()) mend = "docs/catalog.md lists them; an animal of your own goes into pests first";
        record.report(record[key].place(), "unknown animal \"" + id + '"', mend);
        return std::nullopt;
    }

    [[nodiscard]] std::optional<SpaceIndex> read_space(const Record& record, std::string_view key) const {
        if (!record.require({key})) return std::nullopt;
        const auto position = spaces_.resolve(record[key], "space", diagnostics_);
        if (!position) return std::nullopt;
        return SpaceIndex{*position};
    }

    void read_occupant(Node node) {
        const Record record(node, occupied_keys, "occupied entry", diagnostics_);
        (void)record.text("note");
        if (!record.usable()) return;
        const std::optional<SpaceIndex> space = read_space(record, "space");
        const std::optional<Pest> animal = read_animal(record, "animal");
        Occupant occupant;
        occupant.seen = record.line("seen").value_or("");
        const bool dated = !occupant.seen.empty() && occupant.seen.front() >= '0' && occupant.seen.front() <= '9';
        if (dated && occupant.seen.find(' ') == std::string::npos) (void)record.date("seen");
        if (record.has("way")) {
            if (const auto way = gaps_.resolve(record["way"], "gap", diagnostics_)) occupant.way = GapIndex{*way};
        }
        occupant.left = record.date("left");
        const Parsed<Date> seen_on = parse_date(occupant.seen);
        if (occupant.left && seen_on && *seen_on > *occupant.left)
            record.report(record["left"].place(), "it was seen after it had left", "check both dates, or remove left");
        if (!space || !animal) return;
        if (job_.survey[*space].kind == SpaceKind::outdoors)
            record.report(record["space"].place(), "what lives outdoors does not live in the house",
                          "name the space of the house that it lives in");
        occupant.space = *space;
        occupant.animal = *animal;
        job_.occupied.push_back(std::move(occupant));
    }

    void read_sighting(Node node) {
        const Record record(node, sighting_keys, "sighting", diagnostics_);
        (void)record.text("note");
        if (!record.usable()) return;
        const std::optional<SpaceIndex> room = read_space(record, "room");
        const std::optional<Pest> pest = read_animal(record, "pest");
        const std::optional<Date> date = record.date("date");
        const std::uint32_t count = record.count("count").value_or(1);
        if (room && pest) job_.sightings.push_back({*room, *pest, date, count});
    }

    void read_check(Node node) {
        const Record record(node, check_keys, "check", diagnostics_);
        (void)record.text("note");
        if (!record.usable()) return;
        record.require({"check", "date"});
        const auto what = record.word("check", check_words);
        const std::optional<Date> date = record.date("date");
        const std::string by = record.required_line("by");
        if (what && date) job_.checks.push_back({static_cast<CheckMade::What>(*what), *date, by});
    }

    void read_site() {
        const Record record(file_["site"], site_keys, "site", diagnostics_);
        Site& site = job_.site;
        site.state = record.line("state").value_or("");
        if (!site.state.empty() && std::find(states.begin(), states.end(), site.state) == states.end())
            record.report(record["state"].place(), "state: " + in_quotes(site.state) + " is no state's two letters",
                          "write AZ for Arizona; leave it out for a house elsewhere");
        if (const auto built = record.line("built")) {
            int year = 0;
            const auto [end, error] = std::from_chars(built->data(), built->data() + built->size(), year);
            if (error != std::errc() || end != built->data() + built->size() || year < first_year_built || year > last_year_built)
                record.report(record["built"].place(), "built: " + in_quotes(*built) + " is no year", "write for example 1984");
            else
                site.built = year;
        }
        if (const auto roof = record.word("roof", roof_words)) site.roof = static_cast<Site::Roof>(*roof + 1);
        if (const auto who = record.word("occupants", occupant_words)) site.occupancy = static_cast<Site::Occupancy>(*who + 1);
        site.association = record.truth("association").value_or(false);
        site.gates = record.line("gates").value_or("");
        site.pets = record.line("pets").value_or("");
        site.notes = record.text("note").value_or("");
    }

    const Record& file_;
    const IdIndex& spaces_;
    const IdIndex& gaps_;
    Diagnostics& diagnostics_;
    Job& job_;
};

}  // namespace

void read_history(const HistorySource& source, Job& job) { HistoryReader(source, job).read(); }

}  // namespace seamward
