// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job_file/edit_file.h"
#include "job_file/job_edits.h"

/// For the editors of this folder only.
namespace seamward {

/// Makes changes of the list of features in the file of a house. Each answers with the id of what was changed.
class HouseEditor : public FileEditor {
public:
    using FileEditor::FileEditor;

    std::string make(const AddFeature& edit);
    std::string make(const ChangeFeature& edit);
    std::string make(const RemoveFeature& edit);
    template <class Other>
    std::string make(const Other&) {
        fail("this file describes a house", "change the file of the job");
    }

private:
    void set_coordinate(EditTree& feature, std::string_view key, const std::string& text) const;
};

}  // namespace seamward
