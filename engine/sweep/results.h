// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "sweep/lot_row.h"

namespace seamward {

/// What is known of a row that stands in the results already.
struct KnownRow {
    std::string settings;  ///< as settings_digest() made it
    std::string digest;    ///< of the job file
    std::vector<LotInput> inputs;
    LotResult result = LotResult::error;
    bool died = false;  ///< the program died at this lot twice
};

/// One detail of one plan in one lot.
struct DetailRow {
    std::string plan, id, name, feature, file;
    bool stays = false;
    double width = 0;
    std::optional<Money> cost;
};

/// The results of a sweep, in a SQLite file `sweep.sqlite` of its folder. Each change is a transaction, so that whatever ends the
/// program leaves whole rows. Throws BadInput when the file is another's, is in use, or cannot be written.
class SweepResults {
public:
    /// Makes the folder where there is none. `work`: what is done; a folder holds the results of one kind of work.
    SweepResults(const std::filesystem::path& folder, LotWork work);
    ~SweepResults();
    SweepResults(const SweepResults&) = delete;
    SweepResults& operator=(const SweepResults&) = delete;

    /// For a copy of the process, which must not use the results: the folder is locked by its parent alone from here on, and free
    /// as soon as that ends.
    void leave_to_parent();

    /// Notes the day of the work. Without one asked for, it is the one noted before, so that a sweep which goes on the next
    /// morning is still of one day; and `today` where there is none.
    [[nodiscard]] std::string day(const std::string& asked_for, const std::string& today);

    [[nodiscard]] std::optional<KnownRow> known(const std::string& file);
    /// Notes that the work on these begins.
    void begin(const std::vector<std::string>& files);
    /// Those that were begun and have no row since: the program ended over them.
    [[nodiscard]] std::vector<std::string> begun();
    /// Those lots are not to blame: the work was called off.
    void forget_begun();
    /// Puts rows in place of those of the same lots, which are begun no longer. `settings`: digest of these.
    void put(std::span<const LotRow> rows, const std::string& settings, bool died = false);
    /// Takes out all lots but these, and what was begun.
    void keep_only(std::span<const std::string> files);

    /// All rows without details, in the order of `files`.
    void each_row(std::span<const std::string> files, const std::function<void(const LotRow&)>& visit);
    /// All details, by plan, id of the detail, width and file.
    void each_detail(const std::function<void(const DetailRow&)>& visit);

private:
    struct Impl;
    std::unique_ptr<Impl> impl_;
};

}  // namespace seamward
