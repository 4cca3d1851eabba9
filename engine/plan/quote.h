// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "plan/plan.h"

namespace seamward {

/// What a customer pays for, in the order in which it is added up.
enum class Charge : std::uint8_t {
    closings,    ///< the plan's own cost: labor, and the material that is used
    warranty,    ///< closings that did not hold and are done again free of charge: a credit
    packs,       ///< whole packs less the material that charged closings use; below 0 where cases are cheaper than single packs
    departures,  ///< devices and traps for animals that live in the house, and the time for them
    visits,      ///< each visit with work that is charged, after the first such
    least,       ///< what is charged for the first such visit falls short of the least charge of a visit by so much
    overhead,    ///< share of all above
    tax          ///< share of all above
};

/// `closings`, `packs`: for programs.
[[nodiscard]] const char* charge_id(Charge charge);

struct ChargeLine {
    Charge charge = Charge::closings;
    Money amount;
};

/// What an option costs.
struct QuoteSum {
    std::vector<ChargeLine> lines;  ///< the closings always, others where they are not 0; they add up to `total`
    Money total, deposit, balance;
    double minutes = 0;        ///< work on the closings, devices and traps
    std::uint32_t visits = 0;  ///< the first one counted

    /// 0 where there is no such line.
    [[nodiscard]] Money of(Charge charge) const;
};

/// Half a cent goes up. Work at the gaps of `free` is not charged, nor is its material, nor a visit for it alone. A plan without
/// steps costs nothing, nor does one whose steps are all at gaps of `free`. Every material must be in the book.
[[nodiscard]] QuoteSum sum_of(const Plan& plan, const PriceBook& prices, std::span<const GapIndex> free = {});

/// The gaps whose closing did not hold, so that the customer called back within so many months of it, and that are open yet.
[[nodiscard]] std::vector<GapIndex> under_warranty(const Job& job, std::uint32_t months);

/// A share of an amount that is not below 0, in whole cents, half a cent up. Shares count to a millionth of a percent.
[[nodiscard]] Money share_of(Money amount, double share);

/// What a quote is to be made of.
struct QuoteSettings {
    std::vector<Pest> against;
    PriceBook prices = shipped_prices();
    bool invented = true;  ///< the prices are the shipped ones
    Date date = today();
};

/// One thing that the customer can order.
struct QuoteOption {
    Message name;
    std::vector<std::size_t> against;  ///< positions in Quote::animals, rising; where there is no plan those that it fails for
    bool everything = false;           ///< closes what can be closed, beyond these animals
    double nothing_from = 0;           ///< with `everything`: so wide or wider no way in is left, meters
    Plan plan;
    QuoteSum sum;
    /// For each animal of the quote that still gets in its widest way, with the position in Quote::animals. Where there is no
    /// plan, the one way that cannot be closed.
    std::vector<OpenWay> stays_open;
    std::size_t guessed = 0;     ///< of its gaps those whose size is a guess
    std::size_t unmeasured = 0;  ///< those and the ones of which the survey does not say how their size is known
};

/// What a customer is offered.
struct Quote {
    /// What it is planned against, from the largest gap needed to the smallest; after these the job's other animals.
    std::vector<Pest> animals;
    std::vector<QuoteOption> options;  ///< with a plan, totals rising; then those without one
    std::vector<GapIndex> free;        ///< closed again free of charge, see under_warranty()
    std::size_t left_out = 0;          ///< options that would have been too many
    Date date, valid_until;

    [[nodiscard]] bool feasible() const { return !options.empty() && options.front().plan.feasible; }
};

/// So many options of nested sets of animals are offered at most.
inline constexpr std::size_t most_quote_options = 4;

/// A plan for each nested set of animals, from the one that needs the largest gap to all of them. An animal against which there
/// is no plan is left out of the sets that follow. An option that costs no less than one that keeps out more is not offered; of
/// more than `most_quote_options` the first, the last and those with the largest steps in price are. When what else can be closed
/// costs more than the last of them, that is one more. Deterministic for a date; one plan for each animal and one more.
[[nodiscard]] Quote make_quote(const Job& job, const QuoteSettings& settings, const RunContext& context);

/// The widest way that one animal still has once the steps of a plan are done; nothing: there is none. What rodents gnaw through
/// does not stop one that gnaws. OpenWay::pest is 0.
[[nodiscard]] std::optional<OpenWay> widest_left(const Job& job, const Plan& plan, const Pest& animal);

}  // namespace seamward
