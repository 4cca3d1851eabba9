// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStackedWidget>
#include <QWidget>

#include "document/job_document.h"
#include "panels/key_panel.h"
#include "window/picture_canvas.h"

namespace seamward::viewer {

/// The picture and under it what its signs mean; or, when no gap has a position, a sentence that says so.
class PicturePane : public QWidget {
    Q_OBJECT

public:
    explicit PicturePane(JobDocument& document, QWidget* parent = nullptr);

    [[nodiscard]] PictureCanvas& canvas() { return *canvas_; }

private:
    QStackedWidget* pages_;
    PictureCanvas* canvas_;
    KeyPanel* key_;
};

}  // namespace seamward::viewer
