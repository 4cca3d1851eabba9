// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace seamward::test {

/// An element of a page as a strict reader of XML (expat) finds it.
struct PageElement {
    std::string name;
    std::map<std::string, std::string> attributes;
    std::string own_text;  ///< between its tags, without that of elements within
    std::vector<PageElement> children;

    /// Empty where there is none.
    [[nodiscard]] std::string attribute(const std::string& key) const;
    /// With that of all elements within, runs of white space as one space.
    [[nodiscard]] std::string text() const;
    /// Itself and all elements within that it says true of, in their order.
    [[nodiscard]] std::vector<const PageElement*> all(const std::function<bool(const PageElement&)>& wanted) const;
    [[nodiscard]] std::vector<const PageElement*> named(std::string_view element) const;
    /// Null: there is none with that id.
    [[nodiscard]] const PageElement* with_id(std::string_view id) const;
    /// What a list of terms says of each, in order.
    [[nodiscard]] std::vector<std::pair<std::string, std::string>> terms() const;
};

/// Reads a document of XML. Throws std::runtime_error where it is not well-formed.
[[nodiscard]] PageElement read_xml(std::string_view xml);

/// Reads a page whole; what stands in scripts and styles is left out. Throws std::runtime_error where it is not well-formed.
[[nodiscard]] PageElement read_page(std::string_view html);

}  // namespace seamward::test
