// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QListWidget>
#include <map>

#include "document/closings_document.h"
#include "document/closings_notes.h"

namespace seamward::viewer {

class ClosingDetail;

/// The plan as a list to tick, in walking order, with what else can be closed, what stays open and why. Click a row's box or
/// press the space bar to tick it; click a row or press Enter to see what it takes, again to fold that away.
class ClosingsList : public QListWidget {
    Q_OBJECT

public:
    /// `top`: what scrolls with the list, above it; the list takes it.
    ClosingsList(ClosingsDocument& closings, QWidget* top, QWidget* parent = nullptr);

    /// Goes to the row of a gap, and shows what it takes.
    void show_gap(GapIndex gap);
    /// The row of a gap that can be closed, or null.
    [[nodiscard]] QListWidgetItem* row_of(GapIndex gap) const;

signals:
    void gap_chosen(seamward::GapIndex gap);

protected:
    void mousePressEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void retranslate();
    void fill();
    void fill_notes_above();
    void fill_offers(bool planned);
    void fill_notes_below();
    QListWidgetItem* add(int kind, const QString& title, const QString& below = {});
    void add_heading(const QString& text);
    /// What comes after it is shown only while it is open, as far as the next heading or fold.
    QListWidgetItem* add_fold(const QString& name, const QString& text, bool open);
    void add_notes(const std::vector<ClosingNote>& notes);
    void add_offer(const OfferedClosing& offer);
    /// A row that stays where it is on the screen while others change.
    struct Held {
        QListWidgetItem* row = nullptr;
        int top = 0;
    };

    /// The row under the mouse, else the chosen one; none when that is out of sight.
    [[nodiscard]] Held hold(QListWidgetItem* under_mouse) const;
    void let_go(const Held& held);
    void refresh();
    void refresh_row(QListWidgetItem& row);
    void refresh_notes();
    void refresh_folds();
    void act_on(QListWidgetItem& row);
    void tick(QListWidgetItem& row);
    void follow_current();
    void open_detail();
    void close_detail();
    void fit_widgets();
    [[nodiscard]] QListWidgetItem* tick_at(QPoint place) const;
    [[nodiscard]] const OfferedClosing* offer_in(const QListWidgetItem& row) const;

    ClosingsDocument& closings_;
    QListWidgetItem* top_;
    QWidget* top_widget_;
    QListWidgetItem* detail_row_ = nullptr;
    ClosingDetail* detail_ = nullptr;
    QListWidgetItem* pressed_tick_ = nullptr;
    QListWidgetItem* handled_ = nullptr;  ///< ticked or unticked last by hand
    std::map<QString, bool> folds_;       ///< by name: whether it is open
    std::vector<QListWidgetItem*> departures_;
    QListWidgetItem* leaving_ = nullptr;
    QListWidgetItem* checks_ = nullptr;
    QListWidgetItem* air_ = nullptr;
    QListWidgetItem* materials_ = nullptr;
    bool detail_wanted_ = false;
};

}  // namespace seamward::viewer
