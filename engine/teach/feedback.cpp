// SPDX-License-Identifier: GPL-3.0-or-later
#include "teach/feedback.h"

#include <algorithm>
#include <array>
#include <string_view>

#include "base/measure_text.h"
#include "base/phrases.h"
#include "catalog/shipped.h"
#include "materials/duty_rules.h"
#include "materials/treatment_name.h"
#include "paths/trace.h"
#include "teach/briefing.h"
#include "teach/way_through.h"

namespace seamward {

namespace {

/// Rows of the table of duties about service equipment: what is open there has to be closed, not by whoever seals a house.
constexpr std::array<std::string_view, 2> electrician_rows{"meter-can", "panel-knockout"};
/// The row about what is closed by no treatment of the table, but by putting it right.
constexpr std::string_view put_together_row = "dryer-duct-joint";

class Teller {
public:
    Teller(const DrillRound& round, const Answers& answers, const DrillResult& result, const Translator& say,
           const RunContext& context)
        : round_(round),
          answers_(answers),
          result_(result),
          say_(say),
          context_(context),
          survey_(round.job.survey),
          key_(drill_key(round)) {}

    DrillFeedback tell() {
        DrillFeedback told;
        told.headline = headline();
        for (const Harm& harm : result_.harms) {
            std::vector<std::string> notes{say_(message("Why: {}.", {harm.why})), say_(message("Source: {}", {harm.source}))};
            if (!harm.instead.empty()) notes.push_back(say_(message("Instead: {}.", {harm.instead})));
            const std::optional<std::size_t> place = result_.matched[harm.finding].place;
            const Message treatment = treatment_name(answers_.findings[harm.finding].treatment);
            const Message what =
                place ? message("{}: {}", {as_it_stands(place_name(round_, *place, say_)), treatment}) : harm.what;
            told.harms.push_back({say_(what), std::move(notes)});
        }
        std::vector<PlaceFeedback> right;
        for (std::size_t i = 0; i < result_.places.size(); ++i) {
            PlaceFeedback place = place_feedback(i);
            if (place.verdict.empty()) continue;
            const bool wholly = result_.places[i].points == result_.places[i].most && !result_.places[i].false_alarm;
            (wholly ? right : told.places).push_back(std::move(place));
        }
        std::move(right.begin(), right.end(), std::back_inserter(told.places));
        told.other = other();
        return told;
    }

private:
    [[nodiscard]] std::string headline() const {
        const std::vector<Message> figures{as_it_stands(static_cast<std::size_t>(result_.points)),
                                           as_it_stands(static_cast<std::size_t>(result_.most)), as_it_stands(percent())};
        const auto harms = static_cast<std::size_t>(result_.harms.size());
        if (harms > 0) return say_(message("Not passed: it does harm. {} of {} points, {} %.", figures));
        if (result_.passed) return say_(message("Passed. {} of {} points, {} %.", figures));
        std::vector<Message> all = figures;
        all.push_back(as_it_stands(percent_text(round_.drill.pass_mark)));
        return say_(message("Not passed. {} of {} points, {} %; {} are due.", all));
    }

    /// `71.8`, as the summary of a class has it
    [[nodiscard]] std::string percent() const {
        const int tenths = shown_tenths(result_.share());
        return std::to_string(tenths / 10) + (tenths % 10 == 0 ? "" : '.' + std::to_string(tenths % 10));
    }

    [[nodiscard]] Message animals(const std::vector<std::size_t>& which) const {
        std::vector<Message> names;
        for (const std::size_t i : which) names.push_back(as_named(round_.drill.animals[i].name));
        return listed_message(names);
    }

    [[nodiscard]] Message spaces_of(const std::array<SpaceIndex, 2>& between) const {
        return message("{} and {}", {survey_[between[0]].called(), survey_[between[1]].called()});
    }

    PlaceFeedback place_feedback(std::size_t index) {
        PlaceFeedback told{index, place_name(round_, index, say_), "", {}, std::nullopt};
        const PlaceResult& result = result_.places[index];
        const PlaceKey& key = key_[index];
        if (result.false_alarm) {
            told.verdict = say_("false alarm");
            told.notes.push_back(key.state == PlaceState::narrow
                                     ? say_(message("It is {} wide: too narrow for these animals.", {width_message(key.width)}))
                                     : say_("It is tight."));
            add_looks(index, told);
            return told;
        }
        if (!key.due()) {
            if (result.finding && !answers_.findings[*result.finding].open) {
                told.verdict = say_("tight, and told so");
                add_looks(index, told);
            }
            return told;
        }
        if (result.missed()) {
            told.verdict = result.finding ? say_("missed: told to be tight") : say_("missed");
            missed_notes(index, told);
        } else {
            told.verdict = result.points == result.most ? say_("right") : say_("found, not all of it right");
            part_notes(index, told);
        }
        return told;
    }

    void add_looks(std::size_t index, PlaceFeedback& told) const {
        const std::optional<std::size_t> decoy = round_.places[index].decoy;
        if (decoy && !round_.drill.decoys[*decoy].looks.empty())
            told.notes.push_back(round_.drill.decoys[*decoy].looks.in(say_.language()));
    }

    void missed_notes(std::size_t index, PlaceFeedback& told) const {
        const PlaceKey& key = key_[index];
        const GapIndex gap = *round_.places[index].gap;
        told.notes.push_back(
            say_(message("It is {} wide and joins {}.", {width_message(key.width), spaces_of(survey_[gap].between)})));
        told.notes.push_back(what_fits(index));
        if (key.state == PlaceState::stays_open) why_open(gap, told);
        add_looks(index, told);
        if (key.passes.empty()) return;
        told.way = way(gap, {});
        if (told.way) {
            told.notes.push_back(say_(message("The way that you missed: {}.", {way_message(told.way->path)})));
            told.notes.push_back(way_note(*told.way));
        } else {
            told.notes.push_back(say_(message(
                "{} can get through, though no way into a room goes through it as the house stands.", {animals(key.passes)})));
        }
    }

    [[nodiscard]] std::string way_note(const MissedWay& way) const {
        const Message where = survey_[way.pinch_gap].called();
        if (way.open_to.empty())
            return say_(
                message("Its smallest gap: {}, {}. None of these animals gets all the way.", {width_message(way.pinch), where}));
        return say_(message("Its smallest gap: {}, {}. Open all the way to: {}.",
                            {width_message(way.pinch), where, animals(way.open_to)}));
    }

    void why_open(GapIndex gap, PlaceFeedback& told) const {
        const DutyRuling ruling = ruling_on(survey_[gap], survey_);
        const bool electric = std::find(electrician_rows.begin(), electrician_rows.end(), ruling.row) != electrician_rows.end();
        if (electric && !serves_as_opening(survey_[gap].duty))  // a meter can drains
            told.notes.push_back(say_(
                message("Not yours to close: {}. Tell the utility or an electrician. Source: {}", {ruling.why, ruling.source})));
        else if (ruling.row == put_together_row)
            told.notes.push_back(say_(
                message("Nothing may be put into it: {}. Instead: {}. Source: {}", {ruling.why, ruling.instead, ruling.source})));
        else
            told.notes.push_back(say_(message("It must stay open: {}. Source: {}", {ruling.why, ruling.source})));
    }

    /// Of the animals that get through a place, those that gnaw through a treatment.
    [[nodiscard]] std::vector<std::size_t> gnawers(const PlaceKey& key, const std::string& treatment) const {
        const Treatment* row = shipped_treatments().find(treatment);
        std::vector<std::size_t> found;
        for (const std::size_t i : key.passes) {
            if (row != nullptr && row->gnawed && round_.drill.animals[i].gnaws) found.push_back(i);
        }
        return found;
    }

    /// Likewise, those that gnaw through all that is right there: then none of it is worse than the rest for being gnawed.
    [[nodiscard]] std::vector<std::size_t> gnaw_all(const PlaceKey& key) const {
        const bool resists = std::any_of(key.right.begin(), key.right.end(),
                                         [&](const RightTreatment& right) { return gnawers(key, right.id).empty(); });
        return key.right.empty() || resists ? std::vector<std::size_t>() : gnawers(key, key.right.front().id);
    }

    [[nodiscard]] std::string none_resists(const PlaceKey& key) const {
        return say_(
            message("Nothing that fits there resists gnawing by {}: look at it at every visit.", {animals(gnaw_all(key))}));
    }

    /// What is right there, in words.
    [[nodiscard]] std::string what_fits(std::size_t index) const {
        const PlaceKey& key = key_[index];
        std::string text = names_that_fit(key);
        if (!gnaw_all(key).empty()) text += ' ' + none_resists(key);
        return text;
    }

    [[nodiscard]] std::string names_that_fit(const PlaceKey& key) const {
        std::vector<Message> fits;
        for (const RightTreatment& right : key.right) fits.push_back(treatment_name(right.id));
        if (key.leave && fits.empty()) return say_("Right: leave it as it is.");
        if (key.leave) return say_(message("Right: leave it as it is; or one of these: {}.", {joined_message(fits, "; ")}));
        if (fits.empty() && key.gnawed)
            return say_("What fits it is gnawed through by all that get through: ask the estimator for a closing that resists.");
        if (fits.empty()) return say_("No treatment of the table fits it: ask the estimator.");
        if (fits.size() == 1) return say_(message("Right: {}.", fits));
        return say_(message("Right, one of these: {}.", {joined_message(fits, "; ")}));
    }

    void part_notes(std::size_t index, PlaceFeedback& told) const {
        const PlaceResult& result = result_.places[index];
        const PlaceKey& key = key_[index];
        const PlaceAnswer& finding = answers_.findings[*result.finding];
        const GapIndex gap = *round_.places[index].gap;
        if (result.width == Mark::missing)
            told.notes.push_back(say_(message("Width not told: it is {}.", {width_message(key.width)})));
        if (result.width == Mark::wrong)
            told.notes.push_back(
                say_(message("Width: you said {}, it is {}.", {width_message(*finding.width), width_message(key.width)})));
        if (result.connection == Mark::missing)
            told.notes.push_back(say_(message("What it joins was not told: {}.", {spaces_of(survey_[gap].between)})));
        if (result.connection == Mark::wrong)
            told.notes.push_back(
                say_(message("It joins {}, not {}.", {spaces_of(survey_[gap].between), spaces_of(*finding.between)})));
        if (result.treatment == Mark::missing) told.notes.push_back(say_("Treatment not told.") + ' ' + what_fits(index));
        if (result.treatment == Mark::wrong) treatment_notes(index, finding, told);
        if (result.treatment == Mark::right && !gnaw_all(key).empty()) told.notes.push_back(none_resists(key));
    }

    void treatment_notes(std::size_t index, const PlaceAnswer& finding, PlaceFeedback& told) const {
        const PlaceKey& key = key_[index];
        const GapIndex gap = *round_.places[index].gap;
        const bool leaves = finding.treatment == leave_open;
        const Message said = leaves ? Message("it stays as it is") : treatment_name(finding.treatment);
        told.notes.push_back(say_(message("Treatment: you said {}.", {said})) + ' ' + what_fits(index));
        if (key.state == PlaceState::stays_open && !leaves) why_open(gap, told);
        if (leaves && !key.passes.empty())
            told.notes.push_back(say_(message("Left open, it lets through: {}.", {animals(key.passes)})));
        const std::vector<std::size_t> through = gnawers(key, finding.treatment);
        if (through.empty() || !gnaw_all(key).empty()) return;
        const Treatment* row = shipped_treatments().find(finding.treatment);
        told.notes.push_back(say_(
            message("Gnaws through it: {}. Source: {}", {animals(through), cited(shipped_treatments().sources, row->source)})));
    }

    [[nodiscard]] std::optional<MissedWay> way(GapIndex gap, std::span<const SpaceIndex> to) const {
        const std::optional<EntryPath> path = way_through(survey_, gap, to, context_);
        if (!path) return std::nullopt;
        MissedWay way{*path, 0, pinch_gap(survey_, *path), open_to(survey_, *path, round_.drill.animals)};
        way.pinch = clear_width(survey_[way.pinch_gap].shape);
        return way;
    }

    /// `yard, through hose bibb, into north wall, through ...`
    [[nodiscard]] Message way_message(const EntryPath& path) const {
        std::vector<Message> steps{survey_[path.from()].called()};
        for (std::size_t i = 0; i < path.gaps.size(); ++i)
            steps.push_back(message("[{}] > {}", {survey_[path.gaps[i]].called(), survey_[path.spaces[i + 1]].called()}));
        return joined_message(steps, " > ");
    }

    [[nodiscard]] std::vector<std::string> other() const {
        std::vector<std::string> lines;
        for (std::size_t i = 0; i < answers_.findings.size(); ++i) {
            const Matched& matched = result_.matched[i];
            const Message number = as_it_stands(i + 1);
            if (matched.again)
                lines.push_back(say_(message("Finding {} tells of {} once more; it was not counted.",
                                             {number, as_it_stands(place_name(round_, *matched.place, say_))})));
            else if (!matched.place && matched.gap)
                lines.push_back(say_(message("Finding {} is about {}, which is no part of this drill; it was not counted.",
                                             {number, survey_[*matched.gap].called()})));
            else if (!matched.place && answers_.findings[i].open)
                lines.push_back(say_(message("Finding {}: nothing is open within reach of that point.", {number})));
        }
        if (result_.entry != Mark::not_asked) lines.push_back(entry_line());
        return lines;
    }

    [[nodiscard]] std::string entry_line() const {
        if (result_.entry == Mark::right) return say_("The entry is right.");
        const std::vector<GapIndex> right = right_entries(round_);
        std::vector<Message> names;
        for (const GapIndex gap : right) names.push_back(survey_[gap].called());
        const SpaceIndex room = round_.drill.seen->room;
        const std::optional<MissedWay> through = way(right.front(), std::span(&room, 1));
        const Message path = through ? way_message(through->path) : Message();
        if (result_.entry == Mark::missing)
            return say_(message("The entry was not told. It is: {}. The way: {}.", {listed_message(names), path}));
        return say_(message("The entry is another: {}. The way: {}.", {listed_message(names), path}));
    }

    const DrillRound& round_;
    const Answers& answers_;
    const DrillResult& result_;
    const Translator& say_;
    const RunContext& context_;
    const Survey& survey_;
    std::vector<PlaceKey> key_;
};

}  // namespace

DrillFeedback feedback(const DrillRound& round, const Answers& answers, const DrillResult& result, const Translator& say,
                       const RunContext& context) {
    return Teller(round, answers, result, say, context).tell();
}

}  // namespace seamward
