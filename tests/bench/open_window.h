// SPDX-License-Identifier: GPL-3.0-or-later
// What the window has of a job, to be timed.
#pragma once

#include <QVTKOpenGLNativeWidget.h>
#include <vtkGenericOpenGLRenderWindow.h>
#include <vtkNew.h>

#include <QCoreApplication>
#include <QElapsedTimer>
#include <QOpenGLContext>
#include <QOpenGLFunctions>
#include <QTimer>
#include <algorithm>
#include <string>

#include "document/closings_document.h"
#include "layers/house_scene.h"
#include "tests/bench/bench.h"

namespace seamward::bench {

using namespace viewer;

inline constexpr int wide = 1000, high = 700;  // pixels of the picture
inline constexpr int longest_wait = 120'000;   // milliseconds
inline constexpr int beat = 2;                 // milliseconds: what the window's thread does as long as it is free

/// A picture on the screen.
class View {
public:
    explicit View(vtkRenderer* renderer) {
        vtkNew<vtkGenericOpenGLRenderWindow> window;
        window->SetMultiSamples(0);
        window->AddRenderer(renderer);
        widget_.setRenderWindow(window);
        widget_.resize(wide, high);
        widget_.show();
        (void)image();
    }
    /// Ends when it is drawn.
    void draw() {
        widget_.makeCurrent();
        widget_.renderWindow()->Render();
        widget_.context()->functions()->glFinish();
    }
    [[nodiscard]] QImage image() { return widget_.grabFramebuffer(); }
    [[nodiscard]] std::string drawn_by() {
        widget_.makeCurrent();
        return reinterpret_cast<const char*>(widget_.context()->functions()->glGetString(GL_RENDERER));
    }

private:
    QVTKOpenGLNativeWidget widget_;
};

/// What the window has of a job: its picture on the screen, the ways in and the closings.
class OpenWindow {
public:
    OpenWindow() {
        document.prepare_solids_with([](const House& house, const RunContext& context) { return prepare_house(house, context); });
        beat_.setInterval(beat);
        QObject::connect(&beat_, &QTimer::timeout, [this] {
            held_ = std::max(held_, since_beat_.nsecsElapsed());
            since_beat_.start();
        });
        QObject::connect(&document, &JobDocument::opened, [this] { show(); });
        QObject::connect(&document, &JobDocument::solids_ready, [this] {
            show();
            drawn_ = true;
        });
        scene.set_fine(false);
    }

    /// Seconds from the wish to the picture, drawn.
    double open(const QString& job) {
        held_ = 0;
        drawn_ = false;
        QElapsedTimer clock;
        clock.start();
        since_beat_.start();
        beat_.start();
        document.open(job);
        run_until([this] { return drawn_; });
        held_ = std::max(held_, since_beat_.nsecsElapsed());
        beat_.stop();
        return static_cast<double>(clock.nsecsElapsed()) * 1e-9;
    }
    /// The longest that the window's thread did not answer while the last job was opened, seconds.
    [[nodiscard]] double held() const { return static_cast<double>(held_) * 1e-9; }
    /// Of that the last: what was ready was taken over, without the frame.
    [[nodiscard]] double taken_over() const { return static_cast<double>(taken_over_) * 1e-9; }

    template <class Done>
    static void run_until(Done done) {
        QElapsedTimer clock;
        clock.start();
        while (!done()) {
            QCoreApplication::processEvents(QEventLoop::AllEvents | QEventLoop::WaitForMoreEvents);
            require(clock.elapsed() < longest_wait, "an answer in time");
        }
    }

    JobDocument document;
    ClosingsDocument closings{document};
    HouseScene scene;

private:
    void show() {
        QElapsedTimer clock;
        clock.start();
        scene.show_job(document);
        scene.show_ways(document);
        scene.look(scene.whole_house({}, static_cast<double>(wide) / high));
        taken_over_ = clock.nsecsElapsed();
        view_.draw();
    }

    View view_{scene.renderer()};
    QTimer beat_;
    QElapsedTimer since_beat_;
    qint64 held_ = 0, taken_over_ = 0;
    bool drawn_ = false;
};

}  // namespace seamward::bench
