// SPDX-License-Identifier: GPL-3.0-or-later
// What the mouse and the keys do in the picture.
#include <QHelpEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QToolTip>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>

#include "document/way_text.h"
#include "window/picture_canvas.h"

namespace seamward::viewer {

namespace {

constexpr int still = 4;  ///< pixels that a hand trembles in a click

}  // namespace

void PictureCanvas::click(const QPoint& at) {
    if (!document_.has_job() || !scene_.has_places()) return;
    const PicturePoint point{static_cast<double>(at.x()), static_cast<double>(at.y())};
    auto hit = scene_.solid_at(point, camera_, width(), height());
    if (tool_ == Tool::measure) {
        if (!hit) return;
        const Point end = scene_.snapped(*hit, point, camera_, width(), height());
        if (!measure_from_ || measure_to_) {
            measure_from_ = end;
            measure_to_.reset();
        } else {
            measure_to_ = end;
        }
        return words_->update();
    }
    if (!document_.solids()) hit.reset();  // they are being built anew
    if (tool_ == Tool::place) {
        if (!hit) return;
        emit placed(in_job(hit->at), QString::fromStdString(document_.solids()->parts[hit->part].name));
        return;
    }
    Picked what;
    what.pixel = at;
    what.gap = scene_.gap_near(document_.job().survey, point, camera_, width(), height());
    if (hit) {
        if (!what.gap) what.gap = gap_of(*hit);
        what.part = hit->part;
        what.at = in_job(hit->at);
    }
    emit picked(what);
}

bool PictureCanvas::event(QEvent* event) {
    if (event->type() == QEvent::ToolTip) {
        const auto* help = static_cast<QHelpEvent*>(event);
        tell_gap(help->pos(), help->globalPos());
        return true;
    }
    if (event->type() == QEvent::PaletteChange) {
        scene_.recolor();
        redraw();
    }
    if (event->type() == QEvent::LanguageChange) {
        setAccessibleName(tr("Picture of the house"));
        if (document_.has_job() && !is_riding()) {
            scene_.show_ways(document_);
            redraw();
        }
    }
    return QVTKOpenGLNativeWidget::event(event);
}

void PictureCanvas::tell_gap(const QPoint& at, const QPoint& on_screen) {
    if (!document_.has_job() || is_riding()) return;
    const Survey& survey = document_.job().survey;
    const PicturePoint point{static_cast<double>(at.x()), static_cast<double>(at.y())};
    const auto gap = scene_.gap_near(survey, point, camera_, width(), height());
    if (gap) {
        QToolTip::showText(on_screen, gap_text(survey[*gap]), this);
    } else {
        QToolTip::hideText();
    }
}

void PictureCanvas::mousePressEvent(QMouseEvent* event) {
    last_ = pressed_ = event->pos();
    dragged_ = false;
}

void PictureCanvas::mouseMoveEvent(QMouseEvent* event) {
    if (event->buttons() == Qt::NoButton || is_riding()) return;
    if (!dragged_ && (event->pos() - pressed_).manhattanLength() <= still) return;
    dragged_ = true;
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

void PictureCanvas::mouseReleaseEvent(QMouseEvent* event) {
    last_ = event->pos();
    if (!dragged_ && event->button() == Qt::LeftButton && !is_riding()) click(event->pos());
}

void PictureCanvas::mouseDoubleClickEvent(QMouseEvent* /*event*/) {
    dragged_ = true;  // its second release is no click
    if (tool_ == Tool::look) show_whole_house();
}

void PictureCanvas::wheelEvent(QWheelEvent* event) {
    event->accept();
    if (is_riding()) return;
    camera_.approach(std::pow(1.15, event->angleDelta().y() / 120.0), scene_.reach());
    moved();
}

void PictureCanvas::keyPressEvent(QKeyEvent* event) {
    constexpr double turn = 0.08;
    if (is_riding()) {
        if (event->key() == Qt::Key_Space) return set_ride_going(!ride_timer_.isActive());
        if (event->key() == Qt::Key_Escape) return end_ride();
        if (event->key() == Qt::Key_Plus || event->key() == Qt::Key_Equal) return change_ride_speed(true);
        if (event->key() == Qt::Key_Minus) return change_ride_speed(false);
        if (event->key() == Qt::Key_Left) return ride_to(ride_at_ - 1);
        if (event->key() == Qt::Key_Right) return ride_to(ride_at_ + 1);
        return QWidget::keyPressEvent(event);
    }
    switch (event->key()) {
        case Qt::Key_Left: camera_.turn(-turn, 0); break;
        case Qt::Key_Right: camera_.turn(turn, 0); break;
        case Qt::Key_Up: camera_.turn(0, turn); break;
        case Qt::Key_Down: camera_.turn(0, -turn); break;
        case Qt::Key_Plus:
        case Qt::Key_Equal: camera_.approach(1.15, scene_.reach()); break;
        case Qt::Key_Minus: camera_.approach(1 / 1.15, scene_.reach()); break;
        case Qt::Key_Home: return show_whole_house();
        case Qt::Key_Escape:
            if (tool_ != Tool::look) return set_tool(Tool::look);
            [[fallthrough]];
        default: return QWidget::keyPressEvent(event);
    }
    moved();
}

}  // namespace seamward::viewer
