// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/report_document.h"

#include <filesystem>

#include "base/diagnostics.h"
#include "exchange/write_whole_file.h"
#include "job_file/model_house.h"
#include "report/report_file.h"

namespace seamward::viewer {

namespace {

/// What a report is made of, for a thread that must not look at the documents.
struct Wanted {
    QString path;
    ReportKind kind;
    std::filesystem::path job_path;
    std::string job_text;
    FileTexts newer;
    ReportSettings settings;
};

/// Writes it; a sentence for each thing that is not in it.
QStringList written_report(const Wanted& wanted, const RunContext& context) {
    QStringList left_out;
    Job job = parse_job(wanted.job_text, wanted.job_path, context, Make::solids, wanted.newer);
    if (job.model) {
        read_model_house(job, context);
        if (const auto triangles = drop_heavy_solids(job))
            left_out << ReportDocument::tr("The model has %1 triangles, more than a page can carry: there are no drawings.")
                            .arg(*triangles);
    }
    const ReportOrder order{.kind = wanted.kind,
                            .heading = heading(job, wanted.job_path),
                            .settings = wanted.settings,
                            .job_path = wanted.job_path,
                            .job_text = wanted.job_text};
    const MadeReport made = make_report(job, order, context);
    for (const GapIndex gap : made.unreadable)
        left_out << ReportDocument::tr("%1 cannot be shown as a photo.").arg(QString::fromStdString(job.survey[gap].photo));
    write_whole_file(wanted.path.toStdString(), wanted.path.toStdString(), made.bytes);
    return left_out;
}

}  // namespace

ReportDocument::ReportDocument(const JobDocument& document, const ClosingsDocument& closings, QObject* parent)
    : QObject(parent), document_(document), closings_(closings) {}

void ReportDocument::end() {
    busy_ = false;
    emit busy_changed({});
}

void ReportDocument::write(const QString& path, const ReportSettings& settings) {
    const std::optional<ReportKind> kind = report_kind(path.toStdString());
    if (!kind) {
        emit failed({tr("%1 is no name of a report: it ends in .html, .pdf or .xlsx.").arg(path), true});
        return;
    }
    Wanted wanted{path, *kind, document_.path().toStdString(), document_.text(), document_.newer(), settings};
    wanted.settings.planning = PlanSettings{.against = closings_.against()};
    const auto answer = [this, ticket = ++ticket_](const std::function<void()>& act) {
        QMetaObject::invokeMethod(
            this,
            [this, ticket, act] {
                if (ticket != ticket_) return;
                end();
                act();
            },
            Qt::QueuedConnection);
    };
    busy_ = true;
    emit busy_changed(tr("Writing %1").arg(path));
    task_.start([this, wanted, answer](const RunContext& context) {
        try {
            const QStringList left_out = written_report(wanted, context);
            answer([this, wanted, left_out] { emit written(wanted.path, left_out); });
        } catch (const Cancelled&) {
            throw;
        } catch (const std::exception& error) {
            const OpenFault fault{QString::fromUtf8(error.what()), dynamic_cast<const BadInput*>(&error) != nullptr};
            answer([this, fault] { emit failed(fault); });
        }
    });
}

}  // namespace seamward::viewer
