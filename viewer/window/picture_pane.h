// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLabel>
#include <QStackedWidget>
#include <QWidget>

#include "panels/facts_card.h"
#include "panels/key_panel.h"
#include "panels/ride_bar.h"
#include "panels/view_tools.h"
#include "window/picture_canvas.h"

namespace seamward::viewer {

/// The picture, its tools under it and what its signs mean; words in its place when there is nothing to show.
class PicturePane : public QWidget {
    Q_OBJECT

public:
    PicturePane(JobDocument& document, ClosingsDocument& closings, QWidget* parent = nullptr);

    [[nodiscard]] PictureCanvas& canvas() const { return *canvas_; }
    [[nodiscard]] ViewTools& tools() const { return *tools_; }
    [[nodiscard]] FactsCard& facts() const { return *facts_; }
    void set_story(PictureCanvas::Story story);
    /// Shows what is known of a gap, and marks it.
    void show_gap(GapIndex gap);

signals:
    /// A gap was clicked.
    void gap_chosen(seamward::GapIndex gap);
    void film_wanted();

protected:
    void changeEvent(QEvent* event) override;

private:
    void retranslate();
    void take_up();
    void connect_tools();
    void connect_ride();
    void make_keys();
    void show_picked(const Picked& what);

    JobDocument& document_;
    QStackedWidget* pages_;
    QLabel* words_;
    PictureCanvas* canvas_;
    ViewTools* tools_;
    RideBar* ride_bar_;
    FactsCard* facts_;
    KeyPanel* key_;
    bool fresh_ = true;  ///< the job was opened just now, and its solids are not there yet
};

}  // namespace seamward::viewer
