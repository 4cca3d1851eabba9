// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>
#include <QLineEdit>
#include <QPushButton>

namespace seamward::viewer {

/// Asks who does a drill, and into which file progress goes.
class TraineeDialog : public QDialog {
    Q_OBJECT

public:
    TraineeDialog(const QString& name, const QString& file, QWidget* parent = nullptr);

    [[nodiscard]] QString name() const { return name_->text().simplified(); }
    /// May be empty: progress is not kept.
    [[nodiscard]] QString file() const { return file_->text().trimmed(); }

private:
    void look_for_file();

    QLineEdit *name_, *file_;
};

}  // namespace seamward::viewer
