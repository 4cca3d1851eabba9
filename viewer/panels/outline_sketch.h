// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPainter>
#include <QWidget>

#include "document/usual_rooms.h"

namespace seamward::viewer {

/// The outline of a house as its user types it: walls with their lengths, the rooms, the lines of the roof, and the street.
class OutlineSketch : public QWidget {
    Q_OBJECT

public:
    explicit OutlineSketch(QWidget* parent = nullptr);

    /// `whole`: the outline is sound, and its roof can be drawn.
    void show_house(const NewHouse& house, bool whole);
    /// Whose rooms are drawn; 1 or 2.
    void show_story(int story);

    [[nodiscard]] QSize sizeHint() const override { return {420, 380}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {220, 200}; }

protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    [[nodiscard]] static QString room_words(const UsualRoom& room);
    void retranslate();
    void paint_roof(QPainter& painter, const QTransform& to_screen) const;
    void paint_rooms(QPainter& painter, const QTransform& to_screen) const;
    void paint_garage(QPainter& painter, const QTransform& to_screen) const;
    void paint_lengths(QPainter& painter, const QTransform& to_screen) const;

    NewHouse house_;
    Loop outline_;
    std::optional<RoomPlan> plan_;
    int story_ = 1;
    bool whole_ = false;
};

}  // namespace seamward::viewer
