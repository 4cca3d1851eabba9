// SPDX-License-Identifier: GPL-3.0-or-later
// What the window saves besides the survey.
#include <QApplication>
#include <QDir>
#include <QFileInfo>
#include <QProgressDialog>
#include <QSaveFile>

#include "base/diagnostics.h"
#include "exchange/gltf.h"
#include "exchange/write_whole_file.h"
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
