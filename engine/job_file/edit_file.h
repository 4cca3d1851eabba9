// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

#include "base/vector.h"
#include "job_file/edit_tree.h"

/// For the editors of this folder only.
namespace seamward {

/// What a file shall hold, and the changes that job files and house files have in common. All throw BadInput where a file, or
/// what is wanted, is not right.
class FileEditor {
public:
    FileEditor(EditTree file, const std::filesystem::path& path);

    [[nodiscard]] const EditTree& tree() const { return tree_; }

protected:
    [[noreturn]] void fail(std::string what, std::string mend) const;

    /// The list under a key, made when there is none.
    EditTree& list(std::string_view key);
    /// The entry of a list that has this text under that key, or null.
    [[nodiscard]] EditTree* entry(std::string_view of, std::string_view key, std::string_view text);
    void erase_entry(std::string_view of, std::string_view key, std::string_view text);

    /// An id made of a name, or of `other`, that nothing else has.
    [[nodiscard]] std::string new_id(const EditTree& among, const std::string& name, std::string_view other,
                                     const std::vector<std::string>& taken) const;

    /// A size as it is typed, right for that key.
    [[nodiscard]] EditTree size(const std::string& text, std::string_view key) const;
    /// A size under a key. One that is the same in other words stays as it is written.
    void set_size(EditTree& sizes, std::string_view key, const std::string& text) const;
    /// Somebody's text under a key; a blank one takes the key out.
    void set_text(EditTree& entry, std::string_view key, const std::string& text) const;
    void set_line(EditTree& entry, std::string_view key, const std::string& text, std::string_view called) const;

private:
    std::string file_;

protected:
    EditTree tree_;
};

/// A coordinate in meters, to a tenth of a millimeter: a click is not more exact.
[[nodiscard]] EditTree coordinate(double meters);

}  // namespace seamward
