// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "base/date.h"
#include "base/run_context.h"
#include "base/survey.h"
#include "base/vented.h"
#include "catalog/tables.h"
#include "exchange/read_model.h"
#include "house/build_house.h"

namespace seamward {

/// A closing that did not hold: the customer called back.
struct Callback {
    Date date;
    std::string cause;
    std::optional<Date> mended;  ///< closed again, with the treatment of the entry
};

/// A gap that was closed already.
struct ClosedGap {
    GapIndex gap;
    std::string with;  ///< id of a treatment; empty when the file does not say
    Shape before;      ///< the opening as it was found
    std::optional<Date> date;
    std::optional<Callback> callback;
    double plus_minus = 0;  ///< how far the clear width of `before` may be off, meters

    /// Otherwise the gap is as open as before.
    [[nodiscard]] bool holds() const { return !callback || callback->mended; }
    /// The day of the work that holds.
    [[nodiscard]] std::optional<Date> held_since() const { return callback ? callback->mended : date; }
};

/// An animal that lives in the house, or did.
struct Occupant {
    SpaceIndex space;
    Pest animal;
    std::string seen;             ///< when, or what tells of it; may be empty
    std::optional<GapIndex> way;  ///< the gap that it was seen to use
    std::optional<Date> left;     ///< the day from which on it is known to be gone

    [[nodiscard]] bool gone_on(Date date) const { return left && *left <= date; }
};

/// An animal that somebody saw.
struct Sighting {
    SpaceIndex room;
    Pest pest;
    std::optional<Date> date;
    std::uint32_t count = 1;
};

/// A check that was made when the work was done.
struct CheckMade {
    enum class What : std::uint8_t { combustion_safety, co_alarms };
    What what = What::combustion_safety;
    Date date;
    std::string by;
};

/// Something that was looked up at the house and that its gaps do not tell.
struct Detail {
    std::string measure;          ///< id of the table of measures
    std::optional<GapIndex> gap;  ///< that it is of; nothing: of the house or of `at`
    std::string at;               ///< where, in words; may be empty
    double value = 0;             ///< in the unit of the measure
    double plus_minus = 0;        ///< likewise
};

/// What is known of the place and of how one gets about there.
struct Site {
    enum class Roof : std::uint8_t { unknown, tile, shingle, metal, membrane, foam };
    enum class Occupancy : std::uint8_t { unknown, owner, tenant, vacant };

    std::string state;  ///< two capital letters, `AZ`; empty: not said
    std::optional<int> built;
    Roof roof = Roof::unknown;
    Occupancy occupancy = Occupancy::unknown;
    bool association = false;  ///< a homeowners' association has a say in what is seen from outside
    std::string gates, pets, notes;
};

/// The 3D file that a survey is drawn on.
struct ModelReference {
    std::string file;               ///< as the job file has it, from its folder
    std::filesystem::path path;     ///< where that is from here
    std::optional<ModelUnit> unit;  ///< nothing: what the file says
    std::optional<UpAxis> up;
};

/// One visit to one house, as its job file tells it.
struct Job {
    std::string name;
    std::string address, surveyed, surveyor, notes;
    std::string lot, option;           ///< of a builder's plan: which lot it stands on, and which variant was built there
    std::filesystem::path house_file;  ///< of the described house, from here; empty: it names none
    /// As the house stands now: what is listed as closed has the opening that its treatment left.
    Survey survey;
    std::size_t gaps_of_house = 0;  ///< so many of its gaps, the first ones, are the described house's; the others the job's own
    std::vector<Pest> pests;        ///< in the file's order; a profile of the file's own has no sources
    std::vector<ClosedGap> closed;
    std::vector<Occupant> occupied;
    std::vector<Sighting> sightings;
    std::vector<CheckMade> checks;
    Site site;
    BuiltOf built_of;  ///< the house's, and what the file adds
    std::vector<Detail> details;
    std::vector<SpaceArea> vented;   ///< floors of spaces that are vented, as far as known
    std::vector<SpaceInput> inputs;  ///< of appliances that burn fuel, as far as known
    /// The described house, when the job has one; its parts only where its solids were asked for. Its survey is the job's. Of a
    /// job without one, only the places of gaps, with the ways through them that the file states.
    House house;
    std::optional<ModelReference> model;
};

/// Where jobs get described houses from; otherwise each reads the file that it names.
class HouseSource {
public:
    HouseSource() = default;
    HouseSource(const HouseSource&) = delete;
    HouseSource& operator=(const HouseSource&) = delete;
    virtual ~HouseSource() = default;
    /// The house of a file that is there. Throws BadInput as read_house_description() does.
    [[nodiscard]] virtual std::shared_ptr<const HouseDescription> described(const std::filesystem::path& path,
                                                                            const RunContext& context) = 0;
};

/// Reads a job file (YAML, or JSON when its name ends in `.json`). Throws BadInput with all faults of the file,
/// each with its line and column; faults of the house's file likewise. O(file size) time and memory, and what building the house
/// takes.
[[nodiscard]] Job read_job(const std::filesystem::path& path, const RunContext& context, Make make = Make::survey);

/// What is to be read in place of files, by where they really are (std::filesystem::weakly_canonical).
using FileTexts = std::map<std::filesystem::path, std::string>;

/// The same from text in memory; files that the text refers to are looked for beside `path`, which need not exist. `newer`: what
/// is read in place of the house's file. `houses`: who reads it otherwise; null: the job itself.
[[nodiscard]] Job parse_job(std::string_view text, const std::filesystem::path& path, const RunContext& context = RunContext(),
                            Make make = Make::survey, const FileTexts& newer = {}, HouseSource* houses = nullptr);

/// The name of a job for a heading: its own, or its file's.
[[nodiscard]] std::string heading(const Job& job, const std::filesystem::path& path);

}  // namespace seamward
