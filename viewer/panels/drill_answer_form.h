// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QRadioButton>
#include <QWidget>

#include "document/drill_document.h"
#include "panels/form_field.h"
#include "panels/size_field.h"

namespace seamward::viewer {

/// What the trainee says of the chosen place: open or tight; where it is open, how wide, which spaces it joins, what to close it
/// with. What is said counts at once.
class DrillAnswerForm : public QWidget {
    Q_OBJECT

public:
    explicit DrillAnswerForm(DrillDocument& document, QWidget* parent = nullptr);

    /// Enters what is being typed. False when something cannot be understood: the focus is on it then.
    bool commit();
    /// Puts the keyboard on the first question.
    void begin();

signals:
    /// Something of the form got the focus and should be seen.
    void to_be_seen(QWidget* field);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void make_rows();
    void connect_fields();
    void show_place();
    void show_answer();
    void show_look();
    void take();
    void take_entry();
    void follow();
    void retranslate();
    void fill_choices();
    [[nodiscard]] std::optional<SpaceIndex> side(const QComboBox& box) const;
    [[nodiscard]] std::string treatment() const;
    /// Whether the treatment is a mesh whose kind does not say how fine it is.
    [[nodiscard]] bool asks_opening() const;
    [[nodiscard]] bool closes() const;

    DrillDocument& document_;
    QLabel *title_, *height_, *hint_, *looked_;
    QPushButton *look_, *remove_;
    QRadioButton *open_, *tight_;
    QWidget *questions_, *more_;
    QLabel *width_name_, *from_name_, *to_name_, *treatment_name_, *opening_name_;
    SizeField *width_, *opening_;
    QComboBox *from_, *to_, *treatment_;
    QCheckBox *wait_, *came_in_;
    FaultLabel *sides_fault_, *opening_fault_;
    int place_ = DrillDocument::no_place;
    bool filling_ = false;
};

}  // namespace seamward::viewer
