// SPDX-License-Identifier: GPL-3.0-or-later
#include "catalog/translator.h"

#include <algorithm>
#include <array>
#include <cctype>

#include "base/date.h"
#include "catalog/shipped_text.h"

namespace seamward {

namespace {

/// Numbers and signs are the same in all languages.
bool has_words(std::string_view text) {
    return std::any_of(text.begin(), text.end(), [](unsigned char letter) { return std::isalpha(letter) != 0; });
}

constexpr std::array<const char*, 12> months{"January", "February", "March",     "April",   "May",      "June",
                                             "July",    "August",   "September", "October", "November", "December"};

/// A day as people write it.
Message written_out(Date day) {
    return message("{1} {2}, {3}",
                   {months.at(static_cast<unsigned>(day.month()) - 1), as_it_stands(static_cast<unsigned>(day.day())),
                    as_it_stands(std::to_string(static_cast<int>(day.year())))});
}

}  // namespace

const char* language_code(Language language) { return language == Language::spanish ? "es" : "en"; }

const TextTable& spanish_texts() {
    static const TextTable texts = read_texts(shipped_text::spanish, "engine/catalog/spanish.yaml");
    return texts;
}

std::string Translator::operator()(const Message& message) const {
    if (message.kind == Message::Kind::day) {
        const Parsed<Date> day = parse_date(message.pattern);
        return day ? (*this)(written_out(*day.value)) : message.pattern;
    }
    std::vector<std::string> said;
    said.reserve(message.parts.size());
    for (const Message& part : message.parts) said.push_back((*this)(part));
    if (language_ == Language::english || message.kind == Message::Kind::fixed) return fill_in(message.pattern, said);
    const auto found = spanish_texts().find(message.pattern);
    if (found != spanish_texts().end()) return fill_in(found->second, said);
    const bool bare = message.parts.empty();
    const bool due = message.kind == Message::Kind::text &&
                     has_words(bare ? message.pattern : fill_in(message.pattern, std::vector<std::string>(said.size())));
    if (due) missing_.insert(message.pattern);
    return fill_in(message.pattern, said);
}

std::string Translator::operator()(std::string_view pattern, std::vector<Message> parts) const {
    return (*this)(message(std::string(pattern), std::move(parts)));
}

}  // namespace seamward
