// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QVTKOpenGLNativeWidget.h>

#include <QTimer>

#include "document/job_document.h"
#include "layers/house_scene.h"

namespace seamward::viewer {

/// The 3D picture with its words. Drag turns it, drag with the right or middle button (or Shift) moves it, the wheel
/// comes closer; arrow keys, + and - do the same, Home or a double click shows the whole house again.
class PictureCanvas : public QVTKOpenGLNativeWidget {
    Q_OBJECT

public:
    explicit PictureCanvas(JobDocument& document, QWidget* parent = nullptr);

    /// Takes the document's job up. False when no gap of it has a position.
    bool show_job();
    void show_ways();
    void show_whole_house();
    [[nodiscard]] const HouseScene& scene() const { return scene_; }
    [[nodiscard]] const OrbitCamera& camera() const { return camera_; }

protected:
    bool event(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    class Words;

    void moved();
    void redraw();
    void tell_gap(const QPoint& at, const QPoint& on_screen);

    JobDocument& document_;
    HouseScene scene_;
    OrbitCamera camera_;
    bool whole_house_ = true;  ///< the eye was not moved by hand
    QPoint last_;
    QTimer at_rest_;  ///< runs out when the picture has stopped moving
    Words* words_;
};

}  // namespace seamward::viewer
