// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QWidget>
#include <string>

#include "document/job_document.h"

namespace seamward::viewer {

/// All gaps of the survey: found by words, sorted by width or by place, each with how its width is known.
class GapList : public QWidget {
    Q_OBJECT

public:
    explicit GapList(JobDocument& document, QWidget* parent = nullptr);

    /// Shows the job anew; what was chosen stays so, as far as it is still there.
    void refresh();
    /// Chooses a gap by its id, empty: none, and shows its row; what hides it is taken away.
    void choose(const std::string& id);
    [[nodiscard]] const std::string& chosen() const { return chosen_; }
    void retranslate();

signals:
    /// The user chose another gap.
    void gap_chosen(seamward::GapIndex gap);
    /// Enter was pressed on a row, or it was clicked twice.
    void entered();
    /// A new gap is to be added.
    void add_wanted();

protected:
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    bool event(QEvent* event) override;

private:
    void lay_out();
    void fill();
    void reveal();
    void add_row(GapIndex gap);
    [[nodiscard]] std::vector<GapIndex> wanted() const;
    [[nodiscard]] QListWidgetItem* row_of(const std::string& id) const;

    JobDocument& document_;
    QLabel* title_;
    QLabel* count_;
    QLineEdit* search_;
    QPushButton* add_;
    QComboBox* order_;
    QCheckBox *unmeasured_, *indoors_;
    std::vector<bool> only_indoors_;  ///< of each gap, on no way in whatever is open
    QListWidget* rows_;
    std::string chosen_;
};

}  // namespace seamward::viewer
