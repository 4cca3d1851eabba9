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
/// refused or bought, in place of what is said of the whole plan. It is as high whatever is ticked and said.
class ClosingsHead : public QWidget {
    Q_OBJECT

public:
    explicit ClosingsHead(ClosingsDocument& closings, QWidget* parent = nullptr);

    /// Until something else is ticked; what there is no room for is in its tool tip.
    void say(const QString& text);

protected:
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    bool event(QEvent* event) override;

private:
    struct Line {
        StandSign* sign;
        QLabel* name;
        QLabel* words;
    };

    [[nodiscard]] QString stand_words_of(const AnimalOutlook& animal, const QString& stand) const;
    [[nodiscard]] QLabel* make_label(const char* name);
    void retranslate();
    void refresh_sums();
    void refresh_animals();
    /// Side by side where there is room, else one under the other, and room for the longest words that ticks can bring.
    void arrange();
    void arrange_sums(int inside);
    void arrange_animals(int inside);
    void place_message();

    ClosingsDocument& closings_;
    QLabel* price_;
    QLabel* ticked_;
    QBoxLayout* first_;
    QWidget* about_;  ///< what is said of the whole plan; keeps its room while the message is there
    QLabel* whole_;
    QLabel* prices_;
    QGridLayout* animals_;
    std::vector<Line> lines_;
    QLabel* message_;
    QString said_;  ///< all of the message
};

}  // namespace seamward::viewer
