// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace seamward {

/// Text that can be shown: what is not UTF-8, control characters and those that turn the direction of writing around become `?`.
[[nodiscard]] std::string shown_text(std::string_view text);

/// The same as it stands in HTML and XML, between tags or within quotes: nothing of it is markup.
[[nodiscard]] std::string escaped(std::string_view text);

/// JSON as it stands within a script element: no text in it begins a tag.
[[nodiscard]] std::string within_script(std::string_view json);

/// Writes HTML piece by piece. Texts and values of attributes are escaped; names of elements and attributes are the program's
/// own.
class Html {
public:
    using Attributes = std::vector<std::pair<std::string_view, std::string>>;

    Html& begin(std::string_view element, const Attributes& attributes = {});
    /// Ends the element that was begun last.
    Html& end();
    Html& text(std::string_view text);
    /// An element with nothing but text in it.
    Html& element(std::string_view element, std::string_view text, const Attributes& attributes = {});
    /// An element that never has an end: `br`, `img`, `input`, `meta`.
    Html& single(std::string_view element, const Attributes& attributes = {});
    /// Markup that was made by this program.
    Html& markup(std::string_view made);

    /// What was written; everything begun must have ended. Throws std::logic_error otherwise.
    [[nodiscard]] const std::string& written() const;

private:
    void tag(std::string_view element, const Attributes& attributes, std::string_view end);
    std::string out_;
    std::vector<std::string> open_;
};

}  // namespace seamward
