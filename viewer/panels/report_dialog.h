// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QComboBox>
#include <QDialog>
#include <QLabel>

#include "report/report_settings.h"

namespace seamward::viewer {

/// Asks whom a report is for and what it is to be written as.
class ReportDialog : public QDialog {
    Q_OBJECT

public:
    explicit ReportDialog(QWidget* parent = nullptr);

    /// Shows what was chosen the last time.
    void choose(const ReportSettings& settings, const QString& ending);
    /// As chosen; the plan is left as it begins.
    [[nodiscard]] ReportSettings settings() const;
    /// Of the file: "html", "pdf" or "xlsx".
    [[nodiscard]] QString ending() const;

private:
    [[nodiscard]] QComboBox* box(const char* name, const QString& question, const QStringList& answers);
    void tell();

    QComboBox *audience_, *kind_, *language_, *lengths_, *paper_;
    QLabel* words_;
};

}  // namespace seamward::viewer
