// SPDX-License-Identifier: GPL-3.0-or-later
// Built as a module of its own, so that MPI is loaded by a sweep under mpirun and by nothing else.
#include <mpi.h>

#include <climits>
#include <list>
#include <stdexcept>

#include "sweep/ranks.h"

namespace seamward {

namespace {

/// Messages on their way out keep their bytes until they are gone.
class MpiRanks : public Ranks {
public:
    MpiRanks() {
        int provided = 0;
        MPI_Init_thread(nullptr, nullptr, MPI_THREAD_FUNNELED, &provided);
        MPI_Comm_rank(MPI_COMM_WORLD, &rank_);
        MPI_Comm_size(MPI_COMM_WORLD, &count_);
    }
    ~MpiRanks() override {
        for (Outgoing& message : outgoing_) MPI_Wait(&message.request, MPI_STATUS_IGNORE);
        MPI_Finalize();
    }
    MpiRanks(const MpiRanks&) = delete;
    MpiRanks& operator=(const MpiRanks&) = delete;

    [[nodiscard]] int rank() const override { return rank_; }
    [[nodiscard]] int count() const override { return count_; }

    void send(int to, const std::string& bytes) override {
        if (bytes.size() > INT_MAX) throw std::length_error("a message is longer than MPI takes");
        forget_sent();
        Outgoing& message = outgoing_.emplace_back();
        message.bytes = bytes;
        MPI_Isend(message.bytes.data(), static_cast<int>(bytes.size()), MPI_BYTE, to, 0, MPI_COMM_WORLD, &message.request);
    }

    [[nodiscard]] std::optional<std::pair<int, std::string>> receive() override {
        forget_sent();
        int there = 0, size = 0;
        MPI_Status status;
        MPI_Iprobe(MPI_ANY_SOURCE, 0, MPI_COMM_WORLD, &there, &status);
        if (there == 0) return std::nullopt;
        MPI_Get_count(&status, MPI_BYTE, &size);
        std::string bytes(static_cast<std::size_t>(size), '\0');
        MPI_Recv(bytes.data(), size, MPI_BYTE, status.MPI_SOURCE, 0, MPI_COMM_WORLD, MPI_STATUS_IGNORE);
        return std::pair(status.MPI_SOURCE, std::move(bytes));
    }

private:
    struct Outgoing {
        std::string bytes;
        MPI_Request request = MPI_REQUEST_NULL;
    };

    void forget_sent() {
        for (auto message = outgoing_.begin(); message != outgoing_.end();) {
            int gone = 0;
            MPI_Test(&message->request, &gone, MPI_STATUS_IGNORE);
            message = gone != 0 ? outgoing_.erase(message) : std::next(message);
        }
    }

    int rank_ = 0, count_ = 1;
    std::list<Outgoing> outgoing_;
};

}  // namespace

}  // namespace seamward

extern "C" seamward::Ranks* seamward_open_ranks() { return new seamward::MpiRanks; }
