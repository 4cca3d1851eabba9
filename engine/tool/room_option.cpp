// SPDX-License-Identifier: GPL-3.0-or-later
#include "tool/room_option.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <string_view>

#include "base/nearest_word.h"
#include "base/text.h"
#include "tool/wrong_usage.h"

namespace seamward {

namespace {

constexpr double furthest = 1e9;  ///< meters; beyond, a model has no triangles
constexpr std::array<std::string_view, 5> kinds{"outdoors", "cavity", "attached", "living", "harborage"};
constexpr std::size_t longest_name = 400;  ///< bytes
constexpr std::string_view open_air = "outdoors";

[[noreturn]] void fail(std::string_view text, const std::string& what) {
    throw WrongUsage("--room: " + in_quotes(text) + ": " + what);
}

std::string_view trimmed(std::string_view text) {
    const std::size_t first = text.find_first_not_of(' ');
    return first == std::string_view::npos ? "" : text.substr(first, text.find_last_not_of(' ') - first + 1);
}

double coordinate(std::string_view word, std::string_view text) {
    std::string_view digits = trimmed(word);
    if (digits.starts_with('+') && !digits.starts_with("+-")) digits.remove_prefix(1);
    double value = 0;
    const auto [end, error] = std::from_chars(digits.data(), digits.data() + digits.size(), value);
    if (error != std::errc() || end != digits.data() + digits.size() || !std::isfinite(value) || std::abs(value) > furthest)
        fail(text, in_quotes(word) + " is no coordinate; write bare meters, such as kitchen=2.5,3,1.2");
    return value;
}

Point point(std::string_view words, std::string_view text) {
    std::array<double, 3> values{};
    std::size_t count = 0;
    for (std::string_view rest = words;; ++count) {
        const std::size_t comma = rest.find(',');
        if (count == values.size()) fail(text, "a point has three coordinates; write NAME=X,Y,Z with points in the numbers");
        values.at(count) = coordinate(rest.substr(0, comma), text);
        if (comma == std::string_view::npos) break;
        rest.remove_prefix(comma + 1);
    }
    if (count + 1 != values.size()) fail(text, "a point has three coordinates; write NAME=X,Y,Z");
    return {values[0], values[1], values[2]};
}

SpaceKind kind(std::string_view word, std::string_view text) {
    const auto* found = std::find(kinds.begin(), kinds.end(), word);
    if (found == kinds.end()) fail(text, "unknown kind " + in_quotes(word) + "; " + suggestion(word, kinds));
    return static_cast<SpaceKind>(found - kinds.begin());
}

RoomSeed parse_room(std::string_view text) {
    if (!is_utf8(text) || has_control_character(text) || text.find_first_of("\t\n\r") != std::string_view::npos)
        throw WrongUsage("--room: " + in_quotes(printable(text)) + ": a name is text in one line, in UTF-8");
    const std::size_t equals = text.rfind('=');
    if (equals == std::string_view::npos) fail(text, "no point; write NAME=X,Y,Z or NAME:KIND=X,Y,Z, in meters");
    RoomSeed room;
    std::string_view name = text.substr(0, equals);
    if (const std::size_t colon = name.rfind(':'); colon != std::string_view::npos) {
        room.kind = kind(trimmed(name.substr(colon + 1)), text);
        name = name.substr(0, colon);
    }
    room.id = trimmed(name);
    if (room.id.empty()) fail(text, "no name; write NAME=X,Y,Z");
    if (room.id.size() > longest_name) fail(text, "the name is too long; give it up to 100 letters");
    if (room.id == open_air && room.kind != SpaceKind::outdoors)
        fail(text, "outdoors is the air around the model; give the room another name");
    room.at = point(text.substr(equals + 1), text);
    return room;
}

}  // namespace

std::vector<RoomSeed> parse_rooms(const std::vector<std::string>& texts) {
    std::vector<RoomSeed> rooms;
    for (const std::string& text : texts) {
        RoomSeed room = parse_room(text);
        const auto same = [&](const RoomSeed& other) { return other.id == room.id; };
        if (std::any_of(rooms.begin(), rooms.end(), same)) fail(text, "the name stands twice; give each room its own");
        rooms.push_back(std::move(room));
    }
    return rooms;
}

}  // namespace seamward
