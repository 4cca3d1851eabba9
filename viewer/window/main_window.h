// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAction>
#include <QMainWindow>
#include <QMenu>
#include <QSplitter>
#include <QStackedWidget>
#include <QTimer>
#include <QToolButton>
#include <array>
#include <functional>
#include <utility>
#include <vector>

#include "document/closings_document.h"
#include "document/job_document.h"
#include "document/preferences.h"
#include "document/recent_jobs.h"
#include "document/report_document.h"
#include "document/survey_document.h"
#include "panels/closings_panel.h"
#include "panels/first_hints.h"
#include "panels/new_house_form.h"
#include "panels/start_page.h"
#include "panels/survey_panel.h"
#include "window/drill_page.h"
#include "window/picture_pane.h"

namespace seamward::viewer {

/// The window: how to begin; or, with a job open, on the left its ways in, its closings or its survey, and the house on the
/// right.
class MainWindow : public QMainWindow {
    Q_OBJECT

public:
    enum class Page : std::uint8_t { ways, closings, survey };

    /// Both must outlive the window.
    MainWindow(Preferences& preferences, RecentJobs& recent);

    [[nodiscard]] JobDocument& document() { return *document_; }
    [[nodiscard]] ClosingsDocument& closings() { return *closings_; }
    [[nodiscard]] SurveyDocument& survey() { return *survey_; }
    [[nodiscard]] ReportDocument& report() { return *report_; }
    [[nodiscard]] PicturePane& picture() { return *picture_; }
    void show_page(Page page);
    /// Made when it is first asked for.
    [[nodiscard]] DrillPage& drill();
    /// Opens a job or a drill, or begins with a builder's model, as the ending of the name says; asks first when there is unsaved
    /// work.
    void open(const QString& path);
    /// Saves what the picture shows; false, with a message, when that cannot be.
    bool save_picture(const QString& path);
    /// Saves the solids of the house as GLB.
    bool save_solids(const QString& path);
    /// Begins to write a report as it was last asked for; false. A message tells when it is written, or why it cannot be.
    bool save_report(const QString& path);
    /// Saves the ride along the chosen way: a film (.ogv), or pictures in a folder. Shows how far it is; can be called off.
    bool save_film(const QString& path);

protected:
    void closeEvent(QCloseEvent* event) override;
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    using Words = std::function<QString()>;

    [[nodiscard]] QWidget* make_work_page();
    [[nodiscard]] QWidget* make_page_buttons();
    void make_menus();
    void make_file_menu();
    void make_edit_menu();
    void make_house_menu();
    void make_settings_menu();
    void make_help_menu();
    void connect_documents();
    void connect_panels();
    void connect_start();
    QMenu* add_menu(const Words& words);
    QAction* add(QMenu* menu, const Words& words, const QKeySequence& keys, const std::function<void()>& function);
    void retranslate();
    void update_title();
    void update_actions();
    void show_left_behind();
    void ask_for_job();
    void ask_for_drill();
    void open_drill(const QString& path);
    void go_to_first_page();
    void ask_for_model(const QString& path);
    void ask_for_new_house();
    void ask_for_report();
    void tell_report(const QString& path, const QStringList& left_out);
    [[nodiscard]] bool may_leave();
    bool save();
    bool save_as();
    void save_somewhere(const QString& title, const QString& kinds, const QString& ending,
                        bool (MainWindow::*how)(const QString&));
    bool tell_fault(const QString& what);
    void show_help(const QString& page);
    void remember_ticks();
    void fit_left();

    Preferences& preferences_;
    RecentJobs& recent_;
    JobDocument* document_;
    ClosingsDocument* closings_;
    SurveyDocument* survey_;
    ReportDocument* report_;
    QStackedWidget *pages_, *sides_;
    StartPage* start_;
    PicturePane* picture_ = nullptr;
    ClosingsPanel* closings_panel_ = nullptr;
    SurveyPanel* survey_panel_ = nullptr;
    DrillPage* drill_ = nullptr;
    QWidget* work_ = nullptr;
    QSplitter* halves_ = nullptr;
    double left_ = 400;  ///< pixels that the left has of the window when letters are of the usual size
    FirstHints* hints_ = nullptr;
    NewHouseForm* new_house_ = nullptr;
    QLabel* hint_;
    std::array<QToolButton*, 3> page_buttons_{};
    std::vector<std::pair<QAction*, Words>> words_;  ///< of menus, in the language of the moment
    std::vector<std::pair<QMenu*, Words>> menus_;
    std::vector<QAction*> with_job_, with_house_;  ///< that need one
    QAction *undo_ = nullptr, *redo_ = nullptr, *save_ = nullptr, *first_page_ = nullptr;
    ReportSettings report_settings_;  ///< as they were last asked for
    QString report_ending_ = QStringLiteral("html");
    bool report_asked_ = false;
    std::vector<Draft> left_behind_;
    std::vector<ClosingState> ticks_;  ///< as the history has them
    QTimer ticks_rest_;                ///< runs out when nobody ticks any more: a drag along the prices is one change
    bool taking_back_ = false;
};

}  // namespace seamward::viewer
