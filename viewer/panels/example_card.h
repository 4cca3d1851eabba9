// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractButton>
#include <QImage>

namespace seamward::viewer {

/// A shipped job as a picture, its name and a line of what it shows. Until the picture is there, the sign of a house.
class ExampleCard : public QAbstractButton {
    Q_OBJECT

public:
    explicit ExampleCard(const QString& path, QWidget* parent = nullptr);

    [[nodiscard]] const QString& path() const { return path_; }
    void set_picture(const QImage& picture);
    [[nodiscard]] bool has_picture() const { return !picture_.isNull(); }
    /// What the example of that file name is called, and what it shows.
    struct Words {
        QString title, line;
    };
    [[nodiscard]] static Words words(const QString& path);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] int heightForWidth(int width) const override;
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    struct Layout {
        QRect picture, title, line;
        int height = 0;
    };
    [[nodiscard]] Layout layout(int width) const;
    void paint_house_sign(QPainter& painter, const QRectF& in) const;
    void retranslate();

    QString path_;
    Words words_;
    QImage picture_;
};

}  // namespace seamward::viewer
