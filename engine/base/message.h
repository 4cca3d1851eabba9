// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace seamward {

/// A text for people that can be said in several languages: an English pattern, in which each `{}` stands for one of the parts,
/// in their order. A translation may put them in another order by `{1}`, `{2}` ... Parts are texts of their own.
struct Message {
    enum class Kind : std::uint8_t {
        text,  ///< of the program: there should be a translation
        name,  ///< of a table or of a file: said in another language where that is known, else as it stands
        day,   ///< a day as ISO 8601 has it; who says it writes it out
        fixed  ///< as it stands in every language: numbers, ids
    };

    std::string pattern;
    std::vector<Message> parts;
    Kind kind = Kind::text;

    Message() = default;
    /// A text without parts. Braces in it are braces.
    Message(std::string text) : pattern(std::move(text)) {}  // NOLINT(google-explicit-constructor): texts are messages
    Message(const char* text) : pattern(text) {}             // NOLINT(google-explicit-constructor)

    [[nodiscard]] bool empty() const { return pattern.empty(); }
    [[nodiscard]] std::string english() const;
    friend bool operator==(const Message&, const Message&) = default;
};

/// Throws std::invalid_argument when there are not as many `{}` as parts.
[[nodiscard]] Message message(std::string pattern, std::vector<Message> parts);

/// The name of something: tables have it in other languages, files of users do not, and both is well. The number of an apartment
/// at the end of a plain name is a part of its own, so that `bath of {}` is said of them all.
[[nodiscard]] Message as_named(std::string name);

/// A text that is never translated.
[[nodiscard]] Message as_it_stands(std::string text);
[[nodiscard]] Message as_it_stands(std::size_t number);

/// A place in a pattern where a part goes.
struct MessageSlot {
    std::size_t at = 0, end = 0;       ///< of the braces
    std::optional<std::size_t> which;  ///< position of the part, from `{1}` on; nothing: the next one in turn
};

void for_each_slot(std::string_view pattern, const std::function<void(const MessageSlot&)>& visit);

/// The pattern with its parts put in: `{}` in turn, `{1}` by position. Without parts, as it is.
[[nodiscard]] std::string fill_in(std::string_view pattern, const std::vector<std::string>& parts);

/// One of two patterns by a count, which is the first part of `many`; of `one` nothing is filled in.
[[nodiscard]] Message counted_message(std::size_t count, const char* one, const char* many);

/// `A`, `A and B`, `A, B and C`; nothing of nothing.
[[nodiscard]] Message listed_message(const std::vector<Message>& items);

/// `A; B; C`. What stands between has no words.
[[nodiscard]] Message joined_message(const std::vector<Message>& items, const std::string& between);

}  // namespace seamward
