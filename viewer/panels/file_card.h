// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractButton>
#include <QPen>

namespace seamward::viewer {

/// A shipped file as a card of the first page, a button with a name and a line. What it says follows the language.
class FileCard : public QAbstractButton {
    Q_OBJECT

public:
    [[nodiscard]] const QString& path() const { return path_; }
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] int heightForWidth(int width) const override { return height_for(width); }
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }

protected:
    /// `called`: beginning of the object's name, before that of the file.
    FileCard(const QString& path, const QString& called, QWidget* parent);

    /// Says the card in the language spoken; a constructor calls it too.
    virtual void retranslate() = 0;
    [[nodiscard]] virtual int height_for(int width) const = 0;
    /// For retranslate(): the words for whoever does not see the card.
    void say(const QString& title, const QString& line, const QString& tip);

    static constexpr int pad = 12;
    static constexpr double corner = 10;
    [[nodiscard]] QRectF border() const { return QRectF(rect()).adjusted(1, 1, -1, -1); }
    /// The ground of the card, and its edge, which shows the focus.
    [[nodiscard]] QColor ground() const;
    [[nodiscard]] QPen edge() const;
    void paint_words(QPainter& painter, const QRect& title_at, const QString& title, const QRect& line_at,
                     const QString& line) const;

    void keyPressEvent(QKeyEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    QString path_;
};

}  // namespace seamward::viewer
