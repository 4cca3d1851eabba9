// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>
#include <QWidget>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "document/feature_places.h"
#include "document/survey_document.h"
#include "panels/feature_form_parts.h"
#include "panels/form_field.h"
#include "panels/size_field.h"

namespace seamward::viewer {

/// Adds a hose bibb, a light or another thing of the table to the described house: where, what, how wide its gaps are. Or changes
/// one that is there, moves it or takes it away.
class FeatureForm : public QWidget {
    Q_OBJECT

public:
    FeatureForm(JobDocument& document, SurveyDocument& survey, QWidget* parent = nullptr);

    /// Whether the open job has a described house.
    [[nodiscard]] static bool can_add(const JobDocument& document);
    /// Begins with nothing, and waits for a click.
    void begin();
    /// The same at a place of the house; `part`: id or name of the solid there, may be empty.
    void begin_at(const Point& at, const std::string& part);
    /// Begins with something that is there, by its id in the file of the house. False when that has no such thing.
    bool begin_change(const std::string& id);
    /// The click that wants_point() asked for.
    void take_point(const Point& at, const std::string& part);
    /// The click will not come.
    void stop_waiting();
    void forget();

signals:
    /// The next click in the picture is wanted here, or no longer.
    void wants_point(bool wanted);
    /// It is in the survey, or changed there; the id of its first gap.
    void added(const QString& gap);
    /// It is no longer in the survey.
    void removed();
    /// It is not wanted after all.
    void cancelled();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void set_up();
    void lay_out();
    void connect_fields();
    void show_place();
    void fill_types();
    void show_type();
    void show_widths();
    void clear_widths();
    void take_values();
    void tell_place();
    void tell_sides();
    void add();
    void apply_change();
    void remove();
    void ask(const std::vector<Edit>& edits, AskedFeature asked);
    void take_read();
    void take_failed(const QString& why);
    void show_asking(bool asking);
    void show_present();
    void show_present_widths();
    void add_width(WidthRow width, const QString& called, double size);
    void put_in_order();
    [[nodiscard]] bool lay_out_places();
    [[nodiscard]] std::optional<ChangeFeature> feature_change();
    [[nodiscard]] QString house_name() const;
    void retranslate();
    [[nodiscard]] const Feature* type() const;
    [[nodiscard]] bool check();
    [[nodiscard]] std::string house_text(std::string& shown_as) const;

    JobDocument& document_;
    SurveyDocument& survey_;
    std::unique_ptr<FeaturePlaces> places_;  ///< of the house as it was read last; null: to be laid out
    std::optional<FeaturePlace> place_;
    std::optional<AskedFeature> asked_;
    std::optional<PresentFeature> present_;
    QString chosen_;  ///< id of the type

    QLabel *heading_, *where_, *what_label_, *gaps_label_, *gaps_hint_, *name_label_, *along_label_, *up_label_;
    QPushButton *show_, *add_, *cancel_, *remove_;
    QLineEdit *search_, *name_;
    QListWidget* types_;
    SizeField *along_, *up_;  ///< on something level: along x and along y
    QWidget *body_, *rest_, *gap_box_;
    QVBoxLayout* gap_rows_;
    FaultLabel* problem_;
    QScrollArea* scroll_ = nullptr;
    std::vector<WidthRow> widths_;
};

}  // namespace seamward::viewer
