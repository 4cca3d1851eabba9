// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/reader/step_products.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <unordered_set>

namespace seamward {

namespace {

constexpr std::string_view blanks = " \t\r\n";
constexpr std::size_t global_id_letters = 22;
/// Of every product: GlobalId, OwnerHistory, Name, Description, ObjectType, ObjectPlacement, Representation.
constexpr std::size_t placement_argument = 5, shape_argument = 6;

bool is_no_thing(std::string_view ifc_class) {
    constexpr std::array<std::string_view, 16> classes{"IFCALIGNMENT",
                                                       "IFCANNOTATION",
                                                       "IFCDISTRIBUTIONPORT",
                                                       "IFCEXTERNALSPATIALELEMENT",
                                                       "IFCGRID",
                                                       "IFCOPENINGELEMENT",
                                                       "IFCOPENINGSTANDARDCASE",
                                                       "IFCPORT",
                                                       "IFCPROJECT",
                                                       "IFCREFERENT",
                                                       "IFCSPATIALZONE",
                                                       "IFCSTRUCTURALCURVEMEMBER",
                                                       "IFCSTRUCTURALPOINTCONNECTION",
                                                       "IFCSTRUCTURALSURFACEMEMBER",
                                                       "IFCVIRTUALELEMENT",
                                                       "IFCVOIDINGFEATURE"};
    return std::find(classes.begin(), classes.end(), ifc_class) != classes.end();
}

/// What holds others, and is a thing itself only when it has a shape: the ground of a site.
bool is_container(std::string_view ifc_class) {
    return ifc_class == "IFCSITE" || ifc_class == "IFCBUILDING" || ifc_class == "IFCBUILDINGSTOREY";
}

/// Reads statement by statement, up to each semicolon.
class Statements {
public:
    explicit Statements(std::string_view text) : text_(text) {}

    /// The next statement without its comments; false at the end.
    bool next(std::string& statement) {
        statement.clear();
        while (at_ < text_.size()) {
            const char c = text_[at_];
            if (c == '/' && text_.substr(at_, 2) == "/*") {
                at_ = std::min(text_.find("*/", at_ + 2), text_.size() - 2) + 2;
            } else if (c == '\'') {
                const std::size_t end = std::min(text_.find('\'', at_ + 1), text_.size() - 1);
                statement += text_.substr(at_, end + 1 - at_);  // a doubled quote is two texts in a row
                at_ = end + 1;
            } else {
                ++at_;
                if (c == ';') return true;
                if (blanks.find(c) == blanks.npos || !statement.empty()) statement += c;
            }
        }
        return false;
    }

private:
    std::string_view text_;
    std::size_t at_ = 0;
};

std::string_view trimmed(std::string_view text) {
    const std::size_t begin = text.find_first_not_of(blanks);
    if (begin == text.npos) return {};
    return text.substr(begin, text.find_last_not_of(blanks) - begin + 1);
}

/// `#12` as 12; 0 when it is no reference.
std::int64_t reference(std::string_view text) {
    text = trimmed(text);
    std::int64_t number = 0;
    if (!text.starts_with('#')) return 0;
    const auto [end, error] = std::from_chars(text.data() + 1, text.data() + text.size(), number);
    return error == std::errc() && end == text.data() + text.size() ? number : 0;
}

/// The first arguments of an entity, split at the commas of its own parentheses.
std::vector<std::string_view> first_arguments(std::string_view text, std::size_t most) {
    std::vector<std::string_view> arguments;
    int depth = 0;
    bool quoted = false;
    std::size_t begin = 0;
    for (std::size_t i = 0; i < text.size() && arguments.size() < most; ++i) {
        const char c = text[i];
        if (c == '\'') quoted = !quoted;
        if (quoted) continue;
        if (c == '(') ++depth;
        if ((c == ',' && depth == 0) || (c == ')' && depth-- == 0)) {
            arguments.push_back(trimmed(text.substr(begin, i - begin)));
            begin = i + 1;
            if (c == ')') break;
        }
    }
    return arguments;
}

struct Candidate {
    StepProduct product;
    std::int64_t placement = 0, shape = 0;
};

}  // namespace

std::vector<StepProduct> products_in_step(std::string_view text) {
    std::vector<Candidate> candidates;
    std::unordered_set<std::int64_t> placements;
    std::unordered_set<std::int64_t> shapes;
    Statements statements(text);
    for (std::string statement; statements.next(statement);) {
        const std::string_view all = statement;
        const std::size_t equals = all.find('=');
        const std::size_t open = all.find('(');
        if (!all.starts_with('#') || equals == all.npos || open == all.npos || open < equals) continue;
        const std::int64_t number = reference(all.substr(0, equals));
        std::string ifc_class(trimmed(all.substr(equals + 1, open - equals - 1)));
        for (char& c : ifc_class) c = c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
        if (ifc_class.ends_with("PLACEMENT")) placements.insert(number);
        if (ifc_class == "IFCPRODUCTDEFINITIONSHAPE" || ifc_class == "IFCPRODUCTREPRESENTATION") shapes.insert(number);
        const std::string_view rest = trimmed(all.substr(open + 1));
        if (!rest.starts_with('\'') || rest.size() < global_id_letters + 2 || rest[global_id_letters + 1] != '\'') continue;
        const std::vector<std::string_view> arguments = first_arguments(rest, shape_argument + 1);
        if (arguments.size() <= shape_argument || is_no_thing(ifc_class)) continue;
        candidates.push_back({{number, ifc_class, std::string(rest.substr(1, global_id_letters))},
                              reference(arguments[placement_argument]),
                              reference(arguments[shape_argument])});
    }
    std::vector<StepProduct> products;
    for (Candidate& candidate : candidates) {
        candidate.product.has_shape = shapes.contains(candidate.shape);
        const bool placed = placements.contains(candidate.placement) && !is_container(candidate.product.ifc_class);
        if (candidate.product.has_shape || placed) products.push_back(std::move(candidate.product));
    }
    return products;
}

}  // namespace seamward
