// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/message.h"

#include <algorithm>
#include <cctype>
#include <optional>
#include <stdexcept>

namespace seamward {

namespace {

std::optional<MessageSlot> next_slot(std::string_view pattern, std::size_t from) {
    for (std::size_t at = pattern.find('{', from); at != std::string_view::npos; at = pattern.find('{', at + 1)) {
        if (at + 1 < pattern.size() && pattern[at + 1] == '}') return MessageSlot{at, at + 2, std::nullopt};
        if (at + 2 < pattern.size() && std::isdigit(static_cast<unsigned char>(pattern[at + 1])) != 0 && pattern[at + 2] == '}' &&
            pattern[at + 1] != '0')
            return MessageSlot{at, at + 3, static_cast<std::size_t>(pattern[at + 1] - '1')};
    }
    return std::nullopt;
}

/// Where the number of an apartment begins, as in `bath of 103`; the length of the name where none is told. Titles, which have
/// capitals, end in years, and `bedroom 2` is a name by itself.
std::size_t apartment_in(std::string_view name) {
    constexpr std::size_t least_digits = 3;
    std::size_t begin = name.size();
    while (begin > 0 && std::isdigit(static_cast<unsigned char>(name[begin - 1])) != 0) --begin;
    if (name.size() - begin < least_digits || begin < 2 || name[begin - 1] != ' ') return name.size();
    const auto plain = [](unsigned char letter) { return std::isupper(letter) == 0 && letter != '{' && letter != '}'; };
    return std::all_of(name.begin(), name.end(), plain) ? begin : name.size();
}

}  // namespace

void for_each_slot(std::string_view pattern, const std::function<void(const MessageSlot&)>& visit) {
    std::size_t from = 0;
    while (const std::optional<MessageSlot> slot = next_slot(pattern, from)) {
        visit(*slot);
        from = slot->end;
    }
}

std::string fill_in(std::string_view pattern, const std::vector<std::string>& parts) {
    if (parts.empty()) return std::string(pattern);
    std::string filled;
    std::size_t done = 0, turn = 0;
    for_each_slot(pattern, [&](const MessageSlot& slot) {
        filled += pattern.substr(done, slot.at - done);
        const std::size_t which = slot.which ? *slot.which : turn++;
        if (which < parts.size()) filled += parts[which];
        done = slot.end;
    });
    return filled += pattern.substr(done);
}

std::string Message::english() const {
    std::vector<std::string> said;
    said.reserve(parts.size());
    for (const Message& part : parts) said.push_back(part.english());
    return fill_in(pattern, said);
}

Message message(std::string pattern, std::vector<Message> parts) {
    std::size_t slots = 0;
    for_each_slot(pattern, [&](const MessageSlot&) { ++slots; });
    if (slots != parts.size()) throw std::invalid_argument("message " + pattern + " has not as many {} as parts");
    Message made(std::move(pattern));
    made.parts = std::move(parts);
    return made;
}

Message as_named(std::string name) {
    const std::size_t apartment = apartment_in(name);
    Message made(name.substr(0, apartment));
    if (apartment < name.size()) {
        made.pattern += "{}";
        made.parts.push_back(as_it_stands(name.substr(apartment)));
    }
    made.kind = Message::Kind::name;
    return made;
}

Message as_it_stands(std::string text) {
    Message made(std::move(text));
    made.kind = Message::Kind::fixed;
    return made;
}

Message as_it_stands(std::size_t number) { return as_it_stands(std::to_string(number)); }

Message counted_message(std::size_t count, const char* one, const char* many) {
    return count == 1 ? Message(one) : message(many, {as_it_stands(count)});
}

Message listed_message(const std::vector<Message>& items) {
    if (items.empty()) return {};
    Message list = items.front();
    for (std::size_t i = 1; i + 1 < items.size(); ++i) list = message("{}, {}", {list, items[i]});
    return items.size() == 1 ? list : message("{} and {}", {list, items.back()});
}

Message joined_message(const std::vector<Message>& items, const std::string& between) {
    if (items.size() < 2) return items.empty() ? Message() : items.front();
    std::string pattern = "{}";
    for (std::size_t i = 1; i < items.size(); ++i) pattern += between + "{}";
    return message(std::move(pattern), items);
}

}  // namespace seamward
