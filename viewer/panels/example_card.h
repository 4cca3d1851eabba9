// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QImage>

#include "panels/file_card.h"

namespace seamward::viewer {

/// A shipped job as a picture, its name and a line of what it shows. Until the picture is there, the sign of a house.
class ExampleCard : public FileCard {
    Q_OBJECT

public:
    explicit ExampleCard(const QString& path, QWidget* parent = nullptr);

    void set_picture(const QImage& picture);
    [[nodiscard]] bool has_picture() const { return !picture_.isNull(); }
    /// What the example of that file name is called, and what it shows.
    struct Words {
        QString title, line;
    };
    [[nodiscard]] static Words words(const QString& path);

protected:
    void paintEvent(QPaintEvent* event) override;
    void retranslate() override;
    [[nodiscard]] int height_for(int width) const override { return layout(width).height; }

private:
    struct Layout {
        QRect picture, title, line;
        int height = 0;
    };
    [[nodiscard]] Layout layout(int width) const;
    void paint_house_sign(QPainter& painter, const QRectF& in) const;

    Words words_;
    QImage picture_;
};

}  // namespace seamward::viewer
