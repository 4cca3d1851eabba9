// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QMainWindow>
#include <QStackedWidget>

#include "document/job_document.h"
#include "window/picture_pane.h"

namespace seamward::viewer {

/// The window: ways in on the left, the house on the right; or, before a job is open, a button to open one.
class MainWindow : public QMainWindow {
    Q_OBJECT

public:
    MainWindow();

    [[nodiscard]] JobDocument& document() { return *document_; }

private:
    void make_menus();
    [[nodiscard]] QWidget* make_welcome();
    [[nodiscard]] QWidget* make_work_page();
    void ask_for_job();

    JobDocument* document_;
    QStackedWidget* pages_;
    PicturePane* picture_ = nullptr;
};

}  // namespace seamward::viewer
