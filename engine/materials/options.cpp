// SPDX-License-Identifier: GPL-3.0-or-later
#include "materials/options.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <stdexcept>

#include "base/measure_text.h"
#include "base/phrases.h"
#include "catalog/shipped.h"
#include "materials/duty_rules.h"
#include "materials/joints.h"

namespace seamward {

namespace {

using Side = Treatment::Side;

/// A size on the border of a range belongs to it, whatever is left of rounding.
constexpr double size_tolerance = 1e-9;
/// Of a cent: half a cent rounds up, whatever is left of rounding.
constexpr double cent_tolerance = 1e-6;
constexpr double minutes_per_hour = 60;
/// Joints that move by less are treated as if they did not, meters.
constexpr double least_movement = 0.1e-3;

bool holds_any(const std::vector<std::string>& values, const std::vector<std::string>& wanted) {
    return std::any_of(wanted.begin(), wanted.end(),
                       [&](const std::string& word) { return std::ranges::count(values, word) > 0; });
}

/// Where one can stand to work on a gap. Most cavities are inside of walls: one is counted on only where nothing else is.
std::array<bool, 3> sides_of(const Gap& gap, const Survey& survey) {
    std::array<bool, 3> sides{};
    const auto add = [&](Side side) { sides.at(static_cast<std::size_t>(side)) = true; };
    for (const SpaceIndex end : gap.between) {
        const SpaceKind kind = survey[end].kind;
        if (kind == SpaceKind::outdoors) add(Side::outside);
        if (kind == SpaceKind::living || kind == SpaceKind::attached) add(Side::inside);
    }
    if (!sides[0] && !sides[1]) add(Side::attic);
    return sides;
}

/// The first side that the gap has and the treatment is for.
std::optional<Side> side_for(const Treatment& row, const Gap& gap, const Survey& survey) {
    const std::array<bool, 3> sides = sides_of(gap, survey);
    for (std::size_t side = 0; side < sides.size(); ++side) {
        if (sides.at(side) && row.fits.sides.at(side)) return static_cast<Side>(side);
    }
    return std::nullopt;
}

/// Whether the treatment is made for gaps of this kind: what is usual for a gap always is.
bool made_for(const Treatment& row, const Gap& gap) {
    const Treatment::Fits& fits = row.fits;
    if (std::ranges::count(fits.not_at, gap.feature) > 0) return false;
    if (gap.usual == row.id || (fits.duties.empty() && fits.features.empty())) return true;
    if (!gap.feature.empty()) return std::ranges::count(fits.features, gap.feature) > 0;
    return std::ranges::count(fits.duties, gap.duty) > 0;
}

bool fits_sizes(const Treatment& row, const Gap& gap) {
    const Treatment::Fits& fits = row.fits;
    const double width = clear_width(gap.shape);
    if (!fits.shapes.at(gap.shape.index())) return false;
    if (width < fits.from - size_tolerance || width > fits.to + size_tolerance) return false;
    const auto* ring = std::get_if<Ring>(&gap.shape);
    if (ring != nullptr && ring->around > fits.around + size_tolerance) return false;
    if (gap.depth && *gap.depth < fits.depth - size_tolerance) return false;
    if (row.leaves == Treatment::Leaves::nothing) return true;
    return row.opening > 0 && row.opening < width - size_tolerance;  // a mesh as coarse as the gap changes nothing
}

bool fits(const Treatment& row, const Gap& gap, const Survey& survey) {
    if (!fits_sizes(row, gap) || !made_for(row, gap) || !side_for(row, gap, survey)) return false;
    if (gap.substrates.empty()) return true;
    return !holds_any(row.fits.not_on, gap.substrates) &&
           (row.fits.only_on.empty() || holds_any(row.fits.only_on, gap.substrates));
}

bool area_unknown(const Gap& gap) {
    const auto* mesh = std::get_if<Mesh>(&gap.shape);
    return mesh != nullptr && !mesh->area && !gap.covered;
}

/// One piece of the gap; a mesh whose area is not stated is as large as what it was put over.
Piece piece_to_treat(const Gap& gap, double unstated) {
    const auto* mesh = std::get_if<Mesh>(&gap.shape);
    if (mesh == nullptr || mesh->area || !gap.covered) return piece_of(gap.shape, unstated);
    Piece piece = piece_of(gap.covered->shape, unstated);
    piece.width = mesh->opening;
    return piece;
}

/// What one option takes, of all pieces of the gap.
class Estimate {
public:
    Estimate(const Treatment& row, const Gap& gap, const Survey& survey, const PriceBook& prices, double ground)
        : row_(row),
          gap_(gap),
          ground_(ground),
          prices_(prices),
          side_(side_for(row, gap, survey).value_or(Side::outside)),
          piece_(piece_to_treat(gap, row.unstated)) {}

    [[nodiscard]] bool on_ladder() const {
        static const double reach = site_caution(shipped_site_cautions(), SiteCaution::When::ladder).limit;
        return side_ == Side::outside && gap_.at && gap_.at->z > ground_ + reach;
    }
    [[nodiscard]] bool in_attic() const { return side_ == Side::attic; }

    [[nodiscard]] double minutes() const {
        const double access = (on_ladder() ? row_.access.ladder : 0) + (in_attic() ? row_.access.attic : 0);
        return row_.work.setup + access + gap_.count * (row_.work.piece + row_.work.meter * piece_.length);
    }

    [[nodiscard]] std::vector<Need> needs() const {
        std::vector<Need> needs;
        for (const Take& take : row_.takes) {
            Need need = taken(take, gap_.shape, piece_, gap_.depth);
            const double waste = material(need.material).by == Material::By::piece ? 0 : prices_.waste;
            need.amount *= (take.as == Take::As::whole ? 1 : gap_.count) * (1 + waste);
            const auto same =
                std::find_if(needs.begin(), needs.end(), [&](const Need& n) { return n.material == need.material; });
            if (same == needs.end())
                needs.push_back(std::move(need));
            else
                same->amount += need.amount;
        }
        return needs;
    }

    [[nodiscard]] Money cost(const std::vector<Need>& needs) const {
        double cents = static_cast<double>(prices_.labor_per_hour.cents) * minutes() / minutes_per_hour;
        for (const Need& need : needs) {
            const Material& bought = material(need.material);
            cents += static_cast<double>(bought.price.cents) * need.amount / bought.holds;
        }
        return {static_cast<std::int64_t>(std::floor(cents + 0.5 + cent_tolerance))};
    }

    [[nodiscard]] std::vector<Message> steps() const {
        std::vector<Message> steps(row_.steps.begin(), row_.steps.end());
        if (!row_.conditions.empty()) steps.push_back(message("Conditions: {}", {row_.conditions}));
        if (side_ == Side::outside && row_.rain > 0) steps.push_back(message("Keep rain off for {}", {drying_time(row_.rain)}));
        if (row_.paint > 0) steps.push_back(message("Paint no earlier than after {}", {drying_time(row_.paint)}));
        if (area_unknown(gap_))
            steps.push_back(message("Measure the screened opening first: its area is not stated, {} square is reckoned with",
                                    {millimeters_message(row_.unstated)}));
        return steps;
    }

    [[nodiscard]] std::vector<Message> cautions() const {
        std::vector<Message> all;
        const auto add = [&](const auto& caution, const std::vector<CatalogSource>& sources) {
            if (!caution.text.empty()) all.push_back(message("{} ({})", {caution.text, cited(sources, caution.source)}));
        };
        const Feature* feature = shipped_features().find(gap_.feature);
        if (feature != nullptr) add(feature->caution, shipped_features().sources);
        for (const Caution& caution : row_.cautions) add(caution, shipped_treatments().sources);
        return all;
    }

private:
    [[nodiscard]] const Material& material(const std::string& id) const {
        const Material* found = prices_.find(id);
        if (found == nullptr) throw std::invalid_argument("the price book has no " + id);
        return *found;
    }

    static Message drying_time(double minutes) {
        constexpr double hours_per_day = 24;
        const auto whole = [](double value) { return as_it_stands(std::to_string(static_cast<long>(std::lround(value)))); };
        const double hours = minutes / minutes_per_hour;
        if (hours < 1) return message("{} min", {whole(minutes)});
        if (hours <= 2 * hours_per_day) return message("{} h", {whole(hours)});
        return message("{} days", {whole(hours / hours_per_day)});
    }

    const Treatment& row_;
    const Gap& gap_;
    double ground_;
    const PriceBook& prices_;
    Side side_;
    Piece piece_;
};

/// Why a joint that moves would tear or crack a treatment; empty: it would not.
Message torn_by_movement(const Treatment& row, const Gap& gap) {
    const bool sticks_to_both = std::any_of(row.takes.begin(), row.takes.end(), [](const Take& take) {
        return take.as == Take::As::bead || take.as == Take::As::fill;
    });
    if (!gap.joint_spacing || !sticks_to_both || !std::holds_alternative<Slot>(gap.shape)) return {};
    const double moves = joint_movement(gap.substrates, *gap.joint_spacing);
    if (moves < least_movement) return {};
    const Message by = millimeters_message(moves);
    if (row.movement <= 0) return message("the joint moves by {} between the coldest and the hottest day, and it is rigid", {by});
    const double width = bead_width(clear_width(gap.shape));
    const double due = joint_width(row.movement, 0, 0, 0, moves, 0);
    if (due <= width + size_tolerance) return {};
    return message(
        "the joint moves by {} between the coldest and the hottest day; it follows {} of its width, which takes a joint of {}, "
        "and "
        "this one is {}",
        {by, as_it_stands(percent_text(row.movement)), millimeters_message(due), millimeters_message(width)});
}

Option option_of(const Treatment& row, const Gap& gap, const Survey& survey, const PriceBook& prices, double ground) {
    const Estimate estimate(row, gap, survey, prices, ground);
    Option option;
    option.treatment = row.id;
    option.needs = estimate.needs();
    option.cost = estimate.cost(option.needs);
    option.minutes = estimate.minutes();
    option.opening = row.opening;
    option.gnawed = row.gnawed;
    option.steps = estimate.steps();
    option.cautions = estimate.cautions();
    return option;
}

/// The only option of a gap whose closing the survey prices. Where it says with what, that treatment's work and materials.
Option stated_option(const Gap& gap, const Survey& survey, const PriceBook& prices, double ground) {
    Option option;
    const Treatment* with = shipped_treatments().find(gap.closing.with);
    if (with != nullptr) option = option_of(*with, gap, survey, prices, ground);
    option.cost = *gap.closing.cost * gap.count;
    option.opening = 0;
    option.gnawed = false;
    if (with != nullptr) return option;
    option.treatment = stated_closing;
    if (const Feature* feature = shipped_features().find(gap.feature); feature != nullptr && !feature->caution.text.empty())
        option.cautions = {
            message("{} ({})", {feature->caution.text, cited(shipped_features().sources, feature->caution.source)})};
    option.steps = {"The survey states a price and no method: ask the estimator"};
    return option;
}

}  // namespace

GapOptions options_for(const Gap& gap, const Survey& survey, const PriceBook& prices, double ground) {
    GapOptions found;
    if (is_shut(gap.shape) && gap.evidence.plus_minus == 0) return found;
    const DutyRuling ruling = ruling_on(gap, survey);
    bool any_fits = false;
    bool any_torn = false;
    for (const Treatment& row : shipped_treatments().rows) {
        if (!fits(row, gap, survey)) continue;
        any_fits = true;
        if (const Message torn = torn_by_movement(row, gap); !torn.empty()) {
            any_torn = true;
            found.refused.push_back({row.id, torn, cited(shipped_joints().sources, shipped_joints().find("range")->source)});
            continue;
        }
        if (ruling.allows(row.id, row.opening))
            found.options.push_back(option_of(row, gap, survey, prices, ground));
        else
            found.refused.push_back({row.id, ruling.why, ruling.source});
    }
    std::stable_sort(found.options.begin(), found.options.end(),
                     [](const Option& a, const Option& b) { return a.cost < b.cost; });
    if (gap.closing.cost && ruling.may_close) {
        found.options = {stated_option(gap, survey, prices, ground)};
        found.refused.clear();
    } else if (gap.closing.cost) {
        found.options.clear();
    }
    if (found.options.empty() && ruling.restricted() && !any_torn) found.refused = {{"", ruling.why, ruling.source}};
    if (found.options.empty() && found.refused.empty() && !any_fits)
        found.refused = {{"", "no treatment of the table fits its shape, size, depth and material", "table of treatments"}};
    return found;
}

}  // namespace seamward
