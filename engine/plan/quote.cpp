// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/quote.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <numeric>
#include <span>
#include <tuple>

#include "plan/open_ways.h"

namespace seamward {

namespace {

/// Of a cent: half a cent rounds up, whatever is left of rounding; as for the cost of an option.
constexpr double cent_tolerance = 1e-6;
constexpr double minutes_per_hour = 60;

Money rounded(double cents) { return {static_cast<std::int64_t>(std::floor(cents + 0.5 + cent_tolerance))}; }
Money difference(Money a, Money b) { return {a.cents - b.cents}; }

Money cost_of(const std::vector<Purchase>& purchases) {
    Money cost;
    for (const Purchase& purchase : purchases) cost = cost + purchase.cost;
    return cost;
}

bool holds(std::span<const GapIndex> gaps, GapIndex gap) { return std::find(gaps.begin(), gaps.end(), gap) != gaps.end(); }

/// Of the steps at these gaps.
Money cost_at(const Plan& plan, std::span<const GapIndex> gaps) {
    Money cost;
    for (const PlanStep& step : plan.steps) {
        if (holds(gaps, step.gap)) cost = cost + step.option.cost;
    }
    return cost;
}

/// Whole packs for the steps that are charged, less what their cost has in it for material: amounts at the price of single units.
Money packs_beyond(const Plan& plan, const PriceBook& prices, std::span<const GapIndex> free) {
    double cents = 0;
    std::vector<Need> needs;
    for (const PlanStep& step : plan.steps) {
        if (holds(free, step.gap)) continue;
        for (const Need& need : step.option.needs) {
            needs.push_back(need);
            const Material* material = prices.find(need.material);
            if (material != nullptr) cents += static_cast<double>(material->price.cents) * need.amount / material->holds;
        }
    }
    return difference(cost_of(to_buy(needs, prices)), rounded(cents));
}

/// The visits that a plan takes, and what each has to do. Work at `free` gaps takes a visit, and is not charged.
class Visits {
public:
    Visits(const Plan& plan, const PriceBook& prices, std::span<const GapIndex> free) : prices_(prices) {
        for (const PlanStep& step : plan.steps) (step.waits ? closing_ : first_).add(step.option.cost, holds(free, step.gap));
        for (const Departure& departure : plan.departures) {
            if (is_set_up(departure)) (departure.season ? after_season_ : first_).set_up.push_back(&departure);
        }
        for (Visit* visit : {&first_, &after_season_, &closing_}) visit->charge = charge_for(visit->set_up);
    }

    [[nodiscard]] std::uint32_t count() const {
        const std::array all{&first_, &after_season_, &closing_};
        return static_cast<std::uint32_t>(std::count_if(all.begin(), all.end(), [](const Visit* v) { return v->needed(); }));
    }
    /// Of these those with work that is charged.
    [[nodiscard]] std::uint32_t charged() const {
        const std::array all{&first_, &after_season_, &closing_};
        return static_cast<std::uint32_t>(std::count_if(all.begin(), all.end(), [](const Visit* v) { return v->charged(); }));
    }
    [[nodiscard]] Money departures() const { return first_.charge + after_season_.charge; }
    [[nodiscard]] double minutes() const { return minutes_of(first_.set_up) + minutes_of(after_season_.set_up); }
    /// What is charged for the first visit that has such work, packs not counted.
    [[nodiscard]] Money first_work() const {
        for (const Visit* visit : {&first_, &after_season_}) {
            if (visit->charged()) return visit->closings + visit->charge;
        }
        return closing_.closings;
    }

private:
    struct Visit {
        std::size_t steps = 0, free_steps = 0;
        Money closings;  ///< that are charged
        std::vector<const Departure*> set_up;
        Money charge;

        void add(Money cost, bool free) {
            ++(free ? free_steps : steps);
            if (!free) closings = closings + cost;
        }
        [[nodiscard]] bool charged() const { return steps > 0 || !set_up.empty(); }
        [[nodiscard]] bool needed() const { return charged() || free_steps > 0; }
    };

    static bool is_set_up(const Departure& departure) {
        if (departure.removal == nullptr) return false;
        if (departure.removal->by == Removal::By::one_way) return departure.device.has_value();
        return departure.removal->by == Removal::By::trapping && departure.waits();
    }

    static double minutes_of(const std::vector<const Departure*>& departures) {
        double minutes = 0;
        for (const Departure* departure : departures) minutes += departure->removal->minutes;
        return minutes;
    }

    /// Whole units, and the time at the price of labor.
    [[nodiscard]] Money charge_for(const std::vector<const Departure*>& departures) const {
        std::vector<Need> needs;
        for (const Departure* departure : departures) {
            if (!departure->removal->material.empty()) needs.push_back({departure->removal->material, 1});
        }
        const double labor = static_cast<double>(prices_.labor_per_hour.cents) * minutes_of(departures) / minutes_per_hour;
        return cost_of(to_buy(needs, prices_)) + rounded(labor);
    }

    const PriceBook& prices_;
    Visit first_, after_season_, closing_;
};

}  // namespace

const char* charge_id(Charge charge) {
    constexpr std::array ids{"closings", "warranty", "packs", "departures", "visits", "least", "overhead", "tax"};
    return ids.at(static_cast<std::size_t>(charge));
}

Money QuoteSum::of(Charge charge) const {
    Money sum;
    for (const ChargeLine& line : lines) {
        if (line.charge == charge) sum = sum + line.amount;
    }
    return sum;
}

Money share_of(Money amount, double share) {
    constexpr std::int64_t parts = 100'000'000;
    const std::int64_t of_parts = std::llround(share * static_cast<double>(parts));
    // In two pieces, so that no product is too large: the first has no remainder.
    const std::int64_t whole = amount.cents / parts * of_parts;
    return {whole + (amount.cents % parts * of_parts + parts / 2) / parts};
}

std::vector<GapIndex> under_warranty(const Job& job, std::uint32_t months) {
    std::vector<GapIndex> gaps;
    for (const ClosedGap& closed : job.closed) {
        if (closed.holds() || !closed.date) continue;
        if (closed.callback->date < months_after(*closed.date, static_cast<int>(months))) gaps.push_back(closed.gap);
    }
    return gaps;
}

QuoteSum sum_of(const Plan& plan, const PriceBook& prices, std::span<const GapIndex> free) {
    QuoteSum sum;
    const auto add = [&](Charge charge, Money amount) {
        if (charge == Charge::closings || amount != Money{}) sum.lines.push_back({charge, amount});
        sum.total = sum.total + amount;
    };
    add(Charge::closings, plan.cost);
    if (plan.steps.empty()) return sum;
    const Visits visits(plan, prices, free);
    sum.visits = visits.count();
    sum.minutes = plan.minutes + visits.minutes();
    const Money credit = cost_at(plan, free);
    add(Charge::warranty, difference({}, credit));
    if (std::all_of(plan.steps.begin(), plan.steps.end(), [&](const PlanStep& step) { return holds(free, step.gap); }))
        return sum;
    const Money packs = packs_beyond(plan, prices, free);
    add(Charge::packs, packs);
    add(Charge::departures, visits.departures());
    add(Charge::visits, prices.call_out * (std::int64_t{visits.charged()} - 1));
    add(Charge::least, std::max(Money{}, difference(prices.call_out, visits.first_work() + packs)));
    add(Charge::overhead, share_of(sum.total, prices.overhead));
    add(Charge::tax, share_of(sum.total, prices.tax));
    sum.deposit = share_of(sum.total, prices.deposit);
    sum.balance = difference(sum.total, sum.deposit);
    return sum;
}

std::optional<OpenWay> widest_left(const Job& job, const Plan& plan, const Pest& animal) {
    Survey after = job.survey;
    for (const PlanStep& step : plan.steps) {
        if (!animal.gnaws || !step.option.gnawed) close_gap(after.gaps[step.gap.value], step.option.opening);
    }
    const ClosingProblem problem =
        make_closing_problem(after, std::span(&animal, 1), std::vector<GapOptions>(after.gaps.size()), Sizing::with_plus_minus);
    std::optional<LeftWay> left = widest_way(problem, {});
    if (!left) return std::nullopt;
    OpenWay way{std::move(left->path), left->pinch, {}, 0};
    double narrowest = std::numeric_limits<double>::infinity();
    for (const GapIndex gap : way.path.gaps) {
        const double width = counted_width(after[gap], Sizing::with_plus_minus);
        if (width >= narrowest) continue;
        narrowest = width;
        way.pinch_gap = gap;
    }
    return way;
}

namespace {

Message names_of(const std::vector<Pest>& animals, const std::vector<std::size_t>& which) {
    std::vector<Message> names;
    for (const std::size_t animal : which) names.push_back(as_named(animals[animal].name));
    return listed_message(names);
}

bool needs_more(const Pest& a, const Pest& b) { return std::tie(a.size.slit, a.size.hole) > std::tie(b.size.slit, b.size.hole); }

class Quoter {
public:
    Quoter(const Job& job, const QuoteSettings& settings, const RunContext& context)
        : job_(job), settings_(settings), context_(context) {}

    Quote run() {
        quote_.date = settings_.date;
        quote_.valid_until = days_after(settings_.date, static_cast<int>(settings_.prices.valid_days));
        quote_.free = under_warranty(job_, settings_.prices.warranty_months);
        list_animals();
        plan_nested_sets();
        if (!offered_.empty()) add_everything();
        drop_what_costs_no_less();
        keep_the_largest_steps();
        quote_.options = std::move(offered_);
        for (QuoteOption& option : quote_.options) describe(option);
        for (QuoteOption& option : impossible_) quote_.options.push_back(std::move(option));
        return std::move(quote_);
    }

private:
    void list_animals() {
        quote_.animals = settings_.against;
        std::stable_sort(quote_.animals.begin(), quote_.animals.end(), needs_more);
        const std::size_t asked = quote_.animals.size();
        for (const Pest& pest : job_.pests) {
            const auto same = [&](const Pest& other) { return other.id == pest.id; };
            if (std::none_of(quote_.animals.begin(), quote_.animals.end(), same)) quote_.animals.push_back(pest);
        }
        std::stable_sort(quote_.animals.begin() + static_cast<std::ptrdiff_t>(asked), quote_.animals.end(), needs_more);
    }

    [[nodiscard]] Plan plan_against(const std::vector<std::size_t>& animals, const Pest* besides = nullptr) const {
        context_.check();
        PlanSettings settings;
        for (const std::size_t animal : animals) settings.against.push_back(quote_.animals[animal]);
        if (besides != nullptr) settings.against.push_back(*besides);
        settings.prices = settings_.prices;
        settings.date = settings_.date;
        return make_plan(job_, settings, context_);
    }

    void plan_nested_sets() {
        std::vector<std::size_t> animals;
        for (std::size_t next = 0; next < settings_.against.size(); ++next) {
            animals.push_back(next);
            QuoteOption option;
            option.against = animals;
            option.plan = plan_against(animals);
            if (option.plan.feasible) {
                offered_.push_back(std::move(option));
            } else {
                animals.pop_back();
                add_impossible(next, std::move(option));
            }
        }
    }

    /// Animals that the same way stays open to are told together.
    void add_impossible(std::size_t animal, QuoteOption option) {
        OpenWay way = *option.plan.open_way;
        const auto same = [&](const QuoteOption& other) { return other.stays_open.front().path == way.path; };
        auto found = std::find_if(impossible_.begin(), impossible_.end(), same);
        if (found == impossible_.end()) {
            way.pest = animal;
            option.against.clear();
            option.stays_open = {std::move(way)};
            impossible_.push_back(std::move(option));
            found = impossible_.end() - 1;
        }
        found->against.push_back(animal);
        found->name = names_of(quote_.animals, found->against);
    }

    /// The ladder goes on to widths below what the animals need. Whatever is as wide as its last rung stands for an animal then.
    void add_everything() {
        const QuoteOption& last = offered_.back();
        if (last.plan.ladder.empty()) return;
        Pest anything;
        anything.name = "whatever is that wide";
        anything.size.slit = anything.size.hole = last.plan.ladder.back().width;
        QuoteOption option;
        option.everything = true;
        option.nothing_from = anything.size.slit;
        option.against = last.against;
        option.plan = plan_against(last.against, &anything);
        if (option.plan.feasible) offered_.push_back(std::move(option));
    }

    /// Who pays as much may as well have the option that keeps out more.
    void drop_what_costs_no_less() {
        for (QuoteOption& option : offered_) option.sum = sum_of(option.plan, settings_.prices, quote_.free);
        if (offered_.size() > 1 && offered_.back().everything &&
            offered_.back().sum.total <= offered_[offered_.size() - 2].sum.total)
            offered_.pop_back();
        for (std::size_t i = offered_.size(); i-- > 1;) {
            if (offered_[i - 1].sum.total >= offered_[i].sum.total) offered_.erase(offered_.begin() + std::ptrdiff_t(i) - 1);
        }
    }

    void keep_the_largest_steps() {
        const std::size_t nested = offered_.size() - (!offered_.empty() && offered_.back().everything ? 1 : 0);
        if (nested <= most_quote_options) return;
        std::vector<std::size_t> middle(nested - 2);
        std::iota(middle.begin(), middle.end(), 1);
        const auto step = [&](std::size_t i) { return difference(offered_[i].sum.total, offered_[i - 1].sum.total); };
        std::stable_sort(middle.begin(), middle.end(), [&](std::size_t a, std::size_t b) { return step(a) > step(b); });
        middle.erase(middle.begin(), middle.begin() + std::ptrdiff_t(most_quote_options) - 2);
        std::sort(middle.rbegin(), middle.rend());
        quote_.left_out = middle.size();
        for (const std::size_t i : middle) offered_.erase(offered_.begin() + std::ptrdiff_t(i));
    }

    void describe(QuoteOption& option) const {
        option.name = option.everything ? Message("Everything that can be closed") : names_of(quote_.animals, option.against);
        for (const PlanStep& step : option.plan.steps) {
            const Evidence::How how = job_.survey[step.gap].evidence.how;
            option.guessed += how == Evidence::How::assumed ? 1 : 0;
            option.unmeasured += how == Evidence::How::assumed || how == Evidence::How::unstated ? 1 : 0;
        }
        for (std::size_t i = 0; i < quote_.animals.size(); ++i) {
            std::optional<OpenWay> way = widest_left(job_, option.plan, quote_.animals[i]);
            if (!way) continue;
            way->pest = i;
            option.stays_open.push_back(std::move(*way));
        }
    }

    const Job& job_;
    const QuoteSettings& settings_;
    const RunContext& context_;
    Quote quote_;
    std::vector<QuoteOption> offered_, impossible_;
};

}  // namespace

Quote make_quote(const Job& job, const QuoteSettings& settings, const RunContext& context) {
    return Quoter(job, settings, context).run();
}

}  // namespace seamward
