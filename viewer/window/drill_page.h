// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QSplitter>
#include <QStackedWidget>
#include <QToolButton>
#include <QWidget>
#include <array>

#include "document/closings_document.h"
#include "document/drill_document.h"
#include "panels/drill_judged.h"
#include "panels/drill_places.h"
#include "panels/drill_task.h"
#include "window/picture_pane.h"

namespace seamward::viewer {

/// A drill: on the left its task, its places or how it went, and on the right the house to inspect.
class DrillPage : public QWidget {
    Q_OBJECT

public:
    enum class Part : std::uint8_t { task, places, judged };

    explicit DrillPage(QWidget* parent = nullptr);

    [[nodiscard]] DrillDocument& document() { return document_; }
    [[nodiscard]] PicturePane& picture() { return *picture_; }
    void show_part(Part part);
    [[nodiscard]] Part part() const { return static_cast<Part>(sides_->currentIndex()); }
    /// False when there are answers that were not handed in, and the trainee wants to stay.
    [[nodiscard]] bool may_leave();
    /// Pixels that the left has of the whole.
    void set_left(int pixels, int whole);

signals:
    /// Done with it.
    void left();
    void told(const QString& words);

protected:
    void changeEvent(QEvent* event) override;

private:
    [[nodiscard]] QWidget* make_left();
    void connect_document();
    void connect_panels();
    void retranslate();
    void take_pick(const Picked& what);
    void fly_to(int place);
    void mark_places();
    void hand_in();
    void ask_for_trainee();
    void keep();
    void save_answers();
    void leave();
    void tell_fault(const QString& what);

    DrillDocument document_;
    JobDocument no_job_;            ///< stays empty, so that
    ClosingsDocument no_closings_;  ///< of a drill are never planned
    std::array<QToolButton*, 3> part_buttons_{};
    QStackedWidget* sides_;
    DrillTask* task_;
    DrillPlaces* places_;
    DrillJudged* judged_;
    PicturePane* picture_;
    QSplitter* halves_;
};

}  // namespace seamward::viewer
