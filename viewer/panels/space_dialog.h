// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QCheckBox>
#include <QComboBox>
#include <QDialog>
#include <QLineEdit>

#include "job_file/job_edits.h"

namespace seamward::viewer {

/// Asks for the name and the kind of a new space.
class SpaceDialog : public QDialog {
    Q_OBJECT

public:
    explicit SpaceDialog(QWidget* parent = nullptr);

    /// What was said; `taken` is left empty.
    [[nodiscard]] AddSpace space() const;

private:
    QLineEdit* name_;
    QComboBox* kind_;
    QCheckBox* source_;
};

}  // namespace seamward::viewer
