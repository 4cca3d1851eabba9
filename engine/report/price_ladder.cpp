// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/price_ladder.h"

#include <algorithm>
#include <optional>

#include "catalog/passage.h"
#include "report/ladder_chart.h"
#include "report/sheet_parts.h"

namespace seamward {

namespace {

class LadderFigure {
public:
    explicit LadderFigure(PageWriter& page) : page_(page), html_(page.html), steps_(price_steps(page.facts)) {}

    void write() {
        if (steps_.empty()) return;
        html_.begin("figure", {{"id", "ladder"}});
        caption();
        ladder_chart(page_, steps_);
        control();
        table("What each price keeps out", deciding());
        if (steps_.size() > deciding().size()) {
            html_.begin("details", {{"class", "all-steps"}});
            html_.element("summary", page_.say("Every step of the price"));
            std::vector<std::size_t> all(steps_.size());
            for (std::size_t i = 0; i < all.size(); ++i) all[i] = i;
            table("Every step of the price, from the least to the most", all, true);
            html_.end();
        }
        end_of_ladder();
        html_.end();
    }

private:
    void caption() {
        html_.begin("figcaption");
        html_.element("h3", page_.say("What each price keeps out"), {{"id", "ladder-title"}});
        html_.element(
            "p", page_.say("The more gaps are closed, the smaller is what can still get in. Each step down is the least that it "
                           "takes, by full closings alone, before the charge for coming and tax. "
                           "Nothing as wide as its width, or wider, gets in."));
        html_.end();
    }

    /// For the script: without it there is nothing to move.
    void control() {
        html_.begin("div", {{"class", "ladder-control"}, {"hidden", ""}});
        html_.element("label", page_.say("Price"), {{"for", "ladder-price"}});
        html_.single("input", {{"type", "range"},
                               {"id", "ladder-price"},
                               {"min", "0"},
                               {"max", std::to_string(steps_.size())},
                               {"value", "0"},
                               {"step", "1"}});
        html_.element("p", "", {{"id", "ladder-words"}, {"role", "status"}});
        html_.end();
    }

    /// The steps that keep out one more animal, and the last.
    [[nodiscard]] std::vector<std::size_t> deciding() const {
        std::vector<std::size_t> chosen;
        std::size_t kept_out = 0;
        for (std::size_t i = 0; i < steps_.size(); ++i) {
            if (steps_[i].kept_out.size() > kept_out || i + 1 == steps_.size()) chosen.push_back(i);
            kept_out = steps_[i].kept_out.size();
        }
        return chosen;
    }

    /// `by_change`: of animals and closings only what is not as in the row before.
    void table(const Message& title, const std::vector<std::size_t>& rows, bool by_change = false) {
        html_.begin("div", {{"class", "wide-table"}, {"tabindex", "0"}, {"role", "region"}, {"aria-label", page_.say(title)}});
        html_.begin("table");
        html_.element("caption", page_.say(title));
        html_.begin("thead").begin("tr");
        for (const char* head : {"Price", "Keeps out from", by_change ? "Kept out besides" : "Kept out",
                                 by_change ? "Closings, as before but" : "Closings"})
            html_.element("th", page_.say(head), {{"scope", "col"}});
        html_.end().end();
        html_.begin("tbody");
        for (const std::size_t row : rows) {
            const PriceStep& step = steps_[row];
            html_.begin("tr");
            html_.element("th", page_.say(page_.money_part(step.cost)), {{"scope", "row"}});
            html_.element("td", page_.width(step.width));
            const PriceStep* before = by_change && row > 0 ? &steps_[row - 1] : nullptr;
            html_.element("td", before == nullptr ? animals(step) : more_animals(*before, step));
            html_.element("td", page_.say(before == nullptr ? closings(step.gaps) : changes(*before, step)));
            html_.end();
        }
        html_.end().end().end();
    }

    [[nodiscard]] std::string animals(const PriceStep& step) const {
        if (step.kept_out.empty()) return page_.say("none of these animals yet");
        std::vector<Message> names;
        for (const std::size_t animal : step.kept_out) names.push_back(as_named(page_.facts.animals[animal].name));
        return page_.say(listed_message(names));
    }

    [[nodiscard]] std::string more_animals(const PriceStep& before, const PriceStep& step) const {
        std::vector<Message> names;
        for (const std::size_t animal : step.kept_out) {
            if (std::find(before.kept_out.begin(), before.kept_out.end(), animal) == before.kept_out.end())
                names.push_back(as_named(page_.facts.animals[animal].name));
        }
        return names.empty() ? "–" : page_.say(listed_message(names));
    }

    /// "1 to 4, 7", and the labels of those that the plan does not have.
    [[nodiscard]] Message closings(const std::vector<GapIndex>& gaps) const {
        std::vector<std::size_t> numbers;
        std::vector<Message> said;
        for (const GapIndex gap : gaps) {
            if (const std::size_t number = page_.facts.closing_at(gap); number > 0)
                numbers.push_back(number);
            else
                said.push_back(page_.survey()[gap].called());
        }
        if (!numbers.empty()) said.insert(said.begin(), ranges_part(numbers));
        return joined_message(said, ", ");
    }

    /// "with 9; without 3, 4"
    [[nodiscard]] Message changes(const PriceStep& before, const PriceStep& step) const {
        const auto lacking = [](const std::vector<GapIndex>& all, const std::vector<GapIndex>& from) {
            std::vector<GapIndex> left;
            for (const GapIndex gap : all) {
                if (std::find(from.begin(), from.end(), gap) == from.end()) left.push_back(gap);
            }
            return left;
        };
        const std::vector<GapIndex> more = lacking(step.gaps, before.gaps), fewer = lacking(before.gaps, step.gaps);
        std::vector<Message> said;
        if (!more.empty()) said.push_back(message("with {}", {closings(more)}));
        if (!fewer.empty()) said.push_back(message("without {}", {closings(fewer)}));
        return joined_message(said, "; ");
    }

    void end_of_ladder() {
        const std::optional<LadderStop>& stop = page_.facts.plan.ladder_stop;
        if (!stop) return;
        page_.paragraph(
            message("It ends at {}, {}: {}.", {page_.width_part(stop->width), page_.survey()[stop->gap].called(), stop->why}),
            "ladder-end");
    }

    PageWriter& page_;
    Html& html_;
    std::vector<PriceStep> steps_;
};

}  // namespace

std::vector<PriceStep> price_steps(const ReportFacts& facts) {
    std::vector<PriceStep> steps;
    for (const LadderRung& rung : facts.plan.ladder) {
        PriceStep step{rung.width, rung.cost, rung.gaps, {}};
        for (std::size_t i = 0; i < facts.animals.size(); ++i) {
            if (facts.animals[i].size.slit + passage_tolerance >= rung.width) step.kept_out.push_back(i);
        }
        steps.push_back(std::move(step));
    }
    return steps;
}

void price_ladder(PageWriter& page) { LadderFigure(page).write(); }

}  // namespace seamward
