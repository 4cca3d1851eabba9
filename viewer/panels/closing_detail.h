// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QComboBox>
#include <QLabel>
#include <QWidget>

#include "document/closings_document.h"

namespace seamward::viewer {

/// One closing under its row: with what it is closed, to be changed by hand, and what that takes and what can hurt somebody.
class ClosingDetail : public QWidget {
    Q_OBJECT

public:
    explicit ClosingDetail(ClosingsDocument& closings, QWidget* parent = nullptr);

    /// `gap` must be one that can be closed.
    void show(GapIndex gap);
    [[nodiscard]] GapIndex gap() const { return gap_; }
    /// Tells that a treatment must not be used, and why.
    void refuse(const Refusal& refusal);
    [[nodiscard]] int heightForWidth(int width) const override;

signals:
    void size_changed();

protected:
    void changeEvent(QEvent* event) override;

private:
    void retranslate();
    void refresh();

    ClosingsDocument& closings_;
    GapIndex gap_;
    QLabel* lead_;
    QComboBox* treatments_;
    QLabel* refused_;
    QLabel* words_;
};

}  // namespace seamward::viewer
