// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/report_dialog.h"

#include <QDialogButtonBox>
#include <QPushButton>
#include <QVBoxLayout>
#include <array>

#include "panels/choice_box.h"
#include "panels/form_field.h"

namespace seamward::viewer {

namespace {

constexpr std::array endings{"html", "pdf", "xlsx"};

}  // namespace

ReportDialog::ReportDialog(QWidget* parent) : QDialog(parent), words_(new QLabel(this)) {
    setObjectName("report");
    setWindowTitle(tr("Write a report"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(18, 16, 18, 14);
    column->setSpacing(12);
    audience_ = box("report_audience", tr("&For whom"),
                    {tr("The homeowner: what was found, what it costs to close"), tr("The crew: steps in working order"),
                     tr("The builder: details, and what published rules say"), tr("An owner who does a part of it"),
                     tr("Whoever surveys: a sheet to fill in")});
    kind_ = box("report_kind", tr("&Written as"),
                {tr("A page for phones and browsers (.html)"), tr("Sheets to print (.pdf)"),
                 tr("Tables of gaps, closings and materials (.xlsx)")});
    language_ = box("report_language", tr("In which &language"), {QStringLiteral("English"), QStringLiteral("Español")});
    lengths_ = box("report_lengths", tr("W&idths"), {tr("Inches, and millimeters beside them"), tr("Millimeters only")});
    paper_ = box("report_paper", tr("&Paper"), {tr("Letter"), QStringLiteral("A4")});
    words_->setObjectName("hint");
    words_->setWordWrap(true);
    column->addWidget(words_);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, this);
    buttons->button(QDialogButtonBox::Ok)->setText(tr("Where &to..."));
    buttons->button(QDialogButtonBox::Cancel)->setText(tr("Cancel"));
    column->addWidget(buttons);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(audience_, qOverload<int>(&QComboBox::currentIndexChanged), this, &ReportDialog::tell);
    connect(kind_, qOverload<int>(&QComboBox::currentIndexChanged), this, &ReportDialog::tell);
    tell();
}

QComboBox* ReportDialog::box(const char* name, const QString& question, const QStringList& answers) {
    auto* choices = new ChoiceBox(this);
    choices->setObjectName(name);
    choices->addItems(answers);
    auto* field = new FormField(choices, this);
    field->set_question(question);
    layout()->addWidget(field);
    return choices;
}

void ReportDialog::tell() {
    const bool tables = ending() == "xlsx";
    audience_->setEnabled(!tables);  // tables are the same for all
    paper_->setEnabled(!tables);
    words_->setText(settings().audience == Audience::survey && !tables
                        ? tr("The sheet has the job as it stands here. As a page it can be filled in on a phone, without a "
                             "network, and gives the "
                             "job back.")
                        : tr("The plan is made anew against the animals chosen under Closings, at the cheapest that keeps all of "
                             "them out. Ticks and treatments chosen by hand are not in it."));
}

ReportSettings ReportDialog::settings() const {
    ReportSettings settings;
    settings.audience = static_cast<Audience>(audience_->currentIndex());
    settings.language = static_cast<Language>(language_->currentIndex());
    settings.lengths = static_cast<Lengths>(lengths_->currentIndex());
    settings.paper = static_cast<Paper>(paper_->currentIndex());
    return settings;
}

QString ReportDialog::ending() const { return QLatin1String(endings.at(static_cast<std::size_t>(kind_->currentIndex()))); }

void ReportDialog::choose(const ReportSettings& settings, const QString& ending) {
    audience_->setCurrentIndex(static_cast<int>(settings.audience));
    language_->setCurrentIndex(static_cast<int>(settings.language));
    lengths_->setCurrentIndex(static_cast<int>(settings.lengths));
    paper_->setCurrentIndex(static_cast<int>(settings.paper));
    for (std::size_t i = 0; i < endings.size(); ++i) {
        if (ending == QLatin1String(endings.at(i))) kind_->setCurrentIndex(static_cast<int>(i));
    }
}

}  // namespace seamward::viewer
