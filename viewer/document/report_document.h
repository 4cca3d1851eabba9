// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QString>
#include <QStringList>

#include "document/closings_document.h"
#include "document/job_document.h"
#include "report/report_settings.h"

namespace seamward::viewer {

/// Writes reports of the open job, as it stands in the window, saved or not. The plan is made anew, against the animals of the
/// closings. Lives on the window's thread; reports are made and written on a thread of its own, one at a time: a newer one calls
/// off the older.
class ReportDocument : public QObject {
    Q_OBJECT

public:
    ReportDocument(const JobDocument& document, const ClosingsDocument& closings, QObject* parent = nullptr);

    /// Writes the file that `path` names, .html, .pdf or .xlsx; a file there is replaced when the new one is whole. What
    /// `settings` says of the plan is not used. Ends with written() or failed().
    void write(const QString& path, const ReportSettings& settings);
    [[nodiscard]] bool is_busy() const { return busy_; }

signals:
    /// `left_out`: a sentence for each thing of the job that is not in the file.
    void written(const QString& path, const QStringList& left_out);
    void failed(const seamward::viewer::OpenFault& fault);
    /// Work began (`doing` says what) or ended (empty).
    void busy_changed(const QString& doing);

private:
    void end();

    const JobDocument& document_;
    const ClosingsDocument& closings_;
    bool busy_ = false;
    std::uint64_t ticket_ = 0;
    NewestTask task_;  ///< last, so that its thread ends before the rest goes
};

}  // namespace seamward::viewer
