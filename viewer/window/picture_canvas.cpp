// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/picture_canvas.h"

#include <vtkGenericOpenGLRenderWindow.h>
#include <vtkRenderWindowInteractor.h>

#include <QHelpEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QToolTip>
#include <QWheelEvent>
#include <cmath>

#include "document/way_text.h"
#include "layers/way_overlay.h"

namespace seamward::viewer {

/// The words over the picture.
class PictureCanvas::Words : public QWidget {
public:
    explicit Words(PictureCanvas& canvas) : QWidget(&canvas), canvas_(canvas) { setAttribute(Qt::WA_TransparentForMouseEvents); }

protected:
    void paintEvent(QPaintEvent* /*event*/) override {
        QPainter painter(this);
        const HouseScene& scene = canvas_.scene_;
        paint_way_overlay(painter, scene.chosen_line(), canvas_.camera_, rect());
        paint_callouts(painter, scene.callouts(), scene.keep_clear(), scene.other_gaps(), canvas_.camera_, rect());
    }

private:
    PictureCanvas& canvas_;
};

PictureCanvas::PictureCanvas(JobDocument& document, QWidget* parent)
    : QVTKOpenGLNativeWidget(parent), document_(document), words_(new Words(*this)) {
    vtkNew<vtkGenericOpenGLRenderWindow> window;
    window->SetMultiSamples(0);  // the scene has samples of its own, on any machine
    window->AddRenderer(scene_.renderer());
    setRenderWindow(window);
    interactor()->SetInteractorStyle(nullptr);  // the eye is ours: always upright, never under the ground
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Picture of the house"));
    setMinimumSize(320, 240);
    at_rest_.setSingleShot(true);
    at_rest_.setInterval(180);
    connect(&at_rest_, &QTimer::timeout, this, [this] {
        scene_.set_fine(true);
        redraw();
    });
}

bool PictureCanvas::show_job() {
    const bool any = scene_.show_job(document_);
    camera_ = {};
    show_whole_house();
    return any;
}

void PictureCanvas::show_ways() {
    scene_.show_ways(document_);
    redraw();
}

void PictureCanvas::show_whole_house() {
    whole_house_ = true;
    camera_ = scene_.whole_house(camera_, static_cast<double>(width()) / std::max(1, height()));
    redraw();
}

void PictureCanvas::moved() {
    whole_house_ = false;
    scene_.set_fine(false);
    at_rest_.start();
    redraw();
}

void PictureCanvas::redraw() {
    scene_.look(camera_);
    if (isVisible()) renderWindow()->Render();
    words_->update();
}

bool PictureCanvas::event(QEvent* event) {
    if (event->type() == QEvent::ToolTip) {
        const auto* help = static_cast<QHelpEvent*>(event);
        tell_gap(help->pos(), help->globalPos());
        return true;
    }
    return QVTKOpenGLNativeWidget::event(event);
}

void PictureCanvas::tell_gap(const QPoint& at, const QPoint& on_screen) {
    if (!document_.has_job()) return;
    const Survey& survey = document_.job().survey;
    const PicturePoint point{static_cast<double>(at.x()), static_cast<double>(at.y())};
    const auto gap = scene_.gap_near(survey, point, camera_, width(), height());
    if (gap) {
        QToolTip::showText(on_screen, gap_text(survey[*gap]), this);
    } else {
        QToolTip::hideText();
    }
}

void PictureCanvas::resizeEvent(QResizeEvent* event) {
    QVTKOpenGLNativeWidget::resizeEvent(event);
    words_->setGeometry(rect());
    if (whole_house_) camera_ = scene_.whole_house(camera_, static_cast<double>(width()) / std::max(1, height()));
    redraw();
}

void PictureCanvas::mousePressEvent(QMouseEvent* event) { last_ = event->pos(); }

void PictureCanvas::mouseMoveEvent(QMouseEvent* event) {
    if (event->buttons() == Qt::NoButton) return;
    const QPoint by = event->pos() - last_;
    last_ = event->pos();
    const double tall = std::max(1, height());
    const bool turn = event->buttons() == Qt::LeftButton && (event->modifiers() & Qt::ShiftModifier) == 0;
    if (turn) {
        camera_.turn(-by.x() / tall * 3.0, by.y() / tall * 3.0);
    } else {
        camera_.shift(by.x() / tall, -by.y() / tall);
    }
    moved();
}

void PictureCanvas::mouseReleaseEvent(QMouseEvent* event) { last_ = event->pos(); }

void PictureCanvas::mouseDoubleClickEvent(QMouseEvent* /*event*/) { show_whole_house(); }

void PictureCanvas::wheelEvent(QWheelEvent* event) {
    camera_.approach(std::pow(1.15, event->angleDelta().y() / 120.0), scene_.reach());
    moved();
    event->accept();
}

void PictureCanvas::keyPressEvent(QKeyEvent* event) {
    constexpr double turn = 0.08;
    switch (event->key()) {
        case Qt::Key_Left: camera_.turn(-turn, 0); break;
        case Qt::Key_Right: camera_.turn(turn, 0); break;
        case Qt::Key_Up: camera_.turn(0, turn); break;
        case Qt::Key_Down: camera_.turn(0, -turn); break;
        case Qt::Key_Plus:
        case Qt::Key_Equal: camera_.approach(1.15, scene_.reach()); break;
        case Qt::Key_Minus: camera_.approach(1 / 1.15, scene_.reach()); break;
        case Qt::Key_Home: return show_whole_house();
        default: return QWidget::keyPressEvent(event);
    }
    moved();
}

}  // namespace seamward::viewer
