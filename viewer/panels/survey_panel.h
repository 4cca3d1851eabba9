// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QWidget>
#include <optional>
#include <string>

#include "document/survey_document.h"
#include "panels/feature_form.h"
#include "panels/gap_form.h"
#include "panels/gap_list.h"

namespace seamward::viewer {

/// The survey for changing: all gaps as a list, and the chosen one as a form; in their place, as long as something is added to
/// the described house, the form for that. Follows the document and the survey.
class SurveyPanel : public QWidget {
    Q_OBJECT

public:
    SurveyPanel(JobDocument& document, SurveyDocument& survey, QWidget* parent = nullptr);

    /// Chooses a gap, such as one clicked in the picture; gap_chosen() does not follow.
    void choose_gap(GapIndex gap);
    /// Begins a new gap at a place of the house, in its frame. `part`: what was clicked, in words; may be empty.
    void begin_gap_at(const Point& at, const QString& part);
    /// Begins something new of the described house, in its frame. `part`: id or name of what was clicked; may be empty.
    void begin_feature_at(const Point& at, const std::string& part);
    /// The click that wants_point() asked for, and the name of the solid there.
    void take_point(const Point& at, const QString& part = {});
    /// That click will not come.
    void stop_waiting();
    /// Takes the chosen gap out of the survey.
    void remove_chosen();
    /// Enters what is still being typed: before saving and before closing.
    void commit();
    [[nodiscard]] GapList& list() const { return *list_; }
    [[nodiscard]] GapForm& form() const { return *form_; }
    [[nodiscard]] FeatureForm& feature_form() const { return *feature_form_; }

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
    void put_feature_button();
    void connect_feature_form();
    void show_feature_form(bool shown);
    void allow_features();

    JobDocument& document_;
    GapList* list_;
    GapForm* form_;
    FeatureForm* feature_form_;
    QPushButton* add_feature_;
    QLabel* hint_;
    QScrollArea* scroll_;
    QWidget* halves_ = nullptr;             ///< list and form of gaps
    std::optional<std::string> to_choose_;  ///< a gap that the job will have once it was read again
    bool tell_chosen_ = false;              ///< gap_chosen() follows: the picture is to show where it is
};

}  // namespace seamward::viewer
