// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "document/job_document.h"
#include "panels/fit_layout.h"

namespace seamward::viewer {

/// A gap's opening, cut across, and beside it at the same scale what the job's animals need of it: an ellipse as high as the
/// animal's slit and as wide as its hole.
class FitSketch : public QWidget {
    Q_OBJECT

public:
    explicit FitSketch(QWidget* parent = nullptr);

    void show_gap(const Job& job, GapIndex gap, std::optional<std::size_t> chosen_animal);
    /// A gap of the open job, for the animal that ways are shown for.
    void show_gap(const JobDocument& document, GapIndex gap);
    [[nodiscard]] const FitSubject& subject() const { return subject_; }

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void retranslate();
    [[nodiscard]] QFont small_font() const;
    [[nodiscard]] QStringList description() const;
    [[nodiscard]] FitLayout laid_out() const { return fit_layout(subject_, size(), small_font()); }

    FitSubject subject_;
};

}  // namespace seamward::viewer
