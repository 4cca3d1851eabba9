// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "base/message.h"
#include "catalog/text_table.h"

namespace seamward {

enum class Language : std::uint8_t { english, spanish };

/// The code of a language for programs: "en", "es".
[[nodiscard]] const char* language_code(Language language);

/// The shipped table of Spanish texts: of the reference tables, of what plans say, of reports. Read once, at first use.
[[nodiscard]] const TextTable& spanish_texts();

/// Says messages in one language, days written out. What has no translation is said in English and noted.
class Translator {
public:
    explicit Translator(Language language) : language_(language) {}

    [[nodiscard]] Language language() const { return language_; }
    [[nodiscard]] std::string operator()(const Message& message) const;
    [[nodiscard]] std::string operator()(std::string_view pattern, std::vector<Message> parts) const;

    /// The patterns that were asked for and have no translation, sorted. Empty for English. Names are not among them.
    [[nodiscard]] const std::set<std::string, std::less<>>& missing() const { return missing_; }

private:
    Language language_;
    mutable std::set<std::string, std::less<>> missing_;
};

}  // namespace seamward
