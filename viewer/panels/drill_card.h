// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractButton>

#include "document/drill_files.h"

namespace seamward::viewer {

/// A shipped drill: its name, how hard it is, and the sign of a house under a glass.
class DrillCard : public QAbstractButton {
    Q_OBJECT

public:
    DrillCard(const QString& path, DrillHead head, QWidget* parent = nullptr);

    [[nodiscard]] const QString& path() const { return path_; }
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] int heightForWidth(int width) const override;
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    struct Layout {
        QRect sign, title, line;
        int height = 0;
    };
    [[nodiscard]] Layout layout(int width) const;
    void retranslate();

    QString path_;
    DrillHead head_;
    QString title_, line_;
};

}  // namespace seamward::viewer
