// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QComboBox>

namespace seamward::viewer {

/// A box to choose from that ends in dots where it has no room for all of the chosen text, and tells the whole when pointed at.
class ChoiceBox : public QComboBox {
    Q_OBJECT

public:
    using QComboBox::QComboBox;

protected:
    void paintEvent(QPaintEvent* event) override;
    bool event(QEvent* event) override;

private:
    /// The chosen text as far as there is room for it.
    [[nodiscard]] QString shown_text() const;
};

}  // namespace seamward::viewer
