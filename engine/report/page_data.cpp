// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/page_data.h"

#include <array>
#include <cmath>
#include <optional>
#include <set>

#include "base/json_writer.h"
#include "materials/treatment_name.h"
#include "report/packed.h"
#include "report/page_model.h"
#include "report/price_ladder.h"

namespace seamward {

namespace {

/// What the script says; `{}` and `{1}` as in Message, filled in by it.
constexpr std::array<std::pair<const char*, const char*>, 16> words{{
    {"show", "Show in 3D"},
    {"closing", "Closing {}"},
    {"way", "Way in {}"},
    {"stays_open", "Must stay open"},
    {"smallest", "smallest gap {}"},
    {"done", "done"},
    {"before_work", "Before the work."},
    {"after_closing", "After closing {} of {}."},
    {"no_way", "None of the ways in shown here is open any more."},
    {"no_way_for", "None of the ways in shown here is open to this animal any more: {}."},
    {"one_way", "1 way in shown here is open, to {}."},
    {"many_ways", "{1} ways in shown here are open, to {2}."},
    {"one_way_no_animal", "1 way in shown here is open."},
    {"many_ways_no_animal", "{} ways in shown here are open."},
    {"price_nothing", "Nothing is closed yet. Move along the chart to see what a price keeps out."},
    {"price_step", "{1}: nothing {2} wide or wider gets in. Kept out: {3}. Closings: {4}."},
}};

class PageData {
public:
    explicit PageData(const PageWriter& page) : page_(page), facts_(page.facts), survey_(page.survey()) {}

    std::string text() {
        json_.begin_object();
        write_words();
        if (facts_.has_solids()) {
            write_animals();
            write_gaps();
            write_ways();
            write_closings();
            write_steps();
            text_of("model", base64(gzipped(page_model(facts_.job.house, marked()))));
        }
        json_.end_object();
        return within_script(json_.text());
    }

private:
    JsonWriter& number(const char* key, std::size_t value) { return json_.key(key).value(static_cast<std::int64_t>(value)); }
    void text_of(const char* key, const std::string& text) { json_.key(key).value(shown_text(text)); }
    void said(const char* key, const Message& text) { text_of(key, page_.say(text)); }
    /// Whole millimeters in the frame of the house.
    void point(const Point& p) {
        json_.begin_array();
        for (const double meters : {p.x, p.y, p.z}) json_.value(static_cast<std::int64_t>(std::llround(meters * 1000)));
        json_.end_array();
    }
    void numbers(const char* key, const auto& values) {
        json_.key(key).begin_array();
        for (const std::size_t value : values) json_.value(static_cast<std::int64_t>(value));
        json_.end_array();
    }
    static std::vector<std::size_t> values_of(const std::vector<GapIndex>& gaps) {
        std::vector<std::size_t> values;
        for (const GapIndex gap : gaps) values.push_back(gap.value);
        return values;
    }

    /// Where a gap is: the middle of the way through it.
    [[nodiscard]] std::optional<Point> place_of(GapIndex gap) const {
        const House& house = facts_.job.house;
        if (gap.value < house.places.size() && !house.places[gap.value].through.empty()) {
            const std::vector<Point>& through = house.places[gap.value].through;
            return through[through.size() / 2];
        }
        return survey_[gap].at;
    }

    /// The gaps that a closing, a way's smallest gap or a step of the price is at.
    [[nodiscard]] std::vector<GapIndex> marked() const {
        std::set<GapIndex> gaps;
        for (const PlanStep& step : facts_.plan.steps) gaps.insert(step.gap);
        for (const ShownWay& way : facts_.ways) gaps.insert(way.ranked.pinch_gap);
        for (const LadderRung& rung : facts_.plan.ladder) gaps.insert(rung.gaps.begin(), rung.gaps.end());
        return {gaps.begin(), gaps.end()};
    }

    void write_words() {
        json_.key("words").begin_object();
        for (const auto& [key, pattern] : words) said(key, pattern);
        json_.end_object();
    }

    void write_animals() {
        json_.key("animals").begin_array();
        for (const Pest& animal : facts_.animals) json_.value(shown_text(page_.say(as_named(animal.name))));
        json_.end_array();
    }

    /// Of the gaps that anything here speaks of: by position in the survey.
    void write_gaps() {
        std::set<GapIndex> gaps;
        for (const GapIndex gap : marked()) gaps.insert(gap);
        for (const ShownWay& way : facts_.ways) gaps.insert(way.ranked.path.gaps.begin(), way.ranked.path.gaps.end());
        for (std::uint32_t i = 0; i < survey_.gaps.size(); ++i) {
            if (survey_.gaps[i].must_stay_open() && !is_shut(survey_.gaps[i].shape)) gaps.insert({i});
        }
        json_.key("gaps").begin_object();
        for (const GapIndex index : gaps) {
            const Gap& gap = survey_[index];
            json_.key(std::to_string(index.value)).begin_object();
            said("name", gap.called());
            text_of("width", page_.width(clear_width(gap.shape)));
            if (const std::optional<Point> at = place_of(index)) {
                json_.key("at");
                point(*at);
            }
            if (gap.must_stay_open())
                said("open", gap.closing.never.empty() ? Message(duty_words(gap.duty)) : as_named(gap.closing.never));
            json_.end_object();
        }
        json_.end_object();
    }

    void write_ways() {
        json_.key("ways").begin_array();
        for (const ShownWay& way : facts_.ways) {
            const EntryPath& path = way.ranked.path;
            json_.begin_object();
            text_of("pinch", page_.width(way.ranked.pinch));
            number("pinch_gap", way.ranked.pinch_gap.value);
            said("from", survey_[path.from()].called());
            said("to", survey_[path.to()].called());
            numbers("gaps", values_of(path.gaps));
            numbers("animals", way.open_to);
            numbers("shut_after", way.shut_after);
            json_.key("line").begin_array();
            for (const Point& p : way.line) point(p);
            json_.end_array().end_object();
        }
        json_.end_array();
    }

    void write_closings() {
        json_.key("closings").begin_array();
        for (const PlanStep& step : facts_.plan.steps) {
            json_.begin_object();
            number("gap", step.gap.value);
            said("place", zone_words(step.stop.zone));
            said("treatment", treatment_name(step.option.treatment));
            json_.end_object();
        }
        json_.end_array();
    }

    void write_steps() {
        json_.key("prices").begin_array();
        for (const PriceStep& step : price_steps(facts_)) {
            json_.begin_object();
            json_.key("cents").value(step.cost.cents);
            said("cost", page_.money_part(step.cost));
            text_of("width", page_.width(step.width));
            numbers("kept_out", step.kept_out);
            numbers("gaps", values_of(step.gaps));
            json_.end_object();
        }
        json_.end_array();
    }

    const PageWriter& page_;
    const ReportFacts& facts_;
    const Survey& survey_;
    JsonWriter json_;
};

}  // namespace

std::string page_data(const PageWriter& page) { return PageData(page).text(); }

}  // namespace seamward
