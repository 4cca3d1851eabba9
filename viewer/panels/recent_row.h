// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractButton>
#include <QToolButton>

#include "document/recent_jobs.h"

namespace seamward::viewer {

/// One recent job: its name, its place and day, or that its file is gone. Pressing it opens it; one that is gone can only be
/// taken off the list, with its small button or the Delete key.
class RecentRow : public QAbstractButton {
    Q_OBJECT

public:
    explicit RecentRow(RecentJob job, QWidget* parent = nullptr);

    [[nodiscard]] const RecentJob& job() const { return job_; }
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return {120, sizeHint().height()}; }

signals:
    void open_wanted(const QString& path);
    void remove_wanted(const QString& path);

protected:
    bool event(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void retranslate();

    RecentJob job_;
    QString second_line_;
    QToolButton* remove_;
};

}  // namespace seamward::viewer
