// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/drill_files.h"
#include "panels/file_card.h"

namespace seamward::viewer {

/// A shipped drill: its name, how hard it is, and the sign of a house under a glass.
class DrillCard : public FileCard {
    Q_OBJECT

public:
    DrillCard(const QString& path, DrillHead head, QWidget* parent = nullptr);

protected:
    void paintEvent(QPaintEvent* event) override;
    void retranslate() override;
    [[nodiscard]] int height_for(int width) const override { return layout(width).height; }

private:
    struct Layout {
        QRect sign, title, line;
        int height = 0;
    };
    [[nodiscard]] Layout layout(int width) const;

    DrillHead head_;
    QString title_, line_;
};

}  // namespace seamward::viewer
