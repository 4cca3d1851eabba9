// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/screenshot.h"

#include <QApplication>
#include <QSaveFile>
#include <algorithm>

#include "window/main_window.h"

namespace seamward::viewer {

namespace {

QString save(const QImage& image, const QString& name) {
    QSaveFile file(name);
    if (file.open(QIODevice::WriteOnly) && image.save(&file, "PNG") && file.commit()) return {};
    return name + ": error: cannot be written: " + file.errorString();
}

}  // namespace

ScreenshotFault take_screenshot(const QString& job, int way, const QString& file, QSize size) {
    ScreenshotFault fault;
    MainWindow window;
    window.setWindowFlag(Qt::X11BypassWindowManagerHint);  // nobody else decides on its size
    window.resize(size / window.devicePixelRatioF());
    window.show();
    QObject::connect(&window.document(), &JobDocument::open_failed, &window, [&](const OpenFault& failed) {
        fault = {failed.text, failed.in_input ? ScreenshotFault::Of::input : ScreenshotFault::Of::program};
        QApplication::exit();
    });
    // Queued: the window has taken the answer up by then.
    QObject::connect(
        &window.document(), &JobDocument::ways_found, &window,
        [&] {
            const auto ways = static_cast<int>(window.document().ways().paths.size());
            if (way > std::max(1, ways)) {
                fault = {QStringLiteral("seamward-viewer: --way %1: ways in of this job: %2").arg(way).arg(ways),
                         ScreenshotFault::Of::usage};
                return QApplication::exit();
            }
            window.document().choose_way(way - 1);
            QApplication::processEvents();
            fault.text = save(window.grab().toImage(), file);
            QApplication::exit();
        },
        Qt::QueuedConnection);
    window.document().open(job);
    QApplication::exec();
    return fault;
}

}  // namespace seamward::viewer
