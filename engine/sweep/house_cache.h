// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <map>
#include <memory>
#include <mutex>
#include <string>
#include <vector>

#include "job_file/job.h"
#include "sweep/lot_row.h"

namespace seamward {

/// Files that many lots share, read once in a sweep: described houses, and digests of these and of models. Several threads may
/// use it. It forgets all when it has `most` houses, so that a sweep over as many houses as lots does not grow.
class HouseCache {
public:
    static constexpr std::size_t most = 256;

    struct Entry {
        std::shared_ptr<const HouseDescription> described;  ///< null: only the digest was asked for
        std::string digest;
    };

    /// Throws BadInput when the house cannot be read; that is not kept.
    [[nodiscard]] Entry house(const std::filesystem::path& path, const RunContext& context);
    /// SHA-256 of the file; empty when it cannot be read or is a pipe or a device.
    [[nodiscard]] std::string digest(const std::filesystem::path& path);

private:
    void keep(const std::string& path, Entry entry);

    std::mutex mutex_;
    std::map<std::string, Entry> entries_;  ///< by the path as it was spelled, which messages repeat
};

/// The houses of one lot out of those of all; notes what the lot rests on.
class LotHouses : public HouseSource {
public:
    explicit LotHouses(HouseCache& cache) : cache_(cache) {}
    [[nodiscard]] std::shared_ptr<const HouseDescription> described(const std::filesystem::path& path,
                                                                    const RunContext& context) override;
    [[nodiscard]] const std::vector<LotInput>& inputs() const { return inputs_; }

private:
    HouseCache& cache_;
    std::vector<LotInput> inputs_;
};

}  // namespace seamward
