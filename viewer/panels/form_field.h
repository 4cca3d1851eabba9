// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLabel>
#include <QPushButton>
#include <QWidget>

namespace seamward::viewer {

/// A sentence that says what is wrong, behind an orange sign; hidden while there is none.
class FaultLabel : public QLabel {
    Q_OBJECT

public:
    explicit FaultLabel(QWidget* parent = nullptr);
    void set_fault(const QString& text);

protected:
    void paintEvent(QPaintEvent* event) override;
};

/// A question with its field, a button beside it where it has one, and what is wrong with the answer under it.
class FormField : public QWidget {
    Q_OBJECT

public:
    FormField(QWidget* field, QWidget* parent, bool with_button = false);

    /// `text` may have a mnemonic, which leads to the field.
    void set_question(const QString& text);
    void set_fault(const QString& text);
    [[nodiscard]] bool has_fault() const { return !fault_->isHidden(); }
    [[nodiscard]] QWidget* field() const { return field_; }
    /// Null for a field without one.
    [[nodiscard]] QPushButton* button() const { return button_; }

private:
    QLabel* question_;
    QWidget* field_;
    QPushButton* button_ = nullptr;
    FaultLabel* fault_;
};

/// A heading over questions.
[[nodiscard]] QLabel* form_heading(QWidget* parent);

}  // namespace seamward::viewer
