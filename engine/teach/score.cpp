// SPDX-License-Identifier: GPL-3.0-or-later
#include "teach/score.h"

#include <algorithm>
#include <cmath>
#include <set>

#include "catalog/shipped.h"
#include "materials/duty_rules.h"
#include "materials/treatment_name.h"
#include "plan/departures.h"
#include "plan/sightings.h"
#include "plan/starved_vents.h"

namespace seamward {

namespace {

/// Shares of entries that differ by less are equally good.
constexpr double same_share = 1e-9;
/// What rounding leaves of a share of points.
constexpr double point_tolerance = 1e-9;
/// What rounding leaves of tenths of a percent.
constexpr double shown_tolerance = 1e-6;

int figure(DrillScore::Of of) { return static_cast<int>(std::lround(drill_figure(shipped_drill_scores(), of))); }

class Judge {
public:
    Judge(const DrillRound& round, const Answers& answers)
        : round_(round), answers_(answers), survey_(round.job.survey), key_(drill_key(round)) {
        result_.matched = match_findings(round, answers.findings);
    }

    DrillResult judge() {
        result_.places.resize(round_.places.size());
        for (std::size_t i = 0; i < key_.size(); ++i) ask(i);
        for (std::size_t i = 0; i < answers_.findings.size(); ++i) {
            const Matched& matched = result_.matched[i];
            if (matched.place && !matched.again) judge_place(*matched.place, i);
            if (!matched.place && !matched.gap && answers_.findings[i].open) result_.false_alarms.push_back(i);
        }
        judge_entry();
        find_harm();
        add_up();
        return std::move(result_);
    }

private:
    using Of = DrillScore::Of;

    /// What is due at a place, before anything is said of it.
    void ask(std::size_t place) {
        if (!key_[place].due()) return;
        PlaceResult& result = result_.places[place];
        result.found = result.width = result.connection = Mark::missing;
        result.most = figure(Of::found) + figure(Of::width) + figure(Of::connection);
        if (!key_[place].treatment_asked()) return;
        result.treatment = Mark::missing;
        result.most += figure(Of::treatment);
    }

    void judge_place(std::size_t place, std::size_t index) {
        const PlaceAnswer& finding = answers_.findings[index];
        const PlaceKey& key = key_[place];
        PlaceResult& result = result_.places[place];
        result.finding = index;
        const bool width_right = finding.width && std::abs(*finding.width - key.width) <=
                                                      width_slack(key, round_.drill.widths) + point_tolerance * key.width;
        if (!key.due()) {
            // Told too narrow is told safely: an animal that it is too narrow for gets through neither.
            const bool told_wider =
                key.state == PlaceState::narrow && finding.width && *finding.width > key.width && !width_right;
            if (finding.open && (key.state == PlaceState::tight || told_wider)) {
                result.false_alarm = true;
                result_.false_alarms.push_back(index);
            }
            return;
        }
        if (!finding.open) {
            result.found = Mark::wrong;
            return;
        }
        const std::array<SpaceIndex, 2>& between = survey_[*round_.places[place].gap].between;
        result.found = Mark::right;
        if (finding.width) result.width = width_right ? Mark::right : Mark::wrong;
        if (finding.between) {
            const auto& [a, b] = *finding.between;
            const bool same = (a == between[0] && b == between[1]) || (a == between[1] && b == between[0]);
            result.connection = same ? Mark::right : Mark::wrong;
        }
        if (result.treatment != Mark::not_asked && !finding.treatment.empty())
            result.treatment = is_right(key, finding.treatment, finding.opening) ? Mark::right : Mark::wrong;
        const auto points = [](Mark mark, Of of) { return mark == Mark::right ? figure(of) : 0; };
        result.points = points(result.found, Of::found) + points(result.width, Of::width) +
                        points(result.connection, Of::connection) + points(result.treatment, Of::treatment);
    }

    void judge_entry() {
        if (!round_.drill.seen) return;
        result_.entry = Mark::missing;
        if (!answers_.entry) return;
        const std::optional<GapIndex> said = match(round_, *answers_.entry).gap;
        const std::vector<GapIndex> right = right_entries(round_);
        result_.entry = said && std::find(right.begin(), right.end(), *said) != right.end() ? Mark::right : Mark::wrong;
    }

    void add_harm(std::size_t finding, GapIndex gap, Message why, Message source, Message instead) {
        result_.harms.push_back({finding, gap,
                                 message("{}: {}", {survey_[gap].called(), treatment_name(answers_.findings[finding].treatment)}),
                                 std::move(why), std::move(source), std::move(instead)});
    }

    void find_harm() {
        std::vector<Closed> treated, at_once;
        for (std::size_t i = 0; i < answers_.findings.size(); ++i) {
            const PlaceAnswer& finding = answers_.findings[i];
            const std::optional<GapIndex> gap = result_.matched[i].gap;
            if (!gap || !finding.closes()) continue;
            const DutyRuling ruling = ruling_on(survey_[*gap], round_.job.survey);
            if (!ruling.allows(finding.treatment, finding.left())) add_harm(i, *gap, ruling.why, ruling.source, ruling.instead);
            keep_tightest(treated, {{*gap, finding.left()}, i});
            if (!finding.wait) keep_tightest(at_once, {{*gap, finding.left()}, i});
        }
        std::vector<Message> doubts;
        for (const StarvingMesh& mesh :
             starving_meshes(round_.job.survey, gaps_of(treated), {round_.job.vented, round_.job.inputs}, doubts))
            add_harm(finding_of(mesh.gap, treated), mesh.gap, mesh.why, mesh.source, {});
        find_shut_in(at_once);
        std::stable_sort(result_.harms.begin(), result_.harms.end(),
                         [](const Harm& a, const Harm& b) { return a.finding < b.finding; });
    }

    /// A gap that is closed, and the finding that says so.
    struct Closed {
        TreatedGap gap;
        std::size_t by = 0;
    };

    /// Of several findings at one gap the one that leaves the least counts, so that none hides the harm that another does; of
    /// those that leave the same, the first.
    static void keep_tightest(std::vector<Closed>& all, const Closed& more) {
        for (Closed& one : all) {
            if (one.gap.gap != more.gap.gap) continue;
            if (more.gap.opening < one.gap.opening) one = more;
            return;
        }
        all.push_back(more);
    }

    static std::vector<TreatedGap> gaps_of(const std::vector<Closed>& all) {
        std::vector<TreatedGap> gaps;
        for (const Closed& one : all) gaps.push_back(one.gap);
        return gaps;
    }

    /// The finding by which a gap is closed that is among them.
    static std::size_t finding_of(GapIndex gap, const std::vector<Closed>& all) {
        return std::find_if(all.begin(), all.end(), [&](const Closed& one) { return one.gap.gap == gap; })->by;
    }

    /// What is closed only when the animal is gone shuts none in.
    void find_shut_in(const std::vector<Closed>& at_once) {
        for (const Departure& departure : departures_of(round_.job, gaps_of(at_once), drill_date(round_.job))) {
            const Occupant& occupant = round_.job.occupied[departure.occupant];
            for (const GapIndex last : departure.last) {
                const Message lives = message("{} lives here ({}), and this shuts its last way out",
                                              {as_named(occupant.animal.name), survey_[occupant.space].called()});
                const bool known = departure.removal != nullptr;
                add_harm(finding_of(last, at_once), last, lives,
                         known ? cited(shipped_removals().sources, departure.removal->source) : Message("common practice"),
                         known ? Message(departure.removal->how) : Message("ask somebody who knows the animal first"));
            }
        }
    }

    void add_up() {
        for (const PlaceResult& place : result_.places) {
            result_.points += place.points;
            result_.most += place.most;
        }
        if (result_.entry != Mark::not_asked) result_.most += figure(Of::entry);
        if (result_.entry == Mark::right) result_.points += figure(Of::entry);
        result_.points -= figure(Of::false_alarm) * static_cast<int>(result_.false_alarms.size());
        result_.points = std::max(result_.points, 0);
        const double due = round_.drill.pass_mark * result_.most;
        result_.passed = result_.harms.empty() && result_.points >= due - point_tolerance;
    }

    const DrillRound& round_;
    const Answers& answers_;
    const Survey& survey_;
    std::vector<PlaceKey> key_;
    DrillResult result_;
};

}  // namespace

Date drill_date(const Job& job) {
    Date date = parse_date(job.surveyed).value.value_or(Date{std::chrono::year{2000}, std::chrono::January, std::chrono::day{1}});
    for (const Occupant& occupant : job.occupied) {
        if (occupant.left && *occupant.left > date) date = *occupant.left;
    }
    return date;
}

std::vector<GapIndex> right_entries(const DrillRound& round) {
    std::vector<GapIndex> best;
    if (!round.drill.seen) return best;
    Job job = round.job;
    job.sightings = {{round.drill.seen->room, round.drill.seen->animal, std::nullopt, 1}};
    for (const SightingsOfPest& seen : explain_sightings(job, {}, Sizing::stated)) {
        for (const EntryShare& entry : seen.entries) {
            if (entry.share > 0 && entry.share >= seen.entries.front().share - same_share) best.push_back(entry.gap);
        }
    }
    return best;
}

int shown_tenths(double share) { return static_cast<int>(std::floor(share * 1000 + shown_tolerance)); }

DrillResult score(const DrillRound& round, const Answers& answers) { return Judge(round, answers).judge(); }

}  // namespace seamward
