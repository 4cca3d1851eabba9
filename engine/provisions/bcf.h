// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/vector.h"
#include "catalog/translator.h"
#include "geometry/box_tree.h"
#include "provisions/audit.h"

namespace seamward {

/// What a BCF file shows of a finding, beyond what the audit says of it.
struct BcfSight {
    std::optional<Vector> outward;  ///< out of the building at its place, of any length; nothing: Finding::outward
    std::vector<Point> route;       ///< of a way, from outdoors on; empty: from gap to gap
    std::string snapshot;           ///< a picture of it, the bytes of a PNG file; empty: none
};

/// All lengths in meters, z up, in the frame of the audited model.
struct BcfSettings {
    std::string author = "Seamward";  ///< who found it: a name or a mail address
    Language language = Language::english;
    std::string model;                             ///< name of the model's file, without folders; empty: none
    std::optional<AxisBox> building;               ///< pictures are taken from outside of it; nothing: not known
    std::vector<std::optional<Point>> gap_places;  ///< by gap of the audited survey; those at its end may be left out
    std::vector<BcfSight> sights;                  ///< by position in Audit::findings; those at its end may be left out
};

/// The findings of an audit as a file of the BIM Collaboration Format 2.1 (buildingSMART International): a topic each, in a
/// folder named by its GUID, with a view that has a camera, the parts selected and the way drawn; docs/bcf.md describes them.
/// The same audit and settings give the same bytes on every machine and day. Topics are named by heading and key: what is found
/// again in a later audit of the house is the same topic. Whatever letters names have, the file fits the schemas.
///
/// The way of the n-th finding with the rule `way-in` is the n-th of Audit::ways. Throws std::invalid_argument when the
/// audit's date is no day of a calendar.
[[nodiscard]] std::string bcf_bytes(const Audit& audit, const BcfSettings& settings);

}  // namespace seamward
