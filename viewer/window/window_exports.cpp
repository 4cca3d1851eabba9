// SPDX-License-Identifier: GPL-3.0-or-later
// What the window saves besides the survey.
#include <QApplication>
#include <QDesktopServices>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QMessageBox>
#include <QProgressDialog>
#include <QPushButton>
#include <QSaveFile>
#include <QStatusBar>
#include <QUrl>

#include "base/diagnostics.h"
#include "document/translations.h"
#include "exchange/gltf.h"
#include "exchange/write_whole_file.h"
#include "panels/report_dialog.h"
#include "window/film.h"
#include "window/main_window.h"

namespace seamward::viewer {

bool MainWindow::save_picture(const QString& path) {
    QSaveFile file(path);
    if (file.open(QIODevice::WriteOnly) && picture_->canvas().image().save(&file, "PNG") && file.commit()) return true;
    return tell_fault(tr("%1 cannot be written: %2").arg(path, file.errorString()));
}

bool MainWindow::save_solids(const QString& path) {
    const auto solids = document_->solids();
    if (!solids) return tell_fault(tr("This job has no house."));
    try {
        const std::string name = path.toStdString();
        write_whole_file(name, name, gltf_binary(solids->parts, solids->survey, document_->title().toStdString()));
        return true;
    } catch (const BadInput& bad) {
        return tell_fault(QString::fromUtf8(bad.what()));
    }
}

void MainWindow::ask_for_report() {
    survey_panel_->commit();
    if (!report_asked_) {  // as the window itself is
        report_settings_.language = spoken() == "es" ? Language::spanish : Language::english;
        report_settings_.lengths =
            preferences_.lengths() == Lengths::millimeters ? seamward::Lengths::millimeters : seamward::Lengths::inches;
    }
    ReportDialog dialog(this);
    dialog.choose(report_settings_, report_ending_);
    if (dialog.exec() != QDialog::Accepted) return;
    report_settings_ = dialog.settings();
    report_ending_ = dialog.ending();
    report_asked_ = true;
    save_somewhere(tr("Write a report"), tr("Reports (*.%1)").arg(report_ending_), report_ending_, &MainWindow::save_report);
}

bool MainWindow::save_report(const QString& path) {
    report_->write(path, report_settings_);
    return false;  // it tells itself when it is written
}

void MainWindow::tell_report(const QString& path, const QStringList& left_out) {
    statusBar()->showMessage(tr("Saved %1").arg(path), 6'000);
    auto* box = new QMessageBox(QMessageBox::Information, tr("Seamward"), tr("The report is written: %1").arg(path),
                                QMessageBox::Close, this);
    box->setObjectName("report_written");
    box->setAttribute(Qt::WA_DeleteOnClose);
    box->setInformativeText(left_out.join('\n'));
    QPushButton* look = box->addButton(tr("&Look at it"), QMessageBox::ActionRole);
    connect(look, &QPushButton::clicked, this, [path] { QDesktopServices::openUrl(QUrl::fromLocalFile(path)); });
    box->open();
}

bool MainWindow::save_film(const QString& path) {
    PictureCanvas& canvas = picture_->canvas();
    if (!canvas.is_riding()) canvas.start_ride();
    if (!canvas.is_riding()) return tell_fault(tr("No way in is chosen whose line through the house is known."));
    canvas.set_ride_going(false);
    QProgressDialog progress(tr("Saving the ride"), tr("Stop"), 0, 1000, this);
    progress.setWindowModality(Qt::WindowModal);
    progress.setMinimumDuration(0);
    const QString fault = write_film(path, canvas, [&](double share) {
        progress.setValue(static_cast<int>(share * 1000));
        QApplication::processEvents();
        return !progress.wasCanceled();
    });
    canvas.end_ride();
    return fault.isEmpty() ? !progress.wasCanceled() : tell_fault(fault);
}

}  // namespace seamward::viewer
