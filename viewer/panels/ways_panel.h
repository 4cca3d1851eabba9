// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QComboBox>
#include <QLabel>
#include <QListWidget>
#include <QTextBrowser>
#include <QWidget>

#include "document/job_document.h"
#include "panels/fit_sketch.h"

namespace seamward::viewer {

/// The ways in as a list: for which animal and room, which ways, and the chosen one gap by gap. Follows the document and steers
/// it.
class WaysPanel : public QWidget {
    Q_OBJECT

public:
    explicit WaysPanel(JobDocument& document, QWidget* parent = nullptr);

protected:
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    [[nodiscard]] QWidget* make_head();
    [[nodiscard]] QWidget* make_foot();
    void retranslate();
    void place_sketch();
    void fill_choices();
    void fill_ways();
    void show_remarks();
    /// The animal and the room asked for; empty: all.
    [[nodiscard]] QString animal_asked() const;
    [[nodiscard]] QString room_asked() const;
    [[nodiscard]] QString none_text() const;
    [[nodiscard]] QString none_found_text() const;
    [[nodiscard]] QString count_text() const;
    void show_chosen(int way);

    JobDocument& document_;
    QLabel* title_;
    QLabel* animals_name_;
    QLabel* rooms_name_;
    QLabel* count_;
    QLabel* remarks_;
    QComboBox* animals_;
    QComboBox* rooms_;
    QListWidget* ways_;
    QLabel* none_;
    FitSketch* sketch_;  ///< of the smallest gap of the way chosen
    QTextBrowser* steps_;
};

}  // namespace seamward::viewer
