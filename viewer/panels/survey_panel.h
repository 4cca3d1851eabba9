// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLabel>
#include <QScrollArea>
#include <QWidget>
#include <optional>
#include <string>

#include "document/survey_document.h"
#include "panels/gap_form.h"
#include "panels/gap_list.h"

namespace seamward::viewer {

/// The survey for changing: all gaps as a list, and the chosen one as a form. Follows the document and the survey.
class SurveyPanel : public QWidget {
    Q_OBJECT

public:
    SurveyPanel(JobDocument& document, SurveyDocument& survey, QWidget* parent = nullptr);

    /// Chooses a gap, such as one clicked in the picture; gap_chosen() does not follow.
    void choose_gap(GapIndex gap);
    /// Begins a new gap at a place of the house, in its frame. `part`: what was clicked, in words; may be empty.
    void begin_gap_at(const Point& at, const QString& part);
    /// The click that wants_point() asked for.
    void take_point(const Point& at);
    /// Takes the chosen gap out of the survey.
    void remove_chosen();
    /// Enters what is still being typed: before saving and before closing.
    void commit();
    [[nodiscard]] GapList& list() const { return *list_; }
    [[nodiscard]] GapForm& form() const { return *form_; }

signals:
    /// The user chose a gap here.
    void gap_chosen(seamward::GapIndex gap);
    /// The next click in the picture is wanted here (take_point()), or no longer.
    void wants_point(bool wanted);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void read_again();
    void retranslate();

    JobDocument& document_;
    GapList* list_;
    GapForm* form_;
    QLabel* hint_;
    QScrollArea* scroll_;
    std::optional<std::string> to_choose_;  ///< a gap that the job will have once it was read again
};

}  // namespace seamward::viewer
