// SPDX-License-Identifier: GPL-3.0-or-later
#include <CLI/CLI.hpp>
#include <QApplication>
#include <charconv>
#include <cstdlib>
#include <iostream>

#include "offscreen/runtime_folder.h"
#include "window/look.h"
#include "window/main_window.h"
#include "window/screenshot.h"

namespace {

/// What the process ends with; the same as the command line's.
enum ExitCode : int { done = 0, bad_input = 1, wrong_usage = 2, fault_of_the_program = 4 };

struct Request {
    std::string job;
    std::string screenshot;
    std::string pest, room;
    std::string page = "ways";
    std::string size = "1400x900";
    int way = 1;
};

/// "1400x900"; an invalid size for anything else, and beyond 800x500 to 7680x4320.
QSize parsed_size(const std::string& text) {
    int width = 0;
    int height = 0;
    const char* const end = text.data() + text.size();
    const auto first = std::from_chars(text.data(), end, width);
    if (first.ec != std::errc() || first.ptr == end || *first.ptr != 'x') return {};
    const auto second = std::from_chars(first.ptr + 1, end, height);
    if (second.ec != std::errc() || second.ptr != end) return {};
    const QSize size(width, height);
    return size.width() >= 800 && size.height() >= 500 && size.width() <= 7680 && size.height() <= 4320 ? size : QSize();
}

bool has_screen() {
    const auto set = [](const char* name) {
        const char* value = std::getenv(name);
        return value != nullptr && *value != '\0';
    };
    return set("DISPLAY") || set("WAYLAND_DISPLAY") || set("QT_QPA_PLATFORM");
}

int run(const Request& request, int argc, char** argv) {
    namespace viewer = seamward::viewer;
    if (!has_screen()) {
        std::cerr << "seamward-viewer: there is no screen (DISPLAY is not set); on a machine without one, put `xvfb-run -a` "
                     "before the command\n";
        return fault_of_the_program;
    }
    const viewer::RuntimeFolder runtime_folder;
    viewer::prepare_graphics();
    QApplication application(argc, argv);
    viewer::dress(application);
    QCoreApplication::setOrganizationName("Seamward");
    QCoreApplication::setApplicationName("Seamward");
    const QString job = QString::fromStdString(request.job);
    if (!request.screenshot.empty()) {
        const auto fault = viewer::take_screenshot({job, request.pest, request.room, request.way, request.page,
                                                    QString::fromStdString(request.screenshot), parsed_size(request.size)});
        if (fault.text.isEmpty()) return done;
        std::cerr << fault.text.toStdString() << '\n';
        switch (fault.of) {
            case viewer::ScreenshotFault::Of::input: return bad_input;
            case viewer::ScreenshotFault::Of::usage: return wrong_usage;
            case viewer::ScreenshotFault::Of::program: return fault_of_the_program;
        }
    }
    viewer::Preferences preferences;
    viewer::wear(application, preferences);
    viewer::RecentJobs recent;
    viewer::MainWindow window(preferences, recent);
    window.show();
    if (!job.isEmpty()) window.open(job);
    return QApplication::exec();
}

void add_options(CLI::App& app, Request& request) {
    CLI::Option* job = app.add_option("JOB", request.job, "Job file or drill, YAML or JSON; or a builder's 3D file");
    CLI::Option* screenshot =
        app.add_option("--screenshot", request.screenshot, "Save what the window shows as a PNG, and end")->type_name("FILE.png");
    const auto check_name = [](const std::string& name) {
        const bool png = QString::fromStdString(name).endsWith(".png", Qt::CaseInsensitive);
        return png ? std::string() : "\"" + name + "\": only PNG pictures are made; give a name that ends in .png";
    };
    screenshot->needs(job)->check(check_name);
    const auto check_size = [](const std::string& text) {
        return parsed_size(text).isValid() ? std::string()
                                           : "give it as WIDTHxHEIGHT in pixels, 800x500 to 7680x4320, such as 1400x900";
    };
    app.add_option("--size", request.size, "Size of that picture in pixels")
        ->type_name("WxH")
        ->needs(screenshot)
        ->check(check_size)
        ->capture_default_str();
    app.add_option("--pest", request.pest, "Only ways in that this animal of the job gets through")
        ->type_name("ID")
        ->needs(screenshot);
    app.add_option("--room", request.room, "Only ways into this living space")->type_name("ID")->needs(screenshot);
    app.add_option("--page", request.page, "What is on the left: ways, closings or survey")
        ->needs(screenshot)
        ->check(CLI::IsMember({"ways", "closings", "survey"}))
        ->capture_default_str();
    app.add_option("--way", request.way, "Way in that the picture shows, by its rank")
        ->needs(screenshot)
        ->check(CLI::PositiveNumber)
        ->capture_default_str();
}

}  // namespace

int main(int argc, char** argv) {
    CLI::App app("Seamward's window: the ways in of a job, as a list and in 3D", "seamward-viewer");
    app.set_version_flag("--version", SEAMWARD_VERSION);
    Request request;
    add_options(app, request);
    try {
        app.parse(argc, argv);
        return run(request, argc, argv);
    } catch (const CLI::Success& success) {
        return app.exit(success);
    } catch (const CLI::ParseError& error) {
        std::cerr << "seamward-viewer: " << error.what() << "\nseamward-viewer --help tells what there is\n";
        return wrong_usage;
    } catch (const std::exception& fault) {
        std::cerr << "seamward-viewer: fault of the program: " << fault.what() << '\n';
        return fault_of_the_program;
    }
}
