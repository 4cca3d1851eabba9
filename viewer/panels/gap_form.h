// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <string>

#include "document/survey_document.h"
#include "panels/gap_fields.h"

namespace seamward::viewer {

/// The chosen gap, to be changed, or a new one. What is entered goes into the survey at once; what is wrong stays in its field,
/// with the reason under it.
class GapForm : public QWidget {
    Q_OBJECT

public:
    GapForm(JobDocument& document, SurveyDocument& survey, QWidget* parent = nullptr);

    /// Shows a gap by its id; empty, or one that is gone: none.
    void show_gap(const std::string& id);
    /// The job was read again.
    void refresh();
    /// Another job is open: what is typed was of the one before.
    void forget();
    /// `part`: what was clicked, may be empty; helps with a name.
    void begin_new(const std::optional<Point>& at, const QString& part);
    void take_point(const Point& at);
    /// Enters what is typed and not entered yet, as leaving its field would.
    void commit();
    void remove_gap();
    /// What was entered last cannot be: why.
    void tell_failed(const QString& why);
    [[nodiscard]] bool is_new() const { return is_new_; }
    [[nodiscard]] GapFields& fields() const { return *fields_; }

signals:
    /// The next click in the picture is wanted here, or no longer.
    void wants_point(bool wanted);
    void added(const std::string& id);
    /// Whether a gap, known or new, is there to be seen.
    void shows(bool anything);
    /// What of the house makes the gap is to be changed: its id.
    void feature_wanted(const std::string& id);
    /// The new gap is not wanted after all.
    void cancelled();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void connect_fields();
    bool change(ChangeGap edit, SizeField* from = nullptr);
    void change_evidence(std::optional<Evidence::How> how, std::optional<QString> plus_minus, SizeField* from);
    void change_shape(SizeField* from);
    void change_sides(std::size_t which);
    void enter_name();
    void enter_note();
    void mark_closed();
    void add_gap();
    [[nodiscard]] std::string made_space();
    [[nodiscard]] std::array<SpaceIndex, 2> likely_sides(const std::optional<Point>& at) const;
    [[nodiscard]] std::optional<GapIndex> gap() const;

    JobDocument& document_;
    SurveyDocument& survey_;
    GapFields* fields_;
    std::string id_;
    bool is_new_ = false;
    std::optional<Point> new_at_;
    std::array<std::string, 2> new_sides_;  ///< spaces that the job will have once it was read again
    SizeField* changing_ = nullptr;         ///< the field whose change was the last
};

}  // namespace seamward::viewer
