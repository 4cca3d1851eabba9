// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/report_facts.h"

#include <algorithm>
#include <functional>

#include "catalog/passage.h"
#include "house/route.h"
#include "network/on_ways.h"
#include "provisions/gap_parts.h"

namespace seamward {

namespace {

constexpr std::size_t best_ways = 10;      ///< of all, as the command line shows them
constexpr std::size_t ways_of_animal = 3;  ///< so many of each animal at least

class FactsGatherer {
public:
    FactsGatherer(ReportFacts& facts, const RunContext& context) : facts_(facts), context_(context) {}

    void gather() {
        const PlanSettings& planning = facts_.settings.planning;
        facts_.plan = make_plan(facts_.job, planning, context_);
        if (!facts_.animals.empty()) {
            const QuoteSettings quoting{planning.against, planning.prices, facts_.settings.invented_prices, planning.date};
            facts_.quote = make_quote(facts_.job, quoting, context_);
            facts_.terms = terms_of(facts_.job, quoting, facts_.quote);
        }
        ways();
        facts_.entries = entries_of(facts_.survey(), facts_.animals);
    }

private:
    void ways() {
        context_.stage("ranking");
        add_best(facts_.survey(), {}, best_ways);
        for (const Pest& animal : facts_.animals) add_best(facts_.survey(), {animal}, ways_of_animal);
        // What is best for an animal once some steps are done: else the house would look shut before it is.
        Survey later = facts_.survey(), gnawed = later;  // as others find it, and as those who gnaw do
        for (const PlanStep& step : facts_.plan.steps) {
            close_gap(later.gaps[step.gap.value], step.option.opening);
            if (!step.option.gnawed) close_gap(gnawed.gaps[step.gap.value], step.option.opening);
            for (const Pest& animal : facts_.animals) add_best(animal.gnaws ? gnawed : later, {animal}, 1);
        }
        for (ShownWay& way : facts_.ways) finish(way);
    }

    void add_best(const Survey& survey, std::vector<Pest> pests, std::size_t top) {
        TraceSettings settings;
        settings.pests = std::move(pests);
        settings.top = top;
        context_.check();
        for (RankedPath& found : trace(survey, settings, RunContext()).paths) {  // too short each to be told as a stage
            if (found.maybe) continue;
            const bool there = std::any_of(facts_.ways.begin(), facts_.ways.end(), [&](const ShownWay& way) {
                return way.ranked.path.gaps == found.path.gaps && way.ranked.path.spaces == found.path.spaces;
            });
            if (!there) facts_.ways.push_back({std::move(found), {}, {}, {}});
        }
    }

    void finish(ShownWay& way) {
        const EntryPath& path = way.ranked.path;
        way.open_to = open_to(facts_.survey(), path, facts_.animals);
        for (const std::size_t animal : way.open_to) way.shut_after.push_back(shut_after(path, facts_.animals[animal]));
        if (facts_.has_solids() && !facts_.job.model) way.line = route(facts_.job.house, path.gaps, path.spaces);
    }

    [[nodiscard]] std::size_t shut_after(const EntryPath& path, const Pest& animal) const {
        for (std::size_t i = 0; i < facts_.plan.steps.size(); ++i) {
            const PlanStep& step = facts_.plan.steps[i];
            if (std::find(path.gaps.begin(), path.gaps.end(), step.gap) == path.gaps.end()) continue;
            if (step.option.gnawed && animal.gnaws) continue;
            Gap gap = facts_.survey()[step.gap];
            close_gap(gap, step.option.opening);
            if (!lets_through(gap, animal.size, Sizing::stated)) return i + 1;
        }
        return 0;
    }

    ReportFacts& facts_;
    const RunContext& context_;
};

}  // namespace

const char* audience_id(Audience audience) {
    switch (audience) {
        case Audience::homeowner: return "homeowner";
        case Audience::crew: return "crew";
        case Audience::builder: return "builder";
        case Audience::diy: return "diy";
        case Audience::survey: break;
    }
    return "survey";
}

Entries entries_of(const Survey& survey, const std::vector<Pest>& animals) {
    Entries entries;
    std::vector<bool> gaps(survey.gaps.size(), false), rooms(survey.spaces.size(), false);
    const auto note = [&](const std::function<bool(const Gap&)>& counts) {
        bool any = false;
        const Network network = make_network(survey, counts);
        for (const Roles& roles : one_way_roles(survey)) {
            const std::vector<bool> on_ways = links_on_ways(network, roles);
            for (std::size_t i = 0; i < on_ways.size(); ++i) {
                const Link& link = network.links()[i];
                if (!on_ways[i]) continue;
                any = true;
                if (roles.starts(link.a) || roles.starts(link.b)) gaps[link.gap.value] = true;
                for (const SpaceIndex end : {link.a, link.b}) rooms[end.value] = rooms[end.value] || roles.ends(end);
            }
        }
        return any;
    };
    for (std::size_t i = 0; i < animals.size(); ++i) {
        if (note([&](const Gap& gap) { return lets_through(gap, animals[i].size, Sizing::stated); }))
            entries.animals.push_back(i);
    }
    if (animals.empty()) note([](const Gap& gap) { return !is_shut(gap.shape); });
    for (std::uint32_t i = 0; i < gaps.size(); ++i) {
        if (gaps[i]) entries.gaps.push_back({i});
    }
    entries.rooms = static_cast<std::size_t>(std::count(rooms.begin(), rooms.end(), true));
    return entries;
}

std::size_t ReportFacts::closing_at(GapIndex gap) const {
    const auto found = std::find_if(plan.steps.begin(), plan.steps.end(), [&](const PlanStep& step) { return step.gap == gap; });
    return found == plan.steps.end() ? 0 : static_cast<std::size_t>(found - plan.steps.begin()) + 1;
}

ReportFacts gather_facts(const Job& job, const std::string& heading, const ReportSettings& settings, const RunContext& context) {
    ReportFacts facts{job, heading, settings, settings.planning.against, {}, {}, {}, {}, {}, nullptr, {}};
    FactsGatherer(facts, context).gather();
    if (settings.audience == Audience::builder) {
        AuditSettings audited;
        audited.heading = heading;
        audited.date = settings.planning.date;
        audited.pests = facts.animals;
        audited.most_ways = 0;  // the page has ways of its own
        facts.audit = audit(job, parts_of_house(job), audited, context);
    }
    return facts;
}

}  // namespace seamward
