// SPDX-License-Identifier: GPL-3.0-or-later
// The menus of the window, and what they ask.
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QMenuBar>
#include <QMessageBox>
#include <QStandardPaths>
#include <QStatusBar>

#include "document/drill_files.h"
#include "panels/help_pages.h"
#include "panels/model_form.h"
#include "panels/new_house_form.h"
#include "panels/preferences_dialog.h"
#include "window/fault_box.h"
#include "window/main_window.h"

namespace seamward::viewer {

namespace {

QKeySequence ctrl(Qt::Key key) { return {static_cast<int>(Qt::CTRL) | static_cast<int>(key)}; }

}  // namespace

QMenu* MainWindow::add_menu(const Words& words) {
    QMenu* menu = menuBar()->addMenu(QString());
    menus_.emplace_back(menu, words);
    return menu;
}

QAction* MainWindow::add(QMenu* menu, const Words& words, const QKeySequence& keys, const std::function<void()>& function) {
    QAction* action = menu->addAction(QString());
    action->setShortcut(keys);
    connect(action, &QAction::triggered, this, function);
    words_.emplace_back(action, words);
    return action;
}

void MainWindow::make_menus() {
    make_file_menu();
    make_edit_menu();
    make_house_menu();
    make_settings_menu();
    make_help_menu();
}

void MainWindow::make_file_menu() {
    QMenu* file = add_menu([] { return tr("&File"); });
    add(
        file, [] { return tr("&New house..."); }, QKeySequence::New, [this] { ask_for_new_house(); });
    add(
        file, [] { return tr("&Open a job..."); }, QKeySequence::Open, [this] { ask_for_job(); });
    add(
        file, [] { return tr("Open a &builder's model..."); }, {}, [this] { ask_for_model({}); });
    add(
        file, [] { return tr("Open a &drill..."); }, {}, [this] { ask_for_drill(); });
    first_page_ = add(
        file, [] { return tr("&First page"); }, ctrl(Qt::Key_B), [this] { go_to_first_page(); });
    file->addSeparator();
    save_ = add(
        file, [] { return tr("&Save the survey"); }, QKeySequence::Save, [this] { save(); });
    with_job_.push_back(add(
        file, [] { return tr("Save the survey &as..."); }, QKeySequence::SaveAs, [this] { save_as(); }));
    file->addSeparator();
    with_job_.push_back(add(
        file, [] { return tr("&Write a report..."); }, QKeySequence::Print, [this] { ask_for_report(); }));
    with_job_.push_back(add(
        file, [] { return tr("Save the &picture..."); }, {},
        [this] {
            save_somewhere(tr("Save the picture"), tr("Pictures (*.png)"), QStringLiteral("png"), &MainWindow::save_picture);
        }));
    with_house_.push_back(add(
        file, [] { return tr("Save the &house for 3D programs..."); }, {},
        [this] {
            save_somewhere(tr("Save the house"), tr("glTF files (*.glb)"), QStringLiteral("glb"), &MainWindow::save_solids);
        }));
    with_house_.push_back(add(
        file, [] { return tr("Save the &ride as a film..."); }, {},
        [this] {
            save_somewhere(tr("Save the ride as a film"), tr("Films (*.ogv)"), QStringLiteral("ogv"), &MainWindow::save_film);
        }));
    file->addSeparator();
    add(
        file, [] { return tr("&Quit"); }, ctrl(Qt::Key_Q), [this] { close(); });
}

void MainWindow::make_edit_menu() {
    QMenu* edit = add_menu([] { return tr("&Edit"); });
    // Their words tell what they take back.
    undo_ = add(
        edit, [this] { return survey_->undo_text(); }, QKeySequence::Undo,
        [this] {
            survey_panel_->commit();
            remember_ticks();
            survey_->undo();
        });
    redo_ = add(
        edit, [this] { return survey_->redo_text(); }, QKeySequence::Redo,
        [this] {
            survey_panel_->commit();
            remember_ticks();
            survey_->redo();
        });
    redo_->setShortcuts({QKeySequence(QKeySequence::Redo), ctrl(Qt::Key_Y)});
    edit->addSeparator();
    with_job_.push_back(add(
        edit, [] { return tr("&Remove the chosen gap"); }, ctrl(Qt::Key_Delete),
        [this] {
            if (sides_->currentWidget() == survey_panel_) survey_panel_->remove_chosen();
        }));
}

void MainWindow::make_house_menu() {
    QMenu* house = add_menu([] { return tr("&House"); });
    const auto page = [&](const Words& words, Page which, Qt::Key key) {
        with_job_.push_back(add(house, words, ctrl(key), [this, which] {
            pages_->setCurrentWidget(work_);
            show_page(which);
        }));
    };
    page([] { return tr("&Ways in"); }, Page::ways, Qt::Key_1);
    page([] { return tr("&Closings"); }, Page::closings, Qt::Key_2);
    page([] { return tr("&Survey"); }, Page::survey, Qt::Key_3);
    house->addSeparator();
    with_job_.push_back(add(
        house, [] { return tr("W&hole house"); }, ctrl(Qt::Key_Home), [this] { picture_->canvas().show_whole_house(); }));
    with_house_.push_back(add(
        house, [] { return tr("&Turn to where the way in is seen"); }, ctrl(Qt::Key_T),
        [this] { picture_->canvas().show_chosen_way(); }));
    with_house_.push_back(add(
        house, [] { return tr("Ride &along the way in"); }, ctrl(Qt::Key_R), [this] { picture_->canvas().start_ride(); }));
}

void MainWindow::make_settings_menu() {
    QMenu* settings = add_menu([] { return tr("Se&ttings"); });
    add(
        settings, [] { return QStringLiteral("&English"); }, {},
        [this] { preferences_.set_language(Preferences::Language::english); });
    add(
        settings, [] { return QStringLiteral("E&spa\u00f1ol"); }, {},
        [this] { preferences_.set_language(Preferences::Language::spanish); });
    settings->addSeparator();
    add(
        settings, [] { return tr("&Larger letters"); }, ctrl(Qt::Key_Plus),
        [this] { preferences_.set_text_size(preferences_.text_size() + 25); });
    add(
        settings, [] { return tr("S&maller letters"); }, ctrl(Qt::Key_Minus),
        [this] { preferences_.set_text_size(preferences_.text_size() - 25); });
    settings->addSeparator();
    add(
        settings, [] { return tr("&All settings..."); }, {}, [this] { PreferencesDialog(preferences_, this).exec(); });
}

void MainWindow::make_help_menu() {
    QMenu* help = add_menu([] { return tr("Hel&p"); });
    add(
        help, [] { return tr("&Pages on everything..."); }, QKeySequence::HelpContents,
        [this] { show_help(QStringLiteral("window")); });
    add(
        help, [] { return tr("&What this cannot do..."); }, {}, [this] { show_help(QStringLiteral("limits")); });
}

void MainWindow::retranslate() {
    for (const auto& [action, words] : words_) action->setText(words());
    for (const auto& [menu, words] : menus_) menu->setTitle(words());
    hint_->setText(tr("Drag to turn, right-drag to move, wheel to come closer, Home key: whole house"));
    const std::array names{tr("Ways in"), tr("Closings"), tr("Survey")};
    for (std::size_t i = 0; i < names.size(); ++i) {
        page_buttons_.at(i)->setText(names.at(i));
        page_buttons_.at(i)->setToolTip(tr("Key: Ctrl+%1").arg(i + 1));
    }
    update_title();
}

void MainWindow::show_help(const QString& page) {
    auto* pages = new HelpPages;
    pages->setAttribute(Qt::WA_DeleteOnClose);
    pages->setWindowTitle(tr("Seamward: pages on everything"));
    pages->resize(980, 720);
    pages->show_page(page);
    pages->show();
    connect(this, &QObject::destroyed, pages, &QWidget::close);
}

void MainWindow::open(const QString& path) {
    if (is_drill_file(path)) return open_drill(path);
    if (!may_leave()) return;
    const QString ending = QFileInfo(path).suffix().toLower();
    if (ending.isEmpty() || ending == "yaml" || ending == "yml" || ending == "json") {
        document_->open(path);
    } else {
        ask_for_model(path);
    }
}

void MainWindow::ask_for_job() {
    const QString path =
        QFileDialog::getOpenFileName(this, tr("Open a job"), {}, tr("Job files (*.yaml *.yml *.json);;All files (*)"));
    if (!path.isEmpty()) open(path);
}

void MainWindow::ask_for_drill() {
    const QString path = QFileDialog::getOpenFileName(this, tr("Open a drill"), QDir(shipped_examples()).filePath("drills"),
                                                      tr("Drills (*.yaml *.yml *.json);;All files (*)"));
    if (!path.isEmpty()) open_drill(path);
}

void MainWindow::open_drill(const QString& path) {
    if (drill_ == nullptr || drill_->may_leave()) drill().document().open(path);
}

DrillPage& MainWindow::drill() {
    if (drill_ != nullptr) return *drill_;
    drill_ = new DrillPage;
    pages_->addWidget(drill_);
    const DrillDocument* document = &drill_->document();
    connect(document, &DrillDocument::opened, this, [this] {
        pages_->setCurrentWidget(drill_);
        fit_left();
        update_title();
        hint_->show();
    });
    connect(document, &DrillDocument::busy_changed, this, [this](const QString& doing) { statusBar()->showMessage(doing); });
    connect(document, &DrillDocument::open_failed, this, [this](const OpenFault& fault) { show_fault(*this, fault); });
    connect(drill_, &DrillPage::told, this, [this](const QString& words) { statusBar()->showMessage(words, 15'000); });
    connect(drill_, &DrillPage::left, this, [this] {
        pages_->setCurrentWidget(document_->has_job() ? work_ : static_cast<QWidget*>(start_));
        update_title();
    });
    return *drill_;
}

void MainWindow::go_to_first_page() {
    show_left_behind();
    const bool drill = drill_ != nullptr && drill_->document().has_drill();
    QWidget* back = drill ? static_cast<QWidget*>(drill_) : work_;
    pages_->setCurrentWidget(pages_->currentWidget() == start_ ? back : static_cast<QWidget*>(start_));
}

void MainWindow::ask_for_model(const QString& path) {
    auto* form = new ModelForm(this);
    form->setAttribute(Qt::WA_DeleteOnClose);
    if (!path.isEmpty()) form->set_model(path);
    connect(form, &ModelForm::job_wanted, this, &MainWindow::open);
    form->open();
}

void MainWindow::ask_for_new_house() {
    if (new_house_ == nullptr) {  // kept: whoever closes it to look something up finds the answers again
        new_house_ = new NewHouseForm(this);
        connect(new_house_, &NewHouseForm::job_wanted, this, &MainWindow::open);
    }
    new_house_->open();
}

bool MainWindow::save() {
    survey_panel_->commit();
    // What is shipped stays as it is: changes to an example are a job of the user's own.
    const QString examples = QFileInfo(shipped_examples()).canonicalFilePath();
    if (!examples.isEmpty() && QFileInfo(document_->path()).canonicalFilePath().startsWith(examples + '/')) return save_as();
    SurveyDocument::Saved saved = survey_->save();
    if (saved != SurveyDocument::Saved::changed_elsewhere) return saved == SurveyDocument::Saved::done;
    QMessageBox box(
        QMessageBox::Question, tr("Seamward"),
        tr("%1 was changed by another program since it was opened here. Save over those changes?").arg(document_->path()),
        QMessageBox::Save | QMessageBox::Cancel, this);
    box.setObjectName("changed_elsewhere");
    if (box.exec() != QMessageBox::Save) return false;
    return survey_->save(SurveyDocument::Overwrite::yes) == SurveyDocument::Saved::done;
}

bool MainWindow::save_as() {
    survey_panel_->commit();
    const QFileInfo job(document_->path());
    const bool writable = QFileInfo(job.path()).isWritable() &&
                          !job.canonicalFilePath().startsWith(QFileInfo(shipped_examples()).canonicalFilePath() + '/');
    const QString folder = writable ? job.path() : QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    const QString path = QFileDialog::getSaveFileName(this, tr("Save the survey as"), QDir(folder).filePath(job.fileName()),
                                                      tr("Job files (*.yaml *.json)"));
    return !path.isEmpty() && survey_->save_as(path) == SurveyDocument::Saved::done;
}

void MainWindow::save_somewhere(const QString& title, const QString& kinds, const QString& ending,
                                bool (MainWindow::*how)(const QString&)) {
    const QFileInfo job(document_->path());
    QString path = QFileDialog::getSaveFileName(this, title, job.dir().filePath(job.completeBaseName() + '.' + ending), kinds);
    if (path.isEmpty()) return;
    if (QFileInfo(path).suffix().isEmpty()) path += '.' + ending;
    if ((this->*how)(path)) statusBar()->showMessage(tr("Saved %1").arg(path), 6'000);
}

}  // namespace seamward::viewer
