// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFrame>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QToolButton>
#include <optional>

#include "document/job_document.h"
#include "panels/fit_sketch.h"

namespace seamward::viewer {

/// What is known of a gap or a part that was clicked in the picture: a card over its lower left corner, half as
/// high as the picture at most; what is longer scrolls.
class FactsCard : public QFrame {
    Q_OBJECT

public:
    FactsCard(JobDocument& document, QWidget* over);

    void show_gap(GapIndex gap);
    /// A solid that bounds no gap; `at`: where it was clicked, in the job's frame.
    void show_part(std::uint32_t part, const Point& at);
    [[nodiscard]] std::optional<GapIndex> gap() const { return gap_; }
    [[nodiscard]] QString text() const { return words_->text(); }

signals:
    /// The gap is to be looked at in the survey.
    void survey_wanted(seamward::GapIndex gap);
    /// A new gap is to be entered there.
    void gap_wanted(const seamward::Point& at, const QString& part);
    /// Something new of the described house is to be entered there; `part`: id of the solid.
    void feature_wanted(const seamward::Point& at, const QString& part);
    void closed();

protected:
    bool event(QEvent* event) override;
    void changeEvent(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void retranslate();
    void fill();
    void place();
    [[nodiscard]] QString gap_html() const;
    [[nodiscard]] QString part_html() const;
    void show_photo(const std::string& file);

    JobDocument& document_;
    QLabel *title_, *words_, *photo_;
    QScrollArea* body_;
    FitSketch* sketch_;
    QPushButton *act_, *add_feature_;
    QToolButton* close_;
    std::optional<GapIndex> gap_;
    std::optional<std::uint32_t> part_;
    Point at_;
};

}  // namespace seamward::viewer
