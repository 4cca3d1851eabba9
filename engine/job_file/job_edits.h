// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <filesystem>
#include <optional>
#include <string>
#include <utility>
#include <variant>
#include <vector>

#include "base/survey.h"

namespace seamward {

/// Changes of a job file. They are made in its text, so that comments, order, spacing and quotes of whatever is not changed stay
/// as they are. Sizes are given as they shall be written, `1/16 in`.

/// The sizes of a gap in words of the job file.
struct ShapeText {
    std::string word;                   ///< slot, hole, ring or mesh
    std::optional<std::string> width;   ///< its clear width; nothing: as it is
    std::optional<std::string> second;  ///< length of a slot, pipe of a ring, area of a mesh; nothing: as it is
};

/// Something new of one gap; what is nothing stays as it is, and an empty text is taken out. Of a gap of the house, only width,
/// evidence, duty, note and photo can be changed: in an entry without `between`, which is made when there is none. Such an entry
/// replaces all of the house's evidence, so that both parts of it have to be given.
struct ChangeGap {
    std::string id;
    std::optional<ShapeText> shape;
    std::optional<Evidence::How> how;
    std::optional<std::string> plus_minus;
    std::optional<std::string> name, note, photo;
    std::optional<Point> at;  ///< the way through it, if stated, is then forgotten
    std::optional<std::array<std::string, 2>> between;
};

/// A new gap. Its id is made from its name.
struct AddGap {
    std::string name;
    std::array<std::string, 2> between;  ///< ids of spaces
    ShapeText shape;
    Evidence::How how = Evidence::How::unstated;
    std::string plus_minus, note, photo;
    std::optional<Point> at;
    std::vector<std::string> taken;  ///< ids that gaps of the house have
};

/// Takes a gap out that the job lists, with what `closed` and `details` say of it.
struct RemoveGap {
    std::string id;
};

/// A new space. Its id is made from its name.
struct AddSpace {
    std::string name;
    SpaceKind kind = SpaceKind::cavity;
    bool source = false;
    std::vector<std::string> taken;  ///< ids that spaces of the house have
};

/// Lists a gap as closed.
struct CloseGap {
    std::string id;
    std::string with;     ///< a treatment; may be empty
    std::string opening;  ///< of a mesh that does not say it itself
    std::string date;     ///< `2026-03-20`; may be empty
};

/// Takes a gap out of `closed`.
struct OpenGap {
    std::string id;
};

/// The job file is to stand in another folder: its house, its model and its photos are found from there.
struct MoveJob {
    std::filesystem::path from, to;  ///< folders
    std::string house{};             ///< another house file, by its way from there; empty: the same
};

/// A new feature of the described house, in the house's file. Its id is made from its name. Which of on, along, up, at and side
/// it needs follows from its type; what is empty is left out.
struct AddFeature {
    std::string name, type;
    std::string on, along, up, side, story;
    std::optional<std::array<double, 2>> at;                    ///< in the plan, meters
    std::string gap;                                            ///< clear width of all its gaps
    std::vector<std::pair<std::string, std::string>> measured;  ///< clear widths that were measured, by FeatureGap::id
    std::vector<std::string> taken;                             ///< ids that gaps and features have
};

/// Another name or place of a feature, in the house's file; what is nothing stays as it is, and an empty text is taken out.
/// Widths of its gaps are changed by ChangeGap.
struct ChangeFeature {
    std::string id;
    std::optional<std::string> name, on, along, up, side, story;
    std::optional<std::array<double, 2>> at;  ///< in the plan, meters; one that was stated is forgotten where `along` is given
};

/// Takes a feature out of the house's file, and what the job says of its gaps out of the job's.
struct RemoveFeature {
    std::string id;
    std::vector<std::string> gaps;  ///< ids of the gaps that it makes
};

using Edit =
    std::variant<ChangeGap, AddGap, RemoveGap, AddSpace, CloseGap, OpenGap, MoveJob, AddFeature, ChangeFeature, RemoveFeature>;

/// Whether an edit changes the house's file, and whether it changes the job's.
[[nodiscard]] bool is_of_house(const Edit& edit);
[[nodiscard]] bool is_of_job(const Edit& edit);

/// The house file that a job file names, where it is from here; empty when it names none.
[[nodiscard]] std::filesystem::path house_of(const std::string& text, const std::filesystem::path& path);

/// One contiguous change of a text, in bytes.
struct TextChange {
    std::size_t at = 0;
    std::string removed, inserted;

    [[nodiscard]] bool empty() const { return removed.empty() && inserted.empty(); }
    [[nodiscard]] TextChange inverse() const { return {at, inserted, removed}; }
};

/// The text after the change; it must hold `removed` at `at`.
[[nodiscard]] std::string changed(std::string_view text, const TextChange& change);

struct Edited {
    std::string text;
    TextChange change;
    std::string id;  ///< of what was changed or added
};

/// Makes one change, or its part, in the text of the job file at `path`, or of the house file there, which need not exist. Throws
/// BadInput, with what is wrong and how to mend it, when the text does not parse, has no such gap, or cannot be changed without
/// changing something else too. The answer parses; whether it is a job is for parse_job() to say, which knows the house. O(size
/// of the text).
[[nodiscard]] Edited apply(const std::string& text, const std::filesystem::path& path, const Edit& edit);

}  // namespace seamward
