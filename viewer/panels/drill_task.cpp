// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/drill_task.h"

#include <QEvent>
#include <QFileInfo>
#include <QVBoxLayout>

#include "panels/flow_layout.h"

namespace seamward::viewer {

namespace {

QString escaped(const std::string& text) { return QString::fromStdString(text).toHtmlEscaped(); }

QString list_html(const std::vector<std::string>& lines) {
    QString html = "<ul style='margin-left: -22px'>";
    for (const std::string& line : lines) html += "<li style='margin-bottom: 4px'>" + escaped(line) + "</li>";
    return html + "</ul>";
}

QString heading_html(const QString& text) { return "<p style='margin-top: 14px'><b>" + text.toHtmlEscaped() + "</b></p>"; }

}  // namespace

QString trainee_words(const DrillDocument& document) {
    if (document.trainee().isEmpty()) return {};
    if (document.progress_file().isEmpty()) return DrillTask::tr("Trainee: %1").arg(document.trainee());
    return DrillTask::tr("Trainee: %1; progress is kept in %2")
        .arg(document.trainee(), QFileInfo(document.progress_file()).fileName());
}

DrillTask::DrillTask(DrillDocument& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      words_(new QTextBrowser(this)),
      trainee_words_(new QLabel(this)),
      begin_(new QPushButton(this)),
      trainee_(new QPushButton(this)),
      leave_(new QPushButton(this)) {
    setObjectName("drill_task");
    words_->setObjectName("drill_story");
    words_->setFrameShape(QFrame::NoFrame);
    words_->document()->setDocumentMargin(16);
    words_->setOpenLinks(false);
    trainee_words_->setObjectName("drill_trainee");
    trainee_words_->setTextFormat(Qt::PlainText);
    trainee_words_->setWordWrap(true);
    begin_->setObjectName("drill_begin");
    trainee_->setObjectName("drill_name");
    leave_->setObjectName("drill_leave");
    auto* buttons = new FlowLayout(nullptr, 8, 6);
    for (QPushButton* button : {begin_, trainee_, leave_}) buttons->addWidget(button);
    auto* foot = new QVBoxLayout;
    foot->setContentsMargins(16, 8, 16, 12);
    foot->setSpacing(8);
    foot->addWidget(trainee_words_);
    foot->addLayout(buttons);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(words_, 1);
    column->addLayout(foot);
    connect(begin_, &QPushButton::clicked, this, &DrillTask::begin_wanted);
    connect(trainee_, &QPushButton::clicked, this, &DrillTask::trainee_wanted);
    connect(leave_, &QPushButton::clicked, this, &DrillTask::leave_wanted);
    connect(&document_, &DrillDocument::opened, this, &DrillTask::fill);
    connect(&document_, &DrillDocument::trainee_changed, this, &DrillTask::fill);
    retranslate();
}

QString DrillTask::html() const {
    const Briefing& told = document_.told();
    QString html = "<h2 style='margin-bottom: 2px'>" + escaped(told.title) + "</h2><p style='margin-top: 0px'>" +
                   tr("Drill, %1; places to look at: %2", "difficulty, count")
                       .arg(QString::fromStdString(told.difficulty))
                       .arg(told.places.size())
                       .toHtmlEscaped() +
                   "</p><p>" + escaped(told.story) + "</p>";
    html += heading_html(tr("Against these animals")) + list_html(told.animals);
    if (!told.lives.empty()) html += heading_html(tr("They live in the house")) + list_html(told.lives);
    if (!told.question.empty()) html += heading_html(tr("A question besides")) + "<p>" + escaped(told.question) + "</p>";
    html += heading_html(tr("What to do")) + "<p>" +
            tr("Go round the house in the picture and click a place that you want to look at, or take the places one by one from "
               "the list. Look closely, say whether it is open, how wide, which two spaces it joins, and what to close it with. "
               "Then hand in.")
                .toHtmlEscaped() +
            "</p>";
    html += heading_html(tr("How it is judged")) + list_html(told.rules);
    return html;
}

void DrillTask::fill() {
    if (document_.has_drill()) words_->setHtml(html());
    const QString words = trainee_words(document_);
    trainee_words_->setText(words);
    trainee_words_->setVisible(!words.isEmpty());
}

void DrillTask::retranslate() {
    words_->setAccessibleName(tr("What the drill is about"));
    begin_->setText(tr("&Go to the places"));
    trainee_->setText(tr("&Your name..."));
    trainee_->setToolTip(tr("Your name, and the file in which your progress is kept"));
    leave_->setText(tr("&Leave the drill"));
    fill();
}

void DrillTask::changeEvent(QEvent* event) {
    if (event->type() == QEvent::LanguageChange) retranslate();
    QWidget::changeEvent(event);
}

}  // namespace seamward::viewer
