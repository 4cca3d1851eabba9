// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QWidget>
#include <optional>
#include <vector>

#include "document/gap_facts.h"
#include "panels/photo_field.h"
#include "panels/size_field.h"

namespace seamward::viewer {

/// The fields of one gap, and what they show. What entering one does is the form's.
class GapFields : public QWidget {
    Q_OBJECT

public:
    enum Shapes { slot, hole, ring, mesh };

    explicit GapFields(QWidget* parent = nullptr);

    /// `afresh`: another gap than before; otherwise what is being typed stays.
    void show_gap(const Job& job, const GapFacts& facts, const QString& folder, bool afresh);
    /// Empty fields for a new gap, between these spaces.
    void show_new(const Job& job, std::array<SpaceIndex, 2> between);
    void show_place(const std::optional<Point>& at);
    /// Says what is wrong with something that no field shows; empty: nothing is.
    void show_problem(const QString& why);
    /// Shows the sizes that the chosen shape has.
    void follow_shape();

    [[nodiscard]] Shapes shape() const { return static_cast<Shapes>(shape_choice->currentIndex()); }
    [[nodiscard]] std::string shape_word() const;
    /// Whether a shape has a second size, and needs it.
    [[nodiscard]] bool has_second() const { return shape() != hole; }
    [[nodiscard]] bool needs_second() const { return shape() == slot || shape() == ring; }
    [[nodiscard]] Evidence::How how() const;
    /// The id of the space chosen for one side, 0 or 1; empty: one that the survey does not have yet.
    [[nodiscard]] std::string side(std::size_t which) const;
    void choose_side(std::size_t which, const std::string& id);
    /// The job has other spaces now; what is chosen stays.
    void fill_spaces(const Job& job);

    QLabel* heading;
    QLabel* origin;
    QLineEdit* name;
    SizeField* width;
    SizeField* plus_minus;
    SizeField* second;
    QComboBox* how_known;
    QComboBox* from;
    QComboBox* to;
    QPushButton* move;
    PhotoField* photo;
    QPlainTextEdit* note;
    QPushButton* close;
    QPushButton* remove;
    QPushButton* feature;  ///< what of the house makes the gap
    QPushButton* add;
    QPushButton* cancel;
    QComboBox* shape_choice;

    /// Lays the fields out for that many pixels: beside their names, or under them.
    void fit(int wide);
    void retranslate();

protected:
    void changeEvent(QEvent* event) override;

private:
    struct Row {
        QLabel* label;
        QWidget* field;
    };

    void set_up();
    void make_rows();
    QLabel* add_row(QWidget* field);
    void lay_out();
    [[nodiscard]] static QString origin_words(const Job& job, const GapFacts& facts);
    void show_states(bool is_new, const GapFacts& facts);
    void retranslate_choices();

    QLabel *name_label_, *width_label_, *plus_minus_label_, *how_label_, *shape_label_, *second_label_, *from_label_, *to_label_,
        *place_label_, *photo_label_, *note_label_;
    QLabel* place_;
    QLabel* problem_;
    std::vector<QWidget*> of_job_;  ///< rows that a gap of the described house does not have
    std::vector<Row> rows_;
    QGridLayout* grid_;
    bool stacked_ = false;
    std::optional<Point> at_;
    bool is_new_ = false, of_house_ = false, closed_ = false;
};

}  // namespace seamward::viewer
