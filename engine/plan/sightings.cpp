// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/sightings.h"

#include <Eigen/SparseCholesky>
#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>
#include <optional>
#include <stdexcept>

#include "plan/chances.h"
#include "plan/open_ways.h"
#include "plan/opened_again.h"

namespace seamward {

namespace {

/// A gap that an animal passes with a smaller chance than this counts as shut: widths are not known to a ten-millionth, and
/// numbers of one system that are further apart than that would drown in its rounding.
constexpr double least_chance = 1e-7;

struct MouthOf {
    double operator()(const Slot& slot) const { return slot.length; }
    double operator()(const Hole& hole) const { return std::numbers::pi * hole.diameter; }
    double operator()(const Ring& ring) const { return mid_circumference(ring); }
    double operator()(const Mesh& mesh) const { return 4 * (mesh.area ? std::sqrt(*mesh.area) : mesh.opening); }
};

bool is_inner(const Space& space) { return !space.starts_paths() && !space.is_living(); }

/// One gap as it is walked.
struct Passage {
    SpaceIndex a, b;
    GapIndex gap;
    double rate = 0;  ///< chance to pass times length of the mouth
};

std::vector<Passage> passages_of(const Survey& survey, const PassageSize& pest) {
    std::vector<Passage> passages;
    for (std::uint32_t i = 0; i < survey.gaps.size(); ++i) {
        const Gap& gap = survey.gaps[i];
        const double chance = chance_to_pass(gap, pest);
        const double rate = chance < least_chance ? 0 : chance * mouth_length(gap);
        if (rate > 0) passages.push_back({gap.between[0], gap.between[1], {i}, rate});
    }
    return passages;
}

/// Inner spaces from which one of the spaces `to` is reached along the passages, through inner spaces only.
std::vector<bool> inner_spaces_that_lead_to(const Survey& survey, std::span<const Passage> passages,
                                            const std::vector<bool>& to) {
    std::vector<Link> links;
    for (const Passage& passage : passages) links.push_back({passage.a, passage.b, passage.gap, passage.rate});
    const Network network(survey.spaces.size(), std::move(links));
    std::vector<bool> leads(survey.spaces.size(), false);
    std::vector<SpaceIndex> waiting;
    for (std::uint32_t i = 0; i < to.size(); ++i) {
        if (to[i]) waiting.push_back({i});
    }
    for (std::size_t i = 0; i < waiting.size(); ++i) {
        for (const Arc& arc : network.arcs(waiting[i])) {
            if (leads[arc.to.value] || !is_inner(survey[arc.to])) continue;
            leads[arc.to.value] = true;
            waiting.push_back(arc.to);
        }
    }
    return leads;
}

/// Walks at random through the inner spaces of a house.
class RandomWalk {
public:
    RandomWalk(const Survey& survey, const PassageSize& pest) : survey_(survey), passages_(passages_of(survey, pest)) {
        std::vector<bool> ends;
        for (const Space& space : survey.spaces) ends.push_back(!is_inner(space));
        // From the others a walk never ends; it never gets there either.
        const std::vector<bool> counts = inner_spaces_that_lead_to(survey, passages_, ends);
        row_.assign(survey.spaces.size(), no_row);
        for (std::size_t i = 0; i < counts.size(); ++i) {
            if (counts[i]) row_[i] = rows_++;
        }
        if (rows_ > 0) factorize();
    }

    [[nodiscard]] std::span<const Passage> passages() const { return passages_; }

    /// For each space the probability that a walk from there comes to `room`, before it comes to any other living space or back
    /// outdoors.
    [[nodiscard]] std::vector<double> chances_to_reach(SpaceIndex room) const {
        std::vector<double> chances(survey_.spaces.size(), 0);
        chances[room.value] = 1;
        if (rows_ == 0 || (is_inner(survey_[room]) && row_[room.value] == no_row)) return chances;
        Eigen::VectorXd into = Eigen::VectorXd::Zero(rows_);
        if (row_[room.value] != no_row) {
            into[row_[room.value]] = 1;
        } else {
            for (const Passage& passage : passages_) {
                if (passage.a == room && row_[passage.b.value] != no_row) into[row_[passage.b.value]] += passage.rate;
                if (passage.b == room && row_[passage.a.value] != no_row) into[row_[passage.a.value]] += passage.rate;
            }
        }
        Eigen::VectorXd found = solver_.solve(into);
        // Of an inner space these are visits: from elsewhere as many as from itself, as often as the walk gets there at all.
        if (row_[room.value] != no_row) found /= found[row_[room.value]];
        for (std::size_t i = 0; i < row_.size(); ++i) {
            if (row_[i] != no_row) chances[i] = std::clamp(found[row_[i]], 0.0, 1.0);
        }
        return chances;
    }

private:
    static constexpr int no_row = -1;

    void factorize() {
        std::vector<Eigen::Triplet<double>> entries;
        for (const Passage& passage : passages_) {
            const int a = row_[passage.a.value];
            const int b = row_[passage.b.value];
            if (a != no_row) entries.emplace_back(a, a, passage.rate);
            if (b != no_row) entries.emplace_back(b, b, passage.rate);
            if (a != no_row && b != no_row) {
                entries.emplace_back(a, b, -passage.rate);
                entries.emplace_back(b, a, -passage.rate);
            }
        }
        Eigen::SparseMatrix<double> matrix(rows_, rows_);
        matrix.setFromTriplets(entries.begin(), entries.end());
        solver_.compute(matrix);
        if (solver_.info() != Eigen::Success) throw std::logic_error("the walk through a house cannot be solved");
    }

    const Survey& survey_;
    std::vector<Passage> passages_;
    std::vector<int> row_;  ///< of each inner space from which the walk ends
    int rows_ = 0;
    Eigen::SimplicialLDLT<Eigen::SparseMatrix<double>> solver_;
};

/// Which entries are cut once the steps are done.
class CutEntries {
public:
    CutEntries(const Job& job, const Pest& pest, std::span<const PlanStep> steps, Sizing sizing)
        : survey_(as_it_stands_to(job, pest)), passes_(survey_.gaps.size()), worked_at_(survey_.gaps.size(), false) {
        for (const ClosedGap& closed : job.closed) {
            if (closed.holds()) worked_at_[closed.gap.value] = true;
        }
        for (const PlanStep& step : steps) {
            worked_at_[step.gap.value] = true;
            if (!pest.gnaws || !step.option.gnawed) close_gap(survey_.gaps[step.gap.value], step.option.opening);
        }
        for (std::uint32_t i = 0; i < survey_.gaps.size(); ++i) {
            const Gap& gap = survey_.gaps[i];
            passes_[i] = lets_through(gap, pest.size, sizing);
            if (passes_[i]) passages_.push_back({gap.between[0], gap.between[1], {i}, 1});
        }
    }

    [[nodiscard]] bool operator()(GapIndex gap, SpaceIndex from, SpaceIndex to) {
        if (!passes_[gap.value]) return true;
        return !survey_[to].is_living() && !leads_in(from)[to.value];
    }

    /// Whether a closing stops the animal at the gap itself.
    [[nodiscard]] bool is_closed(GapIndex gap) const { return worked_at_[gap.value] && !passes_[gap.value]; }

private:
    /// Inner spaces from which something that came from there gets into a room.
    const std::vector<bool>& leads_in(SpaceIndex from) {
        // A room that is a source is no end of the ways that begin there.
        const std::optional<std::uint32_t> but = survey_[from].is_living() ? std::optional(from.value) : std::nullopt;
        const auto [at, anew] = leads_in_.try_emplace(but);
        if (anew) {
            std::vector<bool> rooms;
            for (std::uint32_t i = 0; i < survey_.spaces.size(); ++i)
                rooms.push_back(survey_.spaces[i].is_living() && (!but || *but != i));
            at->second = inner_spaces_that_lead_to(survey_, passages_, rooms);
        }
        return at->second;
    }

    Survey survey_;
    std::vector<bool> passes_, worked_at_;
    std::vector<Passage> passages_;
    std::map<std::optional<std::uint32_t>, std::vector<bool>> leads_in_;
};

/// Adds up what was seen of one animal.
class Explainer {
public:
    Explainer(const Job& job, const Pest& pest, std::span<const PlanStep> steps, Sizing sizing)
        : job_(job),
          sizing_(sizing),
          cut_(job, pest, steps, sizing),
          shares_(job.survey.gaps.size(), 0),
          open_end_(job.survey.gaps.size(), false) {
        answer_.pest = pest;
    }

    void add(const Sighting& sighting) {
        const Space& room = job_.survey[sighting.room];
        answer_.seen += sighting.count;
        add_to(answer_.rooms, sighting);
        if (room.starts_paths() && !room.is_living())
            add_to(answer_.at_starts, sighting);
        else if (explain(sighting))
            answer_.explained += sighting.count;
        else
            add_unexplained(sighting);
    }

    SightingsOfPest finished() {
        // Shares that differ by rounding alone are told in the order of the survey.
        const auto whole = [](double share) { return std::llround(share * 1e9); };
        for (std::uint32_t i = 0; i < shares_.size(); ++i) {
            if (shares_[i] <= 0) continue;
            const double share = shares_[i] / static_cast<double>(answer_.explained);
            answer_.entries.push_back({{i}, share, !open_end_[i], cut_.is_closed({i})});
            if (!open_end_[i]) answer_.cut_share += share;
        }
        std::stable_sort(answer_.entries.begin(), answer_.entries.end(),
                         [&](const EntryShare& x, const EntryShare& y) { return whole(x.share) > whole(y.share); });
        return std::move(answer_);
    }

private:
    static void add_to(std::vector<SeenIn>& list, const Sighting& sighting) {
        const auto at = std::find_if(list.begin(), list.end(), [&](const SeenIn& seen) { return seen.room == sighting.room; });
        if (at != list.end())
            at->count += sighting.count;
        else
            list.push_back({sighting.room, sighting.count});
    }

    void add_unexplained(const Sighting& sighting) {
        add_to(answer_.unexplained, sighting);
        const Survey& then = house_at(sighting).survey;
        std::optional<OpenWay> way = widest_way_in(then);
        if (!way || (answer_.other_room && answer_.other_room->way.pinch >= way->pinch)) return;
        const Survey now = as_it_stands_to(job_, answer_.pest);
        const bool still = std::all_of(way->path.gaps.begin(), way->path.gaps.end(), [&](GapIndex gap) {
            return lets_through(now[gap], answer_.pest.size, sizing_) &&
                   counted_width(now[gap], sizing_) >= counted_width(then[gap], sizing_);
        });
        answer_.other_room = OtherRoom{std::move(*way), still};
    }

    /// With the first of its narrowest gaps.
    [[nodiscard]] std::optional<OpenWay> widest_way_in(const Survey& survey) const {
        const std::vector<GapOptions> untreated(survey.gaps.size());
        const std::optional<LeftWay> left =
            widest_way(make_closing_problem(survey, std::span(&answer_.pest, 1), untreated, sizing_), {});
        if (!left) return std::nullopt;
        OpenWay way{left->path, left->pinch, {}, 0};
        way.pinch_gap = *std::min_element(way.path.gaps.begin(), way.path.gaps.end(), [&](GapIndex a, GapIndex b) {
            return counted_width(survey[a], sizing_) < counted_width(survey[b], sizing_);
        });
        return way;
    }

    /// A house and the walks through it; neither moves.
    struct House {
        House(Survey as_it_was, const PassageSize& pest) : survey(std::move(as_it_was)), walk(survey, pest) {}
        Survey survey;
        RandomWalk walk;
    };

    /// The house on the day of the sighting; where that is not known, as it stands.
    const House& house_at(const Sighting& sighting) {
        std::vector<std::uint32_t> open;
        for (std::uint32_t i = 0; i < job_.closed.size(); ++i) {
            const ClosedGap& closed = job_.closed[i];
            const std::optional<Date> since = closed.holds() ? closed.held_since() : std::nullopt;
            if (sighting.date && since && *since >= *sighting.date) open.push_back(i);
        }
        const auto found = houses_.find(open);
        if (found != houses_.end()) return found->second;
        Survey survey = as_it_stands_to(job_, answer_.pest);
        for (const std::uint32_t i : open) open_again(job_.closed[i], survey);
        return houses_.try_emplace(std::move(open), std::move(survey), answer_.pest.size).first->second;
    }

    bool explain(const Sighting& sighting) {
        const RandomWalk& walk = house_at(sighting).walk;
        const std::vector<double> chances = walk.chances_to_reach(sighting.room);
        std::vector<std::pair<GapIndex, double>> likely;
        double sum = 0;
        const auto enter = [&](const Passage& passage, SpaceIndex from, SpaceIndex to) {
            const Space& behind = job_.survey[to];
            // What leads out of the room itself does not tell how something came into it.
            if (!job_.survey[from].starts_paths() || from == sighting.room || (behind.starts_paths() && !behind.is_living()))
                return;
            const double weight = passage.rate * chances[to.value];
            if (!(weight > 0)) return;
            likely.emplace_back(passage.gap, weight);
            sum += weight;
            if (!cut_(passage.gap, from, to)) open_end_[passage.gap.value] = true;
        };
        for (const Passage& passage : walk.passages()) {
            enter(passage, passage.a, passage.b);
            enter(passage, passage.b, passage.a);
        }
        for (const auto& [gap, weight] : likely) shares_[gap.value] += sighting.count * (weight / sum);
        return sum > 0;
    }

    const Job& job_;
    Sizing sizing_;
    CutEntries cut_;
    SightingsOfPest answer_;
    std::vector<double> shares_;                          ///< of each gap, in animals
    std::vector<bool> open_end_;                          ///< what came in there still gets into a room
    std::map<std::vector<std::uint32_t>, House> houses_;  ///< by the positions of closings that were not there yet
};

}  // namespace

double mouth_length(const Gap& gap) {
    const Mesh* mesh = std::get_if<Mesh>(&gap.shape);
    const bool behind = mesh != nullptr && !mesh->area && gap.covered;
    Shape shape = behind ? gap.covered->shape : gap.shape;
    if (!(clear_width(shape) > 0)) shape = widened(shape, behind ? gap.covered->plus_minus : gap.evidence.plus_minus);
    return gap.count * std::visit(MouthOf{}, shape);
}

std::vector<SightingsOfPest> explain_sightings(const Job& job, std::span<const PlanStep> steps, Sizing sizing) {
    std::vector<SightingsOfPest> all;
    std::vector<bool> told(job.sightings.size(), false);
    for (std::size_t first = 0; first < job.sightings.size(); ++first) {
        if (told[first]) continue;
        Explainer explainer(job, job.sightings[first].pest, steps, sizing);
        for (std::size_t i = first; i < job.sightings.size(); ++i) {
            if (job.sightings[i].pest.id != job.sightings[first].pest.id) continue;
            told[i] = true;
            explainer.add(job.sightings[i]);
        }
        all.push_back(explainer.finished());
    }
    return all;
}

}  // namespace seamward
