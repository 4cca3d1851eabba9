// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/ladder_chart.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <limits>

#include "base/measure_text.h"

namespace seamward {

namespace {

// In the units of the drawing, which is about as large on a phone.
constexpr double left = 50, right = 322, top = 30, bottom = 292, width = 480, height = 344;
constexpr double line_of_text = 14;
constexpr std::size_t letters = 19;  ///< of an animal's name in one line

std::string number(double value) {
    std::array<char, 32> text{};
    std::snprintf(text.data(), text.size(), "%.1f", value);
    return text.data();
}

/// The smallest of 1, 2 and 5 times a power of ten that makes no more than `most` ticks.
double tick_step(double span, double most) {
    double step = std::pow(10, std::floor(std::log10(span / most)));
    for (const double times : {1.0, 2.0, 5.0, 10.0}) {
        if (span / (step * times) <= most) return step * times;
    }
    return step * 10;
}

class LadderChart {
public:
    LadderChart(PageWriter& page, const std::vector<PriceStep>& steps) : page_(page), html_(page.html), steps_(steps) {
        dearest_ = static_cast<double>(steps.back().cost.cents) / 100;
        widest_ = steps.front().width;
        for (const ShownWay& way : page.facts.ways) widest_ = std::max(widest_, way.ranked.pinch);
        widest_ *= 1.06;
    }

    void write() {
        html_.begin("svg", {{"class", "ladder-chart"},
                            {"viewBox", "0 0 " + number(width) + ' ' + number(height)},
                            {"role", "img"},
                            {"aria-labelledby", "ladder-title ladder-told"},
                            {"data-left", number(left)},
                            {"data-right", number(right)},
                            {"data-dearest", number(dearest_)}});
        html_.element("desc", told(), {{"id", "ladder-told"}});
        axes();
        animals();
        stairs();
        marks();
        html_.end();
    }

private:
    [[nodiscard]] double x_of(double dollars) const { return left + dollars / dearest_ * (right - left); }
    [[nodiscard]] double x_of(const PriceStep& step) const { return x_of(static_cast<double>(step.cost.cents) / 100); }
    [[nodiscard]] double y_of(double meters) const { return bottom - meters / widest_ * (bottom - top); }

    [[nodiscard]] std::string told() const {
        const PriceStep& last = steps_.back();
        return page_.say("{} steps, from {} to {}. At the last of them nothing {} wide or wider gets in.",
                         {as_it_stands(steps_.size()), page_.money_part(steps_.front().cost), page_.money_part(last.cost),
                          page_.width_part(last.width)});
    }

    void line(const char* css_class, double x1, double y1, double x2, double y2) {
        html_.element("line", "",
                      {{"class", css_class}, {"x1", number(x1)}, {"y1", number(y1)}, {"x2", number(x2)}, {"y2", number(y2)}});
    }
    void text(const char* css_class, double x, double y, const char* anchor, const std::string& words) {
        html_.element("text", words, {{"class", css_class}, {"x", number(x)}, {"y", number(y)}, {"text-anchor", anchor}});
    }

    void axes() {
        line("axis", left, bottom, right, bottom);
        line("axis", left, top, left, bottom);
        const double dollars = tick_step(dearest_, 5);
        for (double at = 0; at <= dearest_; at += dollars) {
            line("tick", x_of(at), bottom, x_of(at), bottom + 5);
            text("tick-text", x_of(at), bottom + 20, "middle", '$' + std::to_string(std::lround(at)));
        }
        text("axis-text", (left + right) / 2, height - 8, "middle", page_.say("Price of the closings"));
        text("axis-text", 2, 14, "start", page_.say("Width that no longer gets in"));
        const bool inches = page_.facts.settings.lengths == Lengths::inches;
        constexpr double inch = 0.0254;
        const double unit = inches ? inch / 64 : 0.001;
        // In sixty-fourths of an inch: steps of 1/16, 1/8, 1/4 ...
        double apart = inches ? 4 * unit : tick_step(widest_ / unit, 6) * unit;
        while (inches && widest_ / apart > 6) apart *= 2;
        for (double at = apart; at <= widest_; at += apart) {
            line("grid", left, y_of(at), right, y_of(at));
            text("tick-text", left - 8, y_of(at) + 4, "end", inches ? inches_text(at) : millimeters_text(at));
        }
        text("tick-text", left - 8, bottom + 4, "end", "0");
    }

    /// A level line each, its name and size beside it; those that would touch are moved apart.
    void animals() {
        struct Row {
            std::size_t animal;
            double at, y;
            std::vector<std::string> lines;
        };
        std::vector<Row> rows;
        for (std::size_t i = 0; i < page_.facts.animals.size(); ++i) {
            const Pest& animal = page_.facts.animals[i];
            if (animal.size.slit > widest_) continue;
            rows.push_back(
                {i, y_of(animal.size.slit), y_of(animal.size.slit), broken(shown_text(page_.say(as_named(animal.name))))});
        }
        std::sort(rows.begin(), rows.end(), [](const Row& a, const Row& b) { return a.at > b.at; });
        double lowest = bottom + line_of_text;
        for (Row& row : rows) {
            const double high = line_of_text * static_cast<double>(row.lines.size());
            row.y = std::min(row.y, lowest - high);
            lowest = row.y - line_of_text - 3;
            line("animal", left, row.at, right, row.at);
            line("leader", right, row.at, right + 10, row.y - 4);
            double y = row.y;
            for (const std::string& words : row.lines) {
                text("animal-name", right + 13, y, "start", words);
                y += line_of_text;
            }
            text("animal-size", right + 13, y, "start", page_.width(page_.facts.animals[row.animal].size.slit));
        }
    }

    /// In two lines at most, cut where that is not enough: the table has it whole.
    static std::vector<std::string> broken(const std::string& words) {
        std::vector<std::string> lines;
        std::string rest = words;
        while (rest.size() > letters && lines.size() < 2) {
            std::size_t end = rest.rfind(' ', letters);
            if (end == std::string::npos || end == 0) end = letters;
            while (end > 0 && (static_cast<unsigned char>(rest[end]) & 0xC0U) == 0x80U) --end;  // not within a character
            lines.push_back(rest.substr(0, end));
            rest.erase(0, rest[end] == ' ' ? end + 1 : end);
        }
        if (lines.size() < 2)
            lines.push_back(rest);
        else if (!rest.empty())
            lines.back() += "\u2026";
        return lines;
    }

    void stairs() {
        std::string path = "M" + number(left) + ' ' + number(top) + " H" + number(x_of(steps_.front()));
        for (std::size_t i = 0; i < steps_.size(); ++i) {
            path += " V" + number(y_of(steps_[i].width));
            path += " H" + number(i + 1 < steps_.size() ? x_of(steps_[i + 1]) : right);
        }
        html_.element("path", "", {{"class", "stairs-area"}, {"d", path + " V" + number(bottom) + " H" + number(left) + " Z"}});
        html_.element("path", "", {{"class", "stairs"}, {"d", path}});
    }

    /// A dot at each step; a ring where one more animal is kept out. The marks that the script moves stand last, over all.
    void marks() {
        std::size_t kept_out = 0;
        for (std::size_t i = 0; i < steps_.size(); ++i) {
            const bool decides = steps_[i].kept_out.size() > kept_out;
            kept_out = steps_[i].kept_out.size();
            html_.element("circle", "",
                          {{"class", decides ? "step decides" : "step"},
                           {"data-step", std::to_string(i + 1)},
                           {"cx", number(x_of(steps_[i]))},
                           {"cy", number(y_of(steps_[i].width))},
                           {"r", decides ? "5" : "2.5"}});
        }
        html_.element("line", "",
                      {{"id", "ladder-here"},
                       {"class", "here none"},
                       {"x1", number(left)},
                       {"x2", number(left)},
                       {"y1", number(top)},
                       {"y2", number(bottom)}});
        html_.element("circle", "",
                      {{"id", "ladder-dot"}, {"class", "here-dot none"}, {"r", "7"}, {"cx", number(left)}, {"cy", number(top)}});
    }

    PageWriter& page_;
    Html& html_;
    const std::vector<PriceStep>& steps_;
    double dearest_ = 1;  ///< dollars
    double widest_ = 1;   ///< meters, at the top
};

}  // namespace

void ladder_chart(PageWriter& page, const std::vector<PriceStep>& steps) { LadderChart(page, steps).write(); }

}  // namespace seamward
