// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QComboBox>
#include <QDialog>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QProgressBar>
#include <QStackedWidget>
#include <QTextBrowser>

#include "document/model_search.h"
#include "panels/form_field.h"

namespace seamward::viewer {

/// Asks for a builder's 3D file, finds the spaces and gaps in it, shows what was found and what was lost, and then wants the job
/// opened that was written.
class ModelForm : public QDialog {
    Q_OBJECT

public:
    explicit ModelForm(QWidget* parent = nullptr);

    /// Also proposes a job file beside it.
    void set_model(const QString& path);
    void set_job(const QString& path) { job_->setText(path); }
    /// Begins, or shows what is wrong with the answers.
    void find();

signals:
    void job_wanted(const QString& path);

public slots:
    /// While it searches, calls that off; else closes.
    void reject() override;

protected:
    void changeEvent(QEvent* event) override;

private:
    [[nodiscard]] QWidget* make_questions();
    [[nodiscard]] QWidget* make_progress();
    [[nodiscard]] QWidget* make_result();
    [[nodiscard]] bool read(ModelRequest& request);
    [[nodiscard]] bool read_rooms(std::vector<RoomSeed>& rooms);
    void choose_model();
    void choose_job();
    void propose_job();
    void show_questions(const QString& fault);
    void show_finding(const ModelFinding& finding);
    void write_finding();
    void retranslate();

    ModelSearch* search_;
    QStackedWidget* pages_;
    QWidget *questions_, *progress_, *result_;
    QLineEdit *model_, *job_;
    QComboBox *unit_, *up_;
    QPlainTextEdit* rooms_;
    FormField *model_field_, *job_field_, *unit_field_, *up_field_, *rooms_field_;
    QLabel *doing_, *patience_, *count_, *lead_;
    QTextBrowser* lost_;
    FaultLabel* fault_;
    QPushButton *find_, *close_, *cancel_, *open_;
    ModelFinding finding_;
    bool own_job_ = false;  ///< the job's name was typed or chosen, and is not proposed again
};

}  // namespace seamward::viewer
