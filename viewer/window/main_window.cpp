// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/main_window.h"

#include <QFileDialog>
#include <QLabel>
#include <QMenuBar>
#include <QPushButton>
#include <QSplitter>
#include <QStatusBar>
#include <QVBoxLayout>

#include "panels/ways_panel.h"
#include "window/fault_box.h"

namespace seamward::viewer {

MainWindow::MainWindow() : document_(new JobDocument(this)), pages_(new QStackedWidget(this)) {
    setWindowTitle(tr("Seamward"));
    setMinimumSize(800, 500);
    resize(1280, 800);
    QWidget* welcome = make_welcome();
    QWidget* work = make_work_page();
    pages_->addWidget(welcome);
    pages_->addWidget(work);
    setCentralWidget(pages_);
    make_menus();
    auto* hint = new QLabel(tr("Drag to turn, right-drag to move, wheel to come closer, Home key: whole house"));
    hint->setObjectName("hint");
    hint->setContentsMargins(0, 0, 10, 0);
    hint->hide();
    statusBar()->addPermanentWidget(hint);
    statusBar()->setSizeGripEnabled(false);

    connect(document_, &JobDocument::opened, this, [this, work, hint] {
        setWindowTitle(tr("%1 - Seamward").arg(document_->title()));
        pages_->setCurrentWidget(work);
        hint->setVisible(picture_->canvas().scene().has_places());
    });
    connect(document_, &JobDocument::busy_changed, this, [this](const QString& doing) { statusBar()->showMessage(doing); });
    connect(document_, &JobDocument::open_failed, this, [this](const OpenFault& fault) {
        statusBar()->showMessage(fault.text.section('\n', 0, 0));
        show_fault(*this, fault);
    });
}

void MainWindow::make_menus() {
    QMenu* file = menuBar()->addMenu(tr("&File"));
    file->addAction(tr("&Open a job..."), this, &MainWindow::ask_for_job, QKeySequence::Open);
    file->addSeparator();
    file->addAction(tr("&Quit"), this, &QWidget::close, QKeySequence(tr("Ctrl+Q")));
    QMenu* view = menuBar()->addMenu(tr("&View"));
    view->addAction(
        tr("&Whole house"), this, [this] { picture_->canvas().show_whole_house(); }, QKeySequence(tr("Ctrl+Home")));
}

QWidget* MainWindow::make_welcome() {
    auto* page = new QWidget;
    auto* name = new QLabel(tr("Seamward"));
    QFont large = name->font();
    large.setPointSizeF(large.pointSizeF() * 2.4);
    large.setBold(true);
    name->setFont(large);
    auto* words = new QLabel(tr("Shows the gaps by which pests get into a house, and the ways through them."));
    words->setWordWrap(true);
    words->setAlignment(Qt::AlignCenter);
    auto* open = new QPushButton(tr("&Open a job..."));
    open->setObjectName("open_job");
    open->setDefault(true);
    connect(open, &QPushButton::clicked, this, &MainWindow::ask_for_job);
    auto* column = new QVBoxLayout(page);
    column->setSpacing(18);
    column->addStretch(2);
    column->addWidget(name, 0, Qt::AlignHCenter);
    column->addWidget(words);
    column->addWidget(open, 0, Qt::AlignHCenter);
    column->addStretch(3);
    return page;
}

QWidget* MainWindow::make_work_page() {
    auto* sides = new QSplitter(Qt::Horizontal);
    sides->setChildrenCollapsible(false);
    auto* ways = new WaysPanel(*document_);
    ways->setMinimumWidth(300);
    picture_ = new PicturePane(*document_);
    sides->addWidget(ways);
    sides->addWidget(picture_);
    sides->setStretchFactor(0, 0);
    sides->setStretchFactor(1, 1);
    sides->setSizes({400, 880});
    return sides;
}

void MainWindow::ask_for_job() {
    const QString path =
        QFileDialog::getOpenFileName(this, tr("Open a job"), {}, tr("Job files (*.yaml *.yml *.json);;All files (*)"));
    if (!path.isEmpty()) document_->open(path);
}

}  // namespace seamward::viewer
