// SPDX-License-Identifier: GPL-3.0-or-later
#include "sweep/rank_messages.h"

#include "sweep/byte_strings.h"

namespace seamward {

std::string message_of(Says says, const std::vector<std::string>& items) {
    ByteWriter out;
    out.number(static_cast<std::uint64_t>(says)).number(items.size());
    for (const std::string& item : items) out.text(item);
    return out.bytes();
}

RankMessage read_message(const std::string& bytes) {
    ByteReader in(bytes);
    RankMessage message{static_cast<Says>(in.number_below(6)), {}};
    message.items.resize(in.count());
    for (std::string& item : message.items) item = in.text();
    return message;
}

}  // namespace seamward
