// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QBoxLayout>
#include <QGridLayout>
#include <QLabel>
#include <QWidget>
#include <vector>

#include "document/closings_document.h"

namespace seamward::viewer {

/// A sign beside an animal's name: a full round with a hook, shut out; an open ring with an arrow into it, a way in is left; with
/// a question mark, perhaps.
class StandSign : public QWidget {
    Q_OBJECT

public:
    enum Sign { unknown, shut_out, perhaps, gets_in };

    explicit StandSign(QWidget* parent = nullptr);
    void show(Sign sign);
    [[nodiscard]] Sign shown() const { return sign_; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    Sign sign_ = unknown;
};

/// What stays in sight above the list: price and time of what is ticked, and how each animal stands to it; and what was just
/// refused or bought.
class ClosingsHead : public QWidget {
    Q_OBJECT

public:
    explicit ClosingsHead(ClosingsDocument& closings, QWidget* parent = nullptr);

    /// Until something else is ticked.
    void say(const QString& text);

protected:
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    struct Line {
        StandSign* sign;
        QLabel* name;
        QLabel* words;
    };

    [[nodiscard]] QLabel* make_label(const char* name);
    void retranslate();
    void refresh_sums();
    void refresh_animals();
    /// Side by side where there is room, else one under the other.
    void arrange();

    ClosingsDocument& closings_;
    QLabel* price_;
    QLabel* ticked_;
    QBoxLayout* first_;
    QLabel* whole_;
    QLabel* prices_;
    QGridLayout* animals_;
    std::vector<Line> lines_;
    QLabel* message_;
};

}  // namespace seamward::viewer
