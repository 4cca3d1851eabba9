// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/trainee_dialog.h"

#include <QDialogButtonBox>
#include <QDir>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QLabel>
#include <QStandardPaths>
#include <QVBoxLayout>

#include "panels/form_field.h"

namespace seamward::viewer {

TraineeDialog::TraineeDialog(const QString& name, const QString& file, QWidget* parent)
    : QDialog(parent), name_(new QLineEdit(name)), file_(new QLineEdit(file)) {
    setObjectName("trainee");
    setWindowTitle(tr("Who does the drill"));
    name_->setObjectName("trainee_name");
    name_->setMaxLength(80);
    file_->setObjectName("trainee_file");
    file_->setMinimumWidth(fontMetrics().averageCharWidth() * 44);
    auto* name_field = new FormField(name_, this);
    name_field->set_question(tr("&Name"));
    auto* file_field = new FormField(file_, this, true);
    file_field->set_question(tr("&File in which progress is kept; empty: it is not"));
    file_field->button()->setText(tr("&Choose..."));
    auto* words = new QLabel(tr("Each attempt that is handed in adds a line to the file. A class may share one file."), this);
    words->setObjectName("hint");
    words->setWordWrap(true);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, this);
    buttons->button(QDialogButtonBox::Ok)->setText(tr("&Use this"));
    buttons->button(QDialogButtonBox::Cancel)->setText(tr("Cancel"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(18, 16, 18, 14);
    column->setSpacing(12);
    column->addWidget(name_field);
    column->addWidget(file_field);
    column->addWidget(words);
    column->addWidget(buttons);
    const auto allow = [this, buttons] { buttons->button(QDialogButtonBox::Ok)->setEnabled(!this->name().isEmpty()); };
    connect(name_, &QLineEdit::textChanged, this, allow);
    connect(file_field->button(), &QPushButton::clicked, this, &TraineeDialog::look_for_file);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    allow();
}

void TraineeDialog::look_for_file() {
    QString from = file();
    if (from.isEmpty())
        from = QDir(QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation)).filePath("progress.jsonl");
    QString path = QFileDialog::getSaveFileName(this, tr("File in which progress is kept"), from, tr("Progress files (*.jsonl)"),
                                                nullptr, QFileDialog::DontConfirmOverwrite);
    if (path.isEmpty()) return;
    if (!path.contains('.')) path += ".jsonl";
    file_->setText(path);
}

}  // namespace seamward::viewer
