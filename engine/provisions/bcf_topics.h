// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "provisions/bcf.h"
#include "provisions/camera.h"

namespace seamward {

/// A part of a model as a BCF file names it: by the GlobalId of IFC or, without one, by its id.
struct BcfComponent {
    std::string global_id, id;  ///< one of them is empty
};

/// A topic of a BCF file, said in one language. Texts may hold any bytes.
struct BcfTopic {
    std::string guid, view_guid;
    std::string type, status, priority, title, description;
    std::vector<std::string> labels;
    std::optional<Camera> camera;
    std::vector<BcfComponent> selected;
    std::vector<std::pair<Point, Point>> lines;
    std::string snapshot;  ///< the bytes of a PNG file; empty: none

    /// Whether there is anything to see of it but the snapshot.
    [[nodiscard]] bool has_view() const { return camera || !selected.empty(); }
};

/// The words that topics may have, for programs that offer them in lists; sorted, each once.
struct BcfWords {
    std::vector<std::string> types, statuses, priorities, labels;
};

struct BcfTopics {
    std::string project_guid;
    std::vector<BcfTopic> topics;  ///< in the order of the findings
    BcfWords words;
};

[[nodiscard]] BcfTopics bcf_topics(const Audit& audit, const BcfSettings& settings);

}  // namespace seamward
