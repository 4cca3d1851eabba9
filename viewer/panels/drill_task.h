// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLabel>
#include <QPushButton>
#include <QTextBrowser>
#include <QWidget>

#include "document/drill_document.h"

namespace seamward::viewer {

/// What a drill is about: its story, the animals, what is asked and how it is judged.
class DrillTask : public QWidget {
    Q_OBJECT

public:
    explicit DrillTask(DrillDocument& document, QWidget* parent = nullptr);

signals:
    void begin_wanted();
    void trainee_wanted();
    void leave_wanted();

protected:
    void changeEvent(QEvent* event) override;

private:
    void retranslate();
    void fill();
    [[nodiscard]] QString html() const;

    DrillDocument& document_;
    QTextBrowser* words_;
    QLabel* trainee_words_;
    QPushButton *begin_, *trainee_, *leave_;
};

/// "Ana Ruiz; progress goes into class.jsonl": who does the drill, as far as that is known; empty: it is not.
[[nodiscard]] QString trainee_words(const DrillDocument& document);

}  // namespace seamward::viewer
