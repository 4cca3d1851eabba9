// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/part_ids.h"

#include <string>
#include <string_view>
#include <unordered_map>
#include <unordered_set>

namespace seamward {

namespace {

constexpr std::size_t most_letters = 100;

bool stays(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') ||
           std::string_view("-_./").find(c) != std::string_view::npos;
}

std::string plain(std::string_view text) {
    std::string out;
    bool left_out = false;
    for (const char c : text) {
        if (!stays(c)) {
            left_out = true;
            continue;
        }
        if (left_out && !out.empty() && out.back() != '-' && c != '-') out += '-';
        left_out = false;
        out += c;
        if (out.size() >= most_letters) break;
    }
    return out;
}

class Ids {
public:
    std::string unique(const std::string& wanted) {
        std::size_t& next = next_.try_emplace(wanted, 1).first->second;
        std::string id = wanted;
        while (!taken_.insert(id).second) id = wanted + '-' + std::to_string(++next);
        return id;
    }

private:
    std::unordered_set<std::string> taken_;
    std::unordered_map<std::string, std::size_t> next_;  ///< the number that an id ended in last
};

}  // namespace

void give_ids(Model& model) {
    Ids ids;
    const auto give = [&](std::vector<ModelPart>& parts, const std::string& else_named) {
        std::size_t position = 0;
        for (ModelPart& part : parts) {
            ++position;
            std::string wanted = plain(part.id.empty() ? part.name : part.id);
            if (wanted.empty()) wanted = else_named + std::to_string(position);
            part.id = ids.unique(wanted);
        }
    };
    give(model.parts, "part-");
    give(model.rooms, "room-");
}

}  // namespace seamward
