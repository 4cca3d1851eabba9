// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "base/record.h"
#include "catalog/translator.h"

namespace seamward {

/// A text that a file gives in both languages.
struct Spoken {
    std::string english, spanish;

    [[nodiscard]] bool empty() const { return english.empty(); }
    [[nodiscard]] const std::string& in(Language language) const { return language == Language::spanish ? spanish : english; }
};

/// The value of a key, `{en: ..., es: ...}`; both must stand there and hold something. Nothing where the key is absent or faulty.
[[nodiscard]] Spoken read_spoken(const Record& record, std::string_view key, Diagnostics& diagnostics);

}  // namespace seamward
