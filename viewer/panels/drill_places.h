// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QScrollArea>
#include <QWidget>

#include "document/drill_document.h"
#include "panels/drill_answer_form.h"

namespace seamward::viewer {

/// The places of a drill as a list, in the order of a walk round the house, and the form for the chosen one.
class DrillPlaces : public QWidget {
    Q_OBJECT

public:
    explicit DrillPlaces(DrillDocument& document, QWidget* parent = nullptr);

    [[nodiscard]] DrillAnswerForm& form() const { return *form_; }
    void focus_list() { list_->setFocus(); }

signals:
    void hand_in_wanted();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void retranslate();
    void fill();
    void tell_answers();
    void show_chosen(int place);
    [[nodiscard]] QString notes_of(std::size_t place) const;

    DrillDocument& document_;
    QLabel* count_;
    QListWidget* list_;
    QScrollArea* scroll_;
    DrillAnswerForm* form_;
    QPushButton *next_, *hand_in_;
};

}  // namespace seamward::viewer
