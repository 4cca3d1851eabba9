// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/picture_pane.h"

#include <QLabel>
#include <QVBoxLayout>

namespace seamward::viewer {

PicturePane::PicturePane(JobDocument& document, QWidget* parent)
    : QWidget(parent), pages_(new QStackedWidget(this)), canvas_(new PictureCanvas(document)), key_(new KeyPanel(this)) {
    auto* words =
        new QLabel(tr("No gap of this job has a position, so there is nothing to draw.\n\n"
                      "The ways in are in the list. To see them here, give gaps a position in the job file:\n"
                      "at: [4.5 m, 9 m, 0.05 m]"));
    words->setObjectName("no_places");
    words->setAlignment(Qt::AlignCenter);
    words->setWordWrap(true);
    words->setMargin(40);
    pages_->addWidget(canvas_);
    pages_->addWidget(words);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(pages_, 1);
    column->addWidget(key_);
    connect(&document, &JobDocument::opened, this, [this, words] {
        const bool any = canvas_->show_job();
        pages_->setCurrentWidget(any ? static_cast<QWidget*>(canvas_) : words);
        key_->setVisible(any);
        key_->set_grid_step(canvas_->scene().grid_step());
    });
    connect(&document, &JobDocument::way_chosen, canvas_, &PictureCanvas::show_ways);
}

}  // namespace seamward::viewer
