// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFrame>
#include <QLabel>
#include <QPushButton>

#include "document/preferences.h"

namespace seamward::viewer {

/// Three short hints for the first time, one after the other, on a card over the upper left corner of the widget that it is put
/// on: how to turn the house, how to choose a way in, how to try a closing. "Got it" or Escape ends one and shows the next, the
/// arrow keys go back and forth; after the last they do not come again, unless the preferences say so.
class FirstHints : public QFrame {
    Q_OBJECT

public:
    /// Hidden until start() is called.
    FirstHints(Preferences& preferences, QWidget* over);

    /// Shows the first hint, if they were not seen. To be called when a job is open and there is something to try.
    void start();
    /// The hint that shows, from 0.
    [[nodiscard]] int hint() const { return hint_; }

    bool eventFilter(QObject* watched, QEvent* event) override;

protected:
    void changeEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    static constexpr int hints = 3;

    void retranslate();
    void show_hint(int hint);
    void next();
    void place();

    Preferences& preferences_;
    QLabel* title_;
    QLabel* words_;
    QLabel* count_;
    QPushButton* all_;
    QPushButton* got_it_;
    int hint_ = 0;
    bool started_ = false;
};

}  // namespace seamward::viewer
