// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/job_text.h"

#include <array>
#include <cstdio>

namespace seamward::test {

std::string job_json(const Survey& survey) {
    constexpr std::array kinds{"outdoors", "cavity", "attached", "living", "harborage"};
    std::string text = "{\"seamward\": 1, \"spaces\": [";
    const char* separator = "\n";
    for (const Space& space : survey.spaces) {
        text += separator;
        text += "{\"id\": \"" + space.id + "\", \"kind\": \"" + kinds.at(static_cast<std::size_t>(space.kind)) + '"';
        text += space.source ? ", \"source\": true}" : "}";
        separator = ",\n";
    }
    text += "], \"gaps\": [";
    separator = "\n";
    for (const Gap& gap : survey.gaps) {
        std::array<char, 40> width{};
        std::snprintf(width.data(), width.size(), "%.17g mm", clear_width(gap.shape) * 1000);
        text += separator;
        text += "{\"id\": \"" + gap.id + "\", \"between\": [\"" + survey[gap.between[0]].id + "\", \"" +
                survey[gap.between[1]].id + "\"], \"slot\": {\"width\": \"" + width.data() + "\", \"length\": \"1 m\"}}";
        separator = ",\n";
    }
    return text + "]}\n";
}

}  // namespace seamward::test
