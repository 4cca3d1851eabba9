// SPDX-License-Identifier: GPL-3.0-or-later
#include "teach/spoken.h"

#include <array>

namespace seamward {

Spoken read_spoken(const Record& record, std::string_view key, Diagnostics& diagnostics) {
    constexpr std::array<std::string_view, 2> languages{"en", "es"};
    if (!record.has(key)) return {};
    if (record[key].is_scalar() || record[key].is_null()) {
        record.report(record[key].place(), std::string(key) + " is said in one language only",
                      "write " + std::string(key) + ": {en: \"...\", es: \"...\"}");
        return {};
    }
    const Record both(record[key], languages, key, diagnostics);
    if (!both.require({"en", "es"})) return {};
    Spoken spoken{read_text(both["en"], "en", diagnostics).value_or(""), read_text(both["es"], "es", diagnostics).value_or("")};
    return spoken.english.empty() || spoken.spanish.empty() ? Spoken{} : spoken;
}

}  // namespace seamward
