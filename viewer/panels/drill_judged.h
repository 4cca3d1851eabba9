// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QWidget>

#include "document/drill_document.h"

namespace seamward::viewer {

/// How a drill went: passed or not, what does harm and why, then place by place. Choosing a row shows the place in the picture,
/// with the way in that was missed there.
class DrillJudged : public QWidget {
    Q_OBJECT

public:
    explicit DrillJudged(DrillDocument& document, QWidget* parent = nullptr);

    void focus_list() { list_->setFocus(); }

signals:
    void again_wanted();
    void save_wanted();
    void keep_wanted();
    void leave_wanted();

protected:
    void changeEvent(QEvent* event) override;

private:
    void retranslate();
    void fill();
    void tell_kept();
    void add_heading(const QString& text);
    void add(int place, const QString& title, const QString& verdict, const QStringList& notes, PlaceSign sign);
    void show_chosen(int place);

    DrillDocument& document_;
    QLabel *headline_, *kept_;
    QListWidget* list_;
    QPushButton *again_, *save_, *keep_, *leave_;
};

}  // namespace seamward::viewer
