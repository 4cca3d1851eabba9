// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <chrono>
#include <cstdint>
#include <string>
#include <vector>

namespace seamward {

/// Between looks at messages: waiting inside MPI would take a processor.
inline constexpr auto pause_between_messages = std::chrono::milliseconds(1);

/// What messages between ranks begin with.
enum class Says : std::uint64_t {
    begin,  ///< from rank 0: the day of the work
    wants,  ///< to rank 0: another batch
    work,   ///< from rank 0: a batch
    rows,   ///< to rank 0: rows that are done
    end,    ///< from rank 0: there is no more; to rank 0: this rank has ended
    stop    ///< from rank 0: leave what is not begun
};

/// A message from one rank to another.
struct RankMessage {
    Says says = Says::end;
    std::vector<std::string> items;
};

[[nodiscard]] std::string message_of(Says says, const std::vector<std::string>& items);
/// Throws std::invalid_argument when the bytes are none.
[[nodiscard]] RankMessage read_message(const std::string& bytes);

}  // namespace seamward
