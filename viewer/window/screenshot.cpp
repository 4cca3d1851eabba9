// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/screenshot.h"

#include <QApplication>
#include <QSaveFile>
#include <QTemporaryDir>
#include <algorithm>
#include <optional>
#include <string_view>
#include <vector>

#include "base/nearest_word.h"
#include "document/drill_files.h"
#include "window/main_window.h"

namespace seamward::viewer {

namespace {

QString save(const QImage& image, const QString& name) {
    QSaveFile file(name);
    if (file.open(QIODevice::WriteOnly) && image.save(&file, "PNG") && file.commit()) return {};
    return name + ": error: cannot be written: " + file.errorString();
}

/// The position of an id; all known ids in the fault when it is not among them.
std::optional<int> position_of(const std::string& id, const std::vector<std::string_view>& known, const char* option,
                               const char* what, ScreenshotFault& fault) {
    const auto found = std::find(known.begin(), known.end(), id);
    if (found != known.end()) return static_cast<int>(found - known.begin());
    std::string text = std::string("seamward-viewer: ") + option + ": unknown id \"" + id + "\"; ";
    if (const auto nearest = nearest_word(id, known)) {
        text += "did you mean " + std::string(*nearest) + "?";
    } else {
        text += std::string(known.empty() ? "this job has no " : "this job has these ") + what + (known.empty() ? "" : ":");
        for (const std::string_view word : known) text += ' ' + std::string(word);
    }
    fault = {QString::fromStdString(text), ScreenshotFault::Of::usage};
    return std::nullopt;
}

/// Chooses animal and room; false when there is no such.
bool choose(JobDocument& document, const ScreenshotRequest& request, ScreenshotFault& fault) {
    if (!request.animal.empty()) {
        std::vector<std::string_view> known;
        for (const Pest& pest : document.job().pests) known.emplace_back(pest.id);
        const auto animal = position_of(request.animal, known, "--pest", "animals", fault);
        if (!animal) return false;
        document.choose_animal(*animal);
    }
    if (!request.room.empty()) {
        std::vector<std::string_view> known;
        for (const SpaceIndex room : document.rooms()) known.emplace_back(document.job().survey[room].id);
        const auto room = position_of(request.room, known, "--room", "rooms", fault);
        if (!room) return false;
        document.choose_room(*room);
    }
    return true;
}

ScreenshotFault no_such_way(int way, int ways) {
    if (ways == 1)
        return {QStringLiteral("seamward-viewer: --way %1: there is only one way in").arg(way), ScreenshotFault::Of::usage};
    const QString text = ways == static_cast<int>(JobDocument::ways_wanted)
                             ? QStringLiteral("seamward-viewer: --way %1: the %2 widest ways in are the most that is shown")
                             : QStringLiteral("seamward-viewer: --way %1: there are only %2 ways in");
    return {text.arg(way).arg(ways), ScreenshotFault::Of::usage};
}

/// The same of a drill: its task and the house to inspect.
ScreenshotFault take_drill(MainWindow& window, const ScreenshotRequest& request) {
    ScreenshotFault fault;
    DrillPage& drill = window.drill();
    drill.picture().canvas().set_animated(false);
    QObject::connect(&drill.document(), &DrillDocument::open_failed, &window, [&](const OpenFault& failed) {
        fault = {failed.text, failed.in_input ? ScreenshotFault::Of::input : ScreenshotFault::Of::program};
        QApplication::exit();
    });
    const auto take = [&] {
        QApplication::processEvents();
        drill.picture().canvas().settle();
        fault.text = save(window.grab().toImage(), request.file);
        QApplication::exit();
    };
    QObject::connect(&drill.document(), &DrillDocument::opened, &window, take, Qt::QueuedConnection);
    drill.document().open(request.job);
    QApplication::exec();
    return fault;
}

}  // namespace

ScreenshotFault take_screenshot(const ScreenshotRequest& request) {
    ScreenshotFault fault;
    const QTemporaryDir own;  // the picture does not depend on how the user likes the window, nor is it a job that was opened
    Preferences preferences(own.filePath("preferences.ini"));
    preferences.set_hints_seen(true);
    RecentJobs recent(own.filePath("recent.ini"));
    MainWindow window(preferences, recent);
    window.picture().canvas().set_animated(false);
    JobDocument& document = window.document();
    window.setWindowFlag(Qt::X11BypassWindowManagerHint);  // nobody else decides on its size
    window.resize(request.size / window.devicePixelRatioF());
    window.show();
    if (is_drill_file(request.job)) return take_drill(window, request);
    QObject::connect(&document, &JobDocument::open_failed, &window, [&](const OpenFault& failed) {
        fault = {failed.text, failed.in_input ? ScreenshotFault::Of::input : ScreenshotFault::Of::program};
        QApplication::exit();
    });
    if (request.page == "closings") window.show_page(MainWindow::Page::closings);
    if (request.page == "survey") window.show_page(MainWindow::Page::survey);
    bool asked = false;
    const auto take = [&] {
        if (!asked) {
            asked = true;
            if (!choose(document, request, fault)) return QApplication::exit();
            if (document.is_busy()) return;  // its ways follow
        }
        const auto ways = static_cast<int>(document.ways().paths.size());
        if (request.way > std::max(1, ways)) {
            fault = no_such_way(request.way, ways);
            return QApplication::exit();
        }
        document.choose_way(request.way - 1);
        const bool house = document.job().model || !document.job().house.survey.spaces.empty();
        if (house && !document.solids()) return;  // the house follows
        if (request.page == "closings" && !window.closings().has_plan() && window.closings().fault().isEmpty()) return;
        QApplication::processEvents();
        window.picture().canvas().settle();
        fault.text = save(window.grab().toImage(), request.file);
        QApplication::exit();
    };
    // Queued: the window has taken the answer up by then.
    QObject::connect(&document, &JobDocument::ways_found, &window, take, Qt::QueuedConnection);
    const auto take_when_ready = [&] {
        if (!document.is_busy()) take();
    };
    QObject::connect(&document, &JobDocument::solids_ready, &window, take_when_ready, Qt::QueuedConnection);
    QObject::connect(&window.closings(), &ClosingsDocument::outlook_found, &window, take_when_ready, Qt::QueuedConnection);
    QObject::connect(&document, &JobDocument::solids_failed, &window, [&](const OpenFault& failed) {
        fault = {failed.text, failed.in_input ? ScreenshotFault::Of::input : ScreenshotFault::Of::program};
        QApplication::exit();
    });
    document.open(request.job);
    QApplication::exec();
    return fault;
}

}  // namespace seamward::viewer
