// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <utility>

namespace seamward {

/// The processes that share a sweep, perhaps on several machines. One thread of each may use it.
class Ranks {
public:
    Ranks() = default;
    Ranks(const Ranks&) = delete;
    Ranks& operator=(const Ranks&) = delete;
    virtual ~Ranks() = default;

    [[nodiscard]] virtual int rank() const = 0;
    [[nodiscard]] virtual int count() const = 0;
    /// The other may take it when it likes.
    virtual void send(int to, const std::string& bytes) = 0;
    /// A message that has come in, and from whom; nothing where there is none. Does not wait.
    [[nodiscard]] virtual std::optional<std::pair<int, std::string>> receive() = 0;
};

/// This process alone, or, where mpirun started it, all those of the run: then what talks MPI is loaded, `seamward-ranks.so`
/// beside the program. No other command loads it. Throws BadInput when it is not there or does not load.
[[nodiscard]] std::shared_ptr<Ranks> open_ranks();

/// Whether mpirun started this process along with others.
[[nodiscard]] bool started_by_mpirun();

/// How many threads a process of the run should take: the processors that it may use, shared with those beside it on one machine.
[[nodiscard]] unsigned threads_for_one_rank();

}  // namespace seamward
