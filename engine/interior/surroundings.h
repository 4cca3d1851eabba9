// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <unordered_map>
#include <vector>

#include "interior/openings.h"
#include "interior/throat.h"

namespace seamward {

/// The stands in an opening and at its ends, to tell whether a section shuts all of it and not only one of several ways side by
/// side.
class Surroundings {
public:
    /// `radius`: meters, of the ball that was led through. Stands where one of 0.6 times that does not fit are left out; of very
    /// many stands the first 4,000 are looked at, and nothing counts as shut then.
    Surroundings(const Passages& passages, const Bodies& bodies, const Openings& openings, std::size_t which, double radius);

    /// Whether no chain of passages leads from one end to the other but through the gates. O(p log p) for p passages here.
    [[nodiscard]] bool shut_by(const std::vector<Gate>& gates) const;
    /// Of the widest chain that does so its narrowest passage; nothing where there is none among the stands that were looked at.
    [[nodiscard]] std::optional<Beside> widest_beside(const std::vector<Gate>& gates) const;
    [[nodiscard]] bool is_cut_short() const { return cut_short_; }

private:
    struct Local {
        std::uint32_t stand;
        int side;  ///< 0 or 1 beyond the ends of the opening, else -1
        bool out;  ///< wide enough to be no place of the opening
    };

    /// A passage between two of the stands.
    struct Link {
        double clearance;  ///< meters; where it was not led what it is at most
        std::uint32_t passage;
        std::size_t from, to;
        bool led;

        bool operator<(const Link& other) const {
            return clearance != other.clearance ? clearance < other.clearance : passage > other.passage;
        }
    };

    /// Joins stands from the widest link down, to the one that connects the two ends. With `lead` a ball is led through those
    /// that join some.
    [[nodiscard]] std::optional<Beside> link_up(std::vector<Link> links, bool lead) const;
    [[nodiscard]] double clearance_of(std::uint32_t passage) const;
    void add(std::uint32_t stand, const Bodies& bodies, const Opening& opening);

    const Passages& passages_;
    const Openings& openings_;
    std::size_t which_;
    double radius_;
    bool cut_short_ = false;
    std::vector<Local> stands_;
    std::unordered_map<std::uint32_t, std::size_t> local_;
    mutable std::unordered_map<std::uint32_t, double> led_;  ///< by passage; not for several threads
};

}  // namespace seamward
