// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/model_form.h"

#include <QDir>
#include <QEvent>
#include <QFileDialog>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QVBoxLayout>
#include <algorithm>

#include "base/quantity.h"
#include "document/new_house.h"
#include "document/way_text.h"
#include "exchange/model_kinds.h"

namespace seamward::viewer {

namespace {

QLabel* words(QWidget* parent, const char* name, bool soft = false) {
    auto* made = new QLabel(parent);
    made->setObjectName(name);
    made->setWordWrap(true);
    made->setTextFormat(Qt::PlainText);
    if (soft) made->setForegroundRole(QPalette::PlaceholderText);
    return made;
}

void fill(QComboBox* box, const QStringList& choices) {
    const int chosen = std::max(0, box->currentIndex());
    box->clear();
    box->addItems(choices);
    box->setCurrentIndex(chosen);
}

}  // namespace

ModelForm::ModelForm(QWidget* parent)
    : QDialog(parent), search_(new ModelSearch(this)), pages_(new QStackedWidget(this)), fault_(new FaultLabel(this)) {
    setObjectName("model_form");
    setMinimumSize(520, 420);
    resize(640, 560);
    questions_ = make_questions();
    progress_ = make_progress();
    result_ = make_result();
    for (QWidget* page : {questions_, progress_, result_}) pages_->addWidget(page);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(pages_);
    connect(search_, &ModelSearch::stage_began, doing_, &QLabel::setText);
    connect(search_, &ModelSearch::found, this, &ModelForm::show_finding);
    connect(search_, &ModelSearch::failed, this,
            [this](const OpenFault& fault) { show_questions(tr("Nothing was written. %1").arg(fault.text)); });
    connect(search_, &ModelSearch::cancelled, this, [this] { show_questions(tr("Called off. Nothing was written.")); });
    retranslate();
}

QWidget* ModelForm::make_questions() {
    auto* page = new QWidget;
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(20, 16, 20, 14);
    column->setSpacing(9);
    lead_ = words(page, "lead", true);
    column->addWidget(lead_);
    model_ = new QLineEdit;
    model_->setObjectName("model");
    model_field_ = new FormField(model_, page, true);
    model_field_->button()->setObjectName("choose_model");
    unit_ = new QComboBox;
    unit_->setObjectName("unit");
    unit_field_ = new FormField(unit_, page);
    up_ = new QComboBox;
    up_->setObjectName("up");
    up_field_ = new FormField(up_, page);
    auto* pair = new QHBoxLayout;
    pair->setSpacing(12);
    pair->addWidget(unit_field_);
    pair->addWidget(up_field_);
    rooms_ = new QPlainTextEdit;
    rooms_->setObjectName("rooms");
    rooms_->setTabChangesFocus(true);
    rooms_field_ = new FormField(rooms_, page);
    job_ = new QLineEdit;
    job_->setObjectName("job");
    job_field_ = new FormField(job_, page, true);
    job_field_->button()->setObjectName("choose_job");
    fault_->setObjectName("form_fault");
    find_ = new QPushButton(page);
    find_->setObjectName("find");
    find_->setDefault(true);
    close_ = new QPushButton(page);
    close_->setAutoDefault(false);
    auto* foot = new QHBoxLayout;
    foot->addStretch();
    foot->addWidget(close_);
    foot->addWidget(find_);
    column->addWidget(model_field_);
    column->addLayout(pair);
    column->addWidget(job_field_);
    column->addWidget(rooms_field_, 1);
    column->addWidget(fault_);
    column->addLayout(foot);
    connect(model_, &QLineEdit::textEdited, this, &ModelForm::propose_job);
    connect(job_, &QLineEdit::textEdited, this, [this](const QString& text) { own_job_ = !text.isEmpty(); });
    connect(model_field_->button(), &QPushButton::clicked, this, &ModelForm::choose_model);
    connect(job_field_->button(), &QPushButton::clicked, this, &ModelForm::choose_job);
    connect(find_, &QPushButton::clicked, this, &ModelForm::find);
    connect(close_, &QPushButton::clicked, this, &ModelForm::reject);
    return page;
}

QWidget* ModelForm::make_progress() {
    auto* page = new QWidget;
    doing_ = words(page, "doing");
    QFont large = doing_->font();
    large.setPointSizeF(large.pointSizeF() * 1.25);
    large.setBold(true);
    doing_->setFont(large);
    doing_->setAlignment(Qt::AlignCenter);
    patience_ = words(page, "patience", true);
    patience_->setAlignment(Qt::AlignCenter);
    auto* bar = new QProgressBar(page);
    bar->setRange(0, 0);
    bar->setTextVisible(false);
    bar->setFixedHeight(10);
    cancel_ = new QPushButton(page);
    cancel_->setObjectName("cancel");
    connect(cancel_, &QPushButton::clicked, this, &ModelForm::reject);
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(60, 20, 60, 20);
    column->setSpacing(14);
    column->addStretch(2);
    column->addWidget(doing_);
    column->addWidget(bar);
    column->addWidget(patience_);
    column->addWidget(cancel_, 0, Qt::AlignHCenter);
    column->addStretch(3);
    return page;
}

QWidget* ModelForm::make_result() {
    auto* page = new QWidget;
    count_ = words(page, "found_count");
    QFont large = count_->font();
    large.setPointSizeF(large.pointSizeF() * 1.25);
    large.setBold(true);
    count_->setFont(large);
    lost_ = new QTextBrowser(page);
    lost_->setObjectName("lost");
    lost_->setFrameShape(QFrame::NoFrame);
    open_ = new QPushButton(page);
    open_->setObjectName("open");
    connect(open_, &QPushButton::clicked, this, [this] {
        accept();
        emit job_wanted(finding_.job);
    });
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(20, 18, 20, 14);
    column->addWidget(count_);
    column->addWidget(lost_, 1);
    column->addWidget(open_, 0, Qt::AlignRight);
    return page;
}

void ModelForm::set_model(const QString& path) {
    model_->setText(QDir::toNativeSeparators(path));
    propose_job();
}

void ModelForm::propose_job() {
    model_field_->set_fault({});
    if (own_job_ || model_->text().trimmed().isEmpty()) return;
    const QFileInfo model(model_->text().trimmed());
    job_->setText(QDir::toNativeSeparators(model.dir().filePath(file_word(model.completeBaseName()) + ".yaml")));
}

void ModelForm::choose_model() {
    QString kinds;
    for (const char* kind : {"glb", "gltf", "obj", "stl", "ply", "3ds", "dae", "fbx", "dxf", "ifc"})
        kinds += QStringLiteral(" *.%1 *.%2").arg(kind, QString(kind).toUpper());
    const QString path = QFileDialog::getOpenFileName(this, tr("Open a builder's model"), QFileInfo(model_->text()).path(),
                                                      tr("3D files (%1);;All files (*)").arg(kinds.trimmed()));
    if (!path.isEmpty()) set_model(path);
}

void ModelForm::choose_job() {
    const QString path = QFileDialog::getSaveFileName(this, tr("Job file to write"), job_->text(), tr("Job files (*.yaml)"));
    if (path.isEmpty()) return;
    own_job_ = true;
    job_->setText(QDir::toNativeSeparators(path));
}

bool ModelForm::read_rooms(std::vector<RoomSeed>& rooms) {
    const QStringList lines = rooms_->toPlainText().split('\n');
    for (int i = 0; i < lines.size(); ++i) {
        const QString line = lines[i].trimmed();
        if (line.isEmpty()) continue;
        const QStringList parts = line.split(',');
        const auto length = [&](int at) { return parse_coordinate(parts.value(at).trimmed().toStdString()); };
        const Parsed<double> x = length(1);
        const Parsed<double> y = length(2);
        const Parsed<double> z = length(3);
        RoomSeed room;
        room.id = parts.value(0).simplified().toStdString();
        if (parts.size() != 4 || room.id.empty() || room.id == "outdoors" || room.id.size() > 400 || !x || !y || !z) {
            rooms_field_->set_fault(
                tr("Line %1 is no room: write its name and a point in it, such as kitchen, 2.5 m, 10 ft, 1.2 m.").arg(i + 1));
            return false;
        }
        if (std::ranges::count(rooms, room.id, &RoomSeed::id) > 0) {
            rooms_field_->set_fault(tr("Line %1 names a room that stands above already.").arg(i + 1));
            return false;
        }
        room.at = {*x, *y, *z};
        rooms.push_back(std::move(room));
    }
    rooms_field_->set_fault({});
    return true;
}

bool ModelForm::read(ModelRequest& request) {
    request.model = QDir::fromNativeSeparators(model_->text().trimmed());
    request.job = QDir::fromNativeSeparators(job_->text().trimmed());
    QString fault;
    if (request.model.isEmpty())
        fault = tr("Choose the 3D file of the house.");
    else if (!is_model_name(request.model.toStdString()))
        fault = tr("Files of this kind cannot be read; those that end in %1 can.").arg(QString::fromStdString(all_model_kinds()));
    model_field_->set_fault(fault);
    if (unit_->currentIndex() > 0) request.reading.unit = static_cast<ModelUnit>(unit_->currentIndex() - 1);
    if (up_->currentIndex() > 0) request.reading.up = static_cast<UpAxis>(up_->currentIndex() - 1);
    const bool rooms = read_rooms(request.finding.rooms);
    job_field_->set_fault(fault_of_job_name(request.job, request.model));
    return fault.isEmpty() && rooms && !job_field_->has_fault();
}

void ModelForm::find() {
    if (search_->is_running()) return;
    ModelRequest request;
    fault_->set_fault({});
    if (!read(request)) {
        for (FormField* field : {model_field_, job_field_, rooms_field_}) {
            if (!field->has_fault()) continue;
            field->field()->setFocus();
            return;
        }
    }
    doing_->setText(tr("Beginning"));
    pages_->setCurrentWidget(progress_);
    cancel_->setEnabled(true);
    cancel_->setFocus();
    search_->start(request);
}

void ModelForm::reject() {
    if (!search_->is_running()) {
        QDialog::reject();
        return;
    }
    cancel_->setEnabled(false);
    doing_->setText(tr("Calling it off"));
    search_->cancel();
}

void ModelForm::show_questions(const QString& fault) {
    pages_->setCurrentWidget(questions_);
    fault_->set_fault(fault);
    find_->setFocus();
}

void ModelForm::show_finding(const ModelFinding& finding) {
    finding_ = finding;
    write_finding();
    pages_->setCurrentWidget(result_);
    open_->setDefault(true);
    open_->setFocus();
}

void ModelForm::write_finding() {
    if (finding_.job.isEmpty()) return;
    const QString spaces = tr("%n space(s)", "", finding_.spaces);
    count_->setText(finding_.gaps == 0 ? tr("The model draws no gap that could be measured.")
                                       : tr("Found: %n gap(s) between %1.", "%1: so many spaces", finding_.gaps).arg(spaces));
    const auto list = [](const QString& heading, const QStringList& lines) {
        if (lines.isEmpty()) return QString();
        QString html = "<h4>" + heading.toHtmlEscaped() + "</h4><ul>";
        for (const QString& line : lines) html += "<li>" + line.toHtmlEscaped() + "</li>";
        return html + "</ul>";
    };
    const QString parts = tr("Looked at: %n part(s) of the model, for gaps from %1 to %2.", "", finding_.parts)
                              .arg(width_words(finding_.smallest), width_words(finding_.widest));
    QStringList means;
    if (finding_.joints > 0)
        means << tr(
            "%n joint(s) between parts are drawn shut, and nobody has measured them. They stand in the survey with no width.", "",
            finding_.joints);
    means << tr(
        "A house drawn tight need not be tight: what is not found here proves nothing. Look at the joints on site, and measure.");
    if (finding_.rooms == 0)
        means << tr(
            "No air of the model is closed in enough to be a room, so no way in can end anywhere. Perhaps it draws only a part "
            "of a house, or walls without a floor and a roof.");
    const QString file = tr("The job file is %1.").arg(QDir::toNativeSeparators(finding_.job));
    const QString none =
        finding_.lost.isEmpty() ? "<p>" + tr("All parts that the file lists came through.").toHtmlEscaped() + "</p>" : QString();
    lost_->setHtml("<p>" + parts.toHtmlEscaped() + "</p>" + list(tr("What that means"), means) + "<p>" + file.toHtmlEscaped() +
                   "</p>" + none + list(tr("Lost on the way"), finding_.lost) + list(tr("Good to know"), finding_.notes));
}

void ModelForm::changeEvent(QEvent* event) {
    QDialog::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) retranslate();
}

void ModelForm::retranslate() {
    setWindowTitle(tr("Open a builder's model"));
    lead_->setText(tr("Finds the rooms, the cavities and the gaps between them in a 3D file, and writes a job file of them."));
    model_field_->set_question(tr("&3D file of the house"));
    model_field_->button()->setText(tr("&Choose..."));
    unit_field_->set_question(tr("&Unit of its lengths"));
    fill(unit_, {tr("As the file says"), tr("Meters"), tr("Centimeters"), tr("Millimeters"), tr("Inches"), tr("Feet")});
    up_field_->set_question(tr("&Axis that points up"));
    fill(up_, {tr("As the file says"), tr("x"), tr("y"), tr("z")});
    rooms_field_->set_question(tr("&Rooms that you know, one a line; more can be named later"));
    rooms_->setPlaceholderText(tr("kitchen, 2.5 m, 3 m, 1.2 m"));
    job_field_->set_question(tr("&Job file to write"));
    job_field_->button()->setText(tr("C&hoose..."));
    close_->setText(tr("C&lose"));
    find_->setText(tr("&Find the gaps"));
    patience_->setText(tr("A house takes seconds, a large building minutes. You can call it off at any time."));
    cancel_->setText(tr("Call it &off"));
    open_->setText(tr("&Open the job"));
    lost_->setAccessibleName(tr("What came of the file"));
    write_finding();
}

}  // namespace seamward::viewer
