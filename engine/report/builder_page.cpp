// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <array>
#include <map>
#include <optional>
#include <set>

#include "catalog/passage.h"
#include "catalog/shipped.h"
#include "materials/duty_rules.h"
#include "materials/treatment_name.h"
#include "report/compare.h"
#include "report/page_parts.h"
#include "report/pages.h"
#include "report/sheet_parts.h"

namespace seamward {

namespace {

/// One kind of construction detail, and the gaps of the house that are of it.
struct Detail {
    std::string title;  ///< in the language of the page
    const Feature* feature = nullptr;
    std::vector<GapIndex> gaps;
};

class BuilderPage {
public:
    explicit BuilderPage(PageWriter& page) : page_(page), html_(page.html), survey_(page.survey()) {
        for (std::uint32_t i = 0; i < survey_.gaps.size(); ++i) {
            if (!is_shut(survey_.gaps[i].shape)) add({i});
        }
    }

    void write() {
        overview();
        comparison_part(page_);
        provisions_part(page_);
        page_.begin_section("details", "Detail by detail");
        for (std::size_t i = 0; i < details_.size(); ++i) detail(details_[i], i + 1);
        starting_sizes();
        page_.end_section();
        closings();
        before_part(page_);
        checks_part(page_);
        photos_part(page_);
        drawings_part(page_);
        sources_part(page_);
    }

private:
    void add(GapIndex index) {
        const Gap& gap = survey_[index];
        const Feature* feature = gap.feature.empty() ? nullptr : shipped_features().find(gap.feature);
        const std::string title = page_.say(feature != nullptr ? as_named(feature->name) : kind_of(gap));
        const auto found = std::find_if(details_.begin(), details_.end(),
                                        [&](const Detail& one) { return one.title == title && one.feature == feature; });
        if (found == details_.end())
            details_.push_back({title, feature, {index}});
        else
            found->gaps.push_back(index);
    }

    /// Of a gap that nobody gave a type: `slot in stucco and concrete, between outdoors and cavity`.
    [[nodiscard]] Message kind_of(const Gap& gap) const {
        std::vector<Message> sides;
        for (const std::string& substrate : gap.substrates) sides.push_back(as_named(substrate));
        const Message in =
            sides.empty() ? Message(shape_words(gap)) : message("{} in {}", {shape_words(gap), listed_message(sides)});
        const auto& [one, other] = gap.between;
        const auto [low, high] = std::minmax(survey_[one].kind, survey_[other].kind);
        return message("{}, between {} and {}", {in, kind_words(low), kind_words(high)});
    }

    static const char* shape_words(const Gap& gap) {
        constexpr std::array<const char*, 4> words{"slot", "round hole", "gap around a pipe", "mesh"};
        return words.at(gap.shape.index());
    }

    static const char* kind_words(SpaceKind kind) {
        switch (kind) {
            case SpaceKind::outdoors: return "outdoors";
            case SpaceKind::cavity: return "a hidden space";
            case SpaceKind::attached: return "a garage or porch";
            case SpaceKind::living: return "a room";
            case SpaceKind::harborage: break;
        }
        return "a place where animals live";
    }

    void overview() {
        page_.begin_section("overview", "All details of this house");
        page_.paragraph(
            "Every gap that is open is listed under the detail that it belongs to. Widths are clear widths. What passes is told "
            "for widths as stated.",
            "lead");
        std::vector<std::vector<Message>> rows;
        for (const Detail& one : details_)
            rows.push_back({as_it_stands(one.title), as_it_stands(one.gaps.size()), widths(one), planned(one)});
        page_.table("Details", {"Detail", "Gaps", "Clear width", "Closings"}, rows, "details");
        page_.end_section();
    }

    [[nodiscard]] Message widths(const Detail& detail) const {
        const auto [least, most] = std::minmax_element(detail.gaps.begin(), detail.gaps.end(), [&](GapIndex a, GapIndex b) {
            return clear_width(survey_[a].shape) < clear_width(survey_[b].shape);
        });
        const double low = clear_width(survey_[*least].shape), high = clear_width(survey_[*most].shape);
        return low == high ? page_.width_part(low) : message("{} to {}", {page_.width_part(low), page_.width_part(high)});
    }

    [[nodiscard]] Message passing(const Detail& detail) const {
        std::vector<std::size_t> animals;
        for (std::size_t i = 0; i < page_.facts.animals.size(); ++i) {
            const bool any = std::any_of(detail.gaps.begin(), detail.gaps.end(), [&](GapIndex gap) {
                return lets_through(survey_[gap], page_.facts.animals[i].size, Sizing::stated);
            });
            if (any) animals.push_back(i);
        }
        return animals.empty() ? Message("none of the animals of this job") : page_.animals_part(page_.facts.animals, animals);
    }

    [[nodiscard]] Message planned(const Detail& detail) const {
        std::vector<std::size_t> numbers;
        for (const GapIndex gap : detail.gaps) {
            if (const std::size_t number = page_.facts.closing_at(gap); number > 0) numbers.push_back(number);
        }
        return numbers.empty() ? as_it_stands("–") : ranges_part(numbers);
    }

    void detail(const Detail& one, std::size_t number) {
        html_.begin("article", {{"id", "detail-" + std::to_string(number)}, {"class", "detail"}});
        page_.heading(3, as_it_stands(one.title));
        page_.terms({{"Who passes", passing(one)}}, "brief");
        stays_open(one);
        told_before(one);
        for (const std::string& id : treatments(one)) treatment(id);
        if (one.feature != nullptr && !one.feature->caution.text.empty())
            page_.list(
                {message("Caution: {}", {message("{} ({})", {Message(one.feature->caution.text),
                                                             cited(shipped_features().sources, one.feature->caution.source)})})},
                "cautions");
        gaps(one);
        html_.end();
    }

    /// Where starting sizes come from: each document once, with the details that have theirs from it.
    void starting_sizes() {
        std::map<std::string, std::vector<Message>> by_source;
        for (const Detail& one : details_) {
            if (one.feature == nullptr) continue;
            for (const std::string& id : one.feature->sources) by_source[id].push_back(as_it_stands(one.title));
        }
        if (by_source.empty()) return;
        std::vector<Message> items;
        for (const auto& [id, titles] : by_source)
            items.push_back(message("{}: {}", {cited(shipped_features().sources, id), joined_message(titles, "; ")}));
        page_.heading(3, "Where the starting sizes of these details come from");
        page_.list(items, "compact");
    }

    /// Why nothing is done to a gap, where the plan says so; else what its duty forbids.
    [[nodiscard]] std::optional<std::pair<Message, Message>> reason_against(GapIndex index, const DutyRuling& ruling) const {
        for (const RefusedGap& refused : page_.facts.plan.refused) {
            if (refused.gap == index && refused.refusal.treatment.empty())
                return std::pair{refused.refusal.why, refused.refusal.source};
        }
        if (ruling.restricted() && survey_[index].must_stay_open()) return std::pair{ruling.why, ruling.source};
        return std::nullopt;
    }

    /// By reason: which gaps, why, and what may be done instead.
    void stays_open(const Detail& one) {
        std::vector<std::pair<Message, std::vector<Message>>> said;
        for (const GapIndex index : one.gaps) {
            const DutyRuling ruling = ruling_on(survey_[index], survey_);
            const auto reason = reason_against(index, ruling);
            if (!reason) continue;
            Message line = reason->first;
            if (!ruling.instead.empty()) line = message("{}. Instead: {}", {line, ruling.instead});
            if (!reason->second.empty()) line = message("{} ({})", {line, reason->second});
            auto found = std::find_if(said.begin(), said.end(), [&](const auto& other) { return other.first == line; });
            if (found == said.end()) found = said.insert(said.end(), {line, {}});
            found->second.push_back(survey_[index].called());
        }
        if (said.empty()) return;
        html_.element("h4", page_.say("Stays open, and why"));
        std::vector<Message> items;
        for (const auto& [why, gaps] : said) items.push_back(message("{}: {}", {joined_message(gaps, "; "), why}));
        page_.list(items, "compact");
    }

    /// Usual ones first, then what the plan does.
    [[nodiscard]] std::vector<std::string> treatments(const Detail& one) const {
        std::vector<std::string> ids;
        const auto note = [&](const std::string& id) {
            if (!id.empty() && std::find(ids.begin(), ids.end(), id) == ids.end()) ids.push_back(id);
        };
        for (const GapIndex gap : one.gaps) note(survey_[gap].usual);
        for (const GapIndex gap : one.gaps) {
            if (const std::size_t number = page_.facts.closing_at(gap); number > 0)
                note(page_.facts.plan.steps[number - 1].option.treatment);
        }
        return ids;
    }

    /// Treatments that stand in full at another detail.
    void told_before(const Detail& one) {
        std::vector<std::string> known;
        for (const std::string& id : treatments(one)) {
            if (told_.contains(id)) known.push_back(id);
        }
        if (known.empty()) return;
        html_.begin("p", {{"class", "told-before"}}).text(page_.say("Treatments told above:"));
        for (const std::string& id : known) page_.link("treatment-" + id, treatment_name(id));
        html_.end();
    }

    /// In full, where it first comes up.
    void treatment(const std::string& id) {
        const Treatment* row = shipped_treatments().find(id);
        if (row == nullptr || !told_.insert(id).second) return;
        html_.element("h4", page_.say("Treatment: {}", {treatment_name(id)}));
        html_.begin("div", {{"id", "treatment-" + id}});
        std::vector<Message> steps, sources;
        for (const std::string& step : row->steps) steps.emplace_back(step);
        page_.list(steps, "compact");
        std::vector<std::pair<Message, Message>> rows;
        rows.push_back({"Fits widths", message("{} to {}", {page_.width_part(row->fits.from), page_.width_part(row->fits.to)})});
        if (row->movement > 0)
            rows.push_back(
                {"Follows movement", as_it_stands(std::to_string(static_cast<int>(row->movement * 100 + 0.5)) + " %")});
        if (const Message limits = weather_part(id); !limits.empty()) rows.push_back({"Weather", limits});
        rows.push_back({"Gnawing", row->gnawed ? "rodents chew through it" : "rodents do not chew through it"});
        for (const std::string& source : row->sources) sources.push_back(cited(shipped_treatments().sources, source));
        if (!sources.empty()) rows.push_back({"Source", joined_message(sources, "; ")});
        page_.terms(rows, "brief");
        std::vector<Message> cautions;
        for (const Caution& caution : row->cautions)
            cautions.push_back(
                message("Caution: {}",
                        {message("{} ({})", {Message(caution.text), cited(shipped_treatments().sources, caution.source)})}));
        page_.list(cautions, "cautions");
        html_.end();
    }

    /// Those that show a gap as open on purpose.
    [[nodiscard]] std::vector<Message> drawings_with(GapIndex gap) const {
        std::vector<Message> titles;
        for (const Drawing& drawing : page_.drawings) {
            if (std::find(drawing.open.begin(), drawing.open.end(), gap) != drawing.open.end()) titles.push_back(drawing.title);
        }
        return titles;
    }

    void gaps(const Detail& one) {
        std::vector<std::vector<Message>> rows;
        for (const GapIndex index : one.gaps) {
            const Gap& gap = survey_[index];
            const std::size_t number = page_.facts.closing_at(index);
            const std::vector<Message> shown = number > 0 ? drawings_showing(page_, number) : drawings_with(index);
            const Message done =
                number > 0 ? message("{}: {}",
                                     {as_it_stands(number), treatment_name(page_.facts.plan.steps[number - 1].option.treatment)})
                           : Message(gap.must_stay_open() ? "stays open" : "left as it is");
            rows.push_back({page_.gap_part(index), gap.at ? place_part(page_, *gap.at) : Message("not stated"),
                            size_part(page_, gap), shown.empty() ? Message("none") : listed_message(shown), done});
        }
        page_.table("Gaps of this detail", {"Gap", "Place", "Size", "Drawing", "Closing"}, rows, "gap-table");
    }

    void closings() {
        if (page_.facts.plan.steps.empty()) return;
        page_.begin_section("work", "Closings by their numbers");
        page_.paragraph(message(
            "In the order of the work; {} of labor and material in all, before what is added for coming, overhead and tax.",
            {page_.money_part(page_.facts.plan.cost)}));
        html_.begin("ol", {{"id", "closings"}, {"class", "numbered"}});
        for (std::size_t i = 0; i < page_.facts.plan.steps.size(); ++i) {
            const PlanStep& step = page_.facts.plan.steps[i];
            begin_closing(page_, i + 1);
            page_.terms({{"With", treatment_name(step.option.treatment)},
                         {"Width", widths_of(page_, step)},
                         {"Price", page_.money_part(step.option.cost)}},
                        "brief");
            page_.photo(step.gap);
            step_cautions(page_, step);
            html_.end();
        }
        html_.end();
        page_.end_section();
    }

    PageWriter& page_;
    Html& html_;
    const Survey& survey_;
    std::vector<Detail> details_;
    std::set<std::string> told_;
};

}  // namespace

void builder_page(PageWriter& page) { BuilderPage(page).write(); }

}  // namespace seamward
