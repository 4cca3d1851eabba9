// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>
#include <QWidget>
#include <vector>

#include "document/recent_jobs.h"
#include "panels/drill_card.h"
#include "panels/example_card.h"
#include "panels/example_pictures.h"

namespace seamward::viewer {

/// Where the shipped examples stand: ../share/seamward/scenarios from the program, or else the folder of the sources.
[[nodiscard]] QString shipped_examples();

/// The first page of the window: what the program is, how to begin, jobs that were open lately, examples, and drills.
class StartPage : public QWidget {
    Q_OBJECT

public:
    /// Pictures of the examples are kept in `pictures`.
    StartPage(RecentJobs& recent, const QString& examples_folder, QWidget* parent = nullptr,
              const QString& pictures = ExamplePictures::usual_folder());

    /// Work that was left behind when the program ended badly, a line each; none: the notice goes.
    void set_left_behind(const QStringList& descriptions);

signals:
    void job_wanted(const QString& path);
    void open_wanted();
    void new_house_wanted();
    void model_wanted();
    void recover_wanted(int which);
    void discard_wanted(int which);

protected:
    void paintEvent(QPaintEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    [[nodiscard]] QWidget* make_left_side();
    [[nodiscard]] QWidget* make_right_side();
    void find_examples(const QString& folder);
    void find_drills(const QString& folder);
    void fill_recent();
    void fill_left_behind();
    void lay_out_cards();
    void retranslate();

    RecentJobs& recent_;
    ExamplePictures* pictures_;
    QWidget* left_side_ = nullptr;
    QLabel *name_, *purpose_, *recent_title_, *no_recent_, *examples_title_, *no_examples_, *drills_title_;
    QPushButton *new_house_, *open_, *model_;
    QVBoxLayout *recent_rows_ = nullptr, *left_behind_rows_ = nullptr;
    QWidget* left_behind_box_ = nullptr;
    QScrollArea* examples_ = nullptr;
    QGridLayout *grid_ = nullptr, *drill_grid_ = nullptr;
    std::vector<ExampleCard*> cards_;
    std::vector<DrillCard*> drills_;
    QStringList left_behind_;
    int columns_ = 0;
};

}  // namespace seamward::viewer
