// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <string>
#include <vector>

#include "base/record.h"
#include "house/description.h"

namespace seamward {

/// Reads a house file. Its parts stand in files of their own: read_frame.cpp has what makes the walls, read_inside.cpp what
/// stands in them, read_outside.cpp the roof and the yard.
class HouseReader {
public:
    explicit HouseReader(const Document& document);
    HouseDescription read();

private:
    static constexpr std::size_t most_corners = 2000;  ///< no honest outline has more

    void check_version();
    void read_assemblies();
    void read_outline();
    void read_foundation();
    void read_stories();
    void read_partitions();
    void read_rooms();
    void read_openings();
    void read_stud_bays();
    void read_bulkheads();
    void read_roof();
    void read_yard();
    void read_features();

    void read_assembly(Node node);
    [[nodiscard]] WallLayer read_layer(Node node);
    void check_outline(Place place);
    void read_cavities(const Record& record, StoryDescription& story);
    void check_roof_keys(const Record& record);
    void read_paving(Node node);
    void read_block_wall(Node node);
    void check_feature(const FeatureDescription& feature);
    [[nodiscard]] double read_pitch(const Record& record);

    NamedSpace read_space(Node node);
    Loop read_points(const Record& record, std::string_view key, std::size_t least);
    std::size_t assembly_named(const Record& record, std::string_view key);
    std::size_t wall_named(const Record& record, Node node);
    [[nodiscard]] std::size_t read_story(const Record& record) const;
    /// The last story that something runs through which begins in `first`.
    [[nodiscard]] std::size_t read_last_story(const Record& record, std::size_t first) const;
    /// As Record::distance(); of a number without a unit that makes no sense in meters, another unit is proposed.
    [[nodiscard]] static std::optional<double> distance(const Record& record, std::string_view key, double least, double most);

    /// Notes the id of something that openings and features go on. Reports one that stands twice.
    void take_host(const std::string& id, const std::string& called, Place place);
    /// Reports an id that is neither a wall's nor a partition's.
    void check_wall(Node node, const std::string& id);
    static void check_not_empty(const Record& record, const std::string& key, const std::string& mend);
    /// Whether a key of the file is misspelled such that this one was probably meant: what it holds is then not known.
    [[nodiscard]] bool misspelled(std::string_view key) const;
    void unfit(Place place, std::string what, std::string mend);

    HouseDescription house_;
    std::map<std::string, std::string> hosts_;  ///< by id, what it is
    Diagnostics diagnostics_;
    Node root_;
    Record file_;
};

}  // namespace seamward
