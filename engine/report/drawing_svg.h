// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "geometry/hidden_lines.h"
#include "report/drawing_labels.h"
#include "report/html.h"

namespace seamward {

/// Millimeters of the paper: at most two places, no zeros at their end.
[[nodiscard]] std::string paper_number(double millimeters);

constexpr double letter_size = 3.5;  ///< mm of the font: capitals of 2.5 mm, the least that ISO 3098 has for drawings

/// How wide a text is at most, mm: advances of DejaVu Sans, which is wider than what other programs would take in its place.
[[nodiscard]] double text_width(std::string_view text, double size = letter_size);

/// A text in lines no wider than that, broken at spaces; a longer word stands alone.
[[nodiscard]] std::vector<std::string> broken_text(std::string_view text, double width, double size = letter_size);

/// Colors; shapes tell the same.
struct DrawingColor {
    static constexpr const char* ink = "#1c2024";
    static constexpr const char* cut = "#8b9198";       ///< solids that a plan cuts
    static constexpr const char* to_close = "#9c2a1f";  ///< gaps of the plan
    static constexpr const char* stays = "#1f567a";     ///< gaps that stay open on purpose
};

/// Widths of lines in mm: ISO 128-2 has them in this row, each about twice the one after the next.
struct LineWidths {
    static constexpr double ground = 0.7, cut = 0.5, profile = 0.35, outline = 0.25, surface = 0.18;
};

/// Writes pieces of a drawing, in millimeters, y down.
class SvgWriter {
public:
    enum class Anchor : std::uint8_t { start, middle, end };

    void begin(std::string_view element, const Html::Attributes& attributes) { html_.begin(element, attributes); }
    void end() { html_.end(); }
    void element(std::string_view element, const Html::Attributes& attributes) { html_.element(element, "", attributes); }
    void named(std::string_view element, const std::string& text, const Html::Attributes& attributes) {
        html_.element(element, text, attributes);
    }
    /// A text whose middle of capitals stands at that height.
    void text(Point2 at, const std::string& text, Anchor anchor = Anchor::start, double size = letter_size, bool strong = false);
    /// The same on a ground of white, so that lines behind it do not run through it.
    void text_on_white(Point2 at, const std::string& text, Anchor anchor = Anchor::start);
    void line(Point2 from, Point2 to, double width);
    /// One path for all.
    void path(const std::string& data, const Html::Attributes& attributes);
    void markup(const std::string& made) { html_.markup(made); }
    [[nodiscard]] const std::string& written() const { return html_.written(); }

private:
    Html html_;
};

[[nodiscard]] std::string path_of(Point2 from, Point2 to);
[[nodiscard]] std::string path_of(const Loop& loop);

}  // namespace seamward
