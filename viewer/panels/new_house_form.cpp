// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/new_house_form.h"

#include <QDir>
#include <QEvent>
#include <QFileDialog>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QStandardPaths>
#include <algorithm>

#include "base/date.h"
#include "base/diagnostics.h"
#include "base/quantity.h"
#include "catalog/shipped.h"
#include "document/translations.h"
#include "panels/shape_button.h"

namespace seamward::viewer {

namespace {

using Of = NewHouseFault::Of;
using Shape = NewHouse::Shape;

constexpr std::array usual_animals{"house-mouse",      "roof-rat", "norway-rat",  "bark-scorpion", "american-cockroach",
                                   "german-cockroach", "bat",      "black-widow", "snake"};
constexpr std::array chosen_at_first{"house-mouse", "bark-scorpion", "american-cockroach"};

QString first_text(double meters) {
    if (lengths_written() == Lengths::millimeters) return QStringLiteral("%1 m").arg(meters);
    return QStringLiteral("%1 ft").arg(qRound(meters / 0.3048));
}

template <class Choices>
void fill(QComboBox* box, const Choices& choices) {
    const int chosen = std::max(0, box->currentIndex());
    const QSignalBlocker quiet(box);
    box->clear();
    for (const QString& choice : choices) box->addItem(choice);
    box->setCurrentIndex(chosen);
}

}  // namespace

NewHouseForm::NewHouseForm(QWidget* parent)
    : QDialog(parent), shapes_(new QButtonGroup(this)), sketch_(new OutlineSketch(this)), fault_(new FaultLabel(this)) {
    setObjectName("new_house_form");
    setMinimumSize(620, 420);
    resize(980, 680);
    auto* questions = questions_ = new QScrollArea(this);
    questions->setFrameShape(QFrame::NoFrame);
    questions->setWidgetResizable(true);
    questions->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    questions->setFocusPolicy(Qt::NoFocus);
    questions->setWidget(make_questions());
    files_ = new QLabel(this);
    promise_ = new QLabel(this);
    for (QLabel* words : {files_, promise_}) {
        words->setWordWrap(true);
        words->setTextFormat(Qt::PlainText);
        words->setForegroundRole(QPalette::PlaceholderText);
    }
    files_->setObjectName("files");
    auto* right = new QVBoxLayout;
    right->setContentsMargins(0, 14, 18, 0);
    floor_ = new QComboBox(this);
    floor_->setObjectName("floor");
    connect(floor_, qOverload<int>(&QComboBox::currentIndexChanged), sketch_, [this](int at) { sketch_->show_story(at + 1); });
    right->addWidget(floor_, 0, Qt::AlignLeft);
    right->addWidget(sketch_, 1);
    right->addWidget(promise_);
    right->addWidget(files_);
    auto* halves = new QHBoxLayout;
    halves->addWidget(questions, 11);
    halves->addLayout(right, 10);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addLayout(halves, 1);
    column->addLayout(make_foot());
    folder_->setText(QDir::toNativeSeparators(usual_house_folder()));
    retranslate();
    begin_afresh();
}

void NewHouseForm::begin_afresh() {
    const NewHouse first;
    tried_ = false;
    for (QLineEdit* edit : {name_, address_}) edit->clear();
    shapes_->button(static_cast<int>(first.shape))->setChecked(true);
    for (const Size& size : sizes_) size.edit->setText(first_text(first.*size.into));
    corners_->clear();
    for (const Choice& choice : {stories_, garage_, cladding_, foundation_, roof_}) choice.box->setCurrentIndex(0);
    bedrooms_.box->setCurrentIndex(first.bedrooms);
    baths_.box->setCurrentIndex(first.baths - 1);
    for (const auto& [box, id] : animals_) box->setChecked(std::ranges::count(chosen_at_first, std::string_view(id)) > 0);
    folder_field_->set_fault({});
    read();
    questions_->ensureVisible(0, 0);
    name_->setFocus();
}

QWidget* NewHouseForm::make_questions() {
    auto* page = new QWidget;
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(18, 12, 14, 12);
    column->setSpacing(8);
    const auto line = [&](const char* name, FormField*& field, bool with_button = false) {
        auto* edit = new QLineEdit;
        edit->setObjectName(name);
        field = new FormField(edit, page, with_button);
        column->addWidget(field);
        connect(edit, &QLineEdit::textEdited, this, &NewHouseForm::read);
        return edit;
    };
    name_ = line("name", name_field_);
    address_ = line("address", address_field_);
    shape_heading_ = form_heading(page);
    column->addWidget(shape_heading_);
    add_shapes(page, column);
    build_heading_ = form_heading(page);
    column->addWidget(build_heading_);
    add_choices(page, column);
    animals_heading_ = form_heading(page);
    column->addWidget(animals_heading_);
    add_animals(page, column);
    folder_ = line("folder", folder_field_, true);
    connect(folder_, &QLineEdit::textChanged, this, [this] { folder_field_->set_fault({}); });
    folder_field_->button()->setObjectName("choose_folder");
    connect(folder_field_->button(), &QPushButton::clicked, this, &NewHouseForm::choose_folder);
    column->addStretch(1);
    return page;
}

void NewHouseForm::add_shapes(QWidget* page, QVBoxLayout* column) {
    auto* row = new QHBoxLayout;
    row->setSpacing(6);
    for (const Shape shape : {Shape::rectangle, Shape::l, Shape::t, Shape::u, Shape::corners}) {
        auto* button = new ShapeButton(shape, page);
        button->setObjectName(QStringLiteral("shape_%1").arg(static_cast<int>(shape)));
        shapes_->addButton(button, static_cast<int>(shape));
        row->addWidget(button);
    }
    column->addLayout(row);
    connect(shapes_, qOverload<QAbstractButton*>(&QButtonGroup::buttonClicked), this, &NewHouseForm::read);
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(12);
    const auto size = [&](const char* name, double NewHouse::*into, Of of) {
        auto* edit = new QLineEdit;
        edit->setObjectName(name);
        auto* field = new FormField(edit, page);
        const auto at = static_cast<int>(sizes_.size());
        grid->addWidget(field, at / 2, at % 2, Qt::AlignTop);
        sizes_.push_back({edit, field, into, of});
        connect(edit, &QLineEdit::textEdited, this, &NewHouseForm::read);
    };
    size("length", &NewHouse::length, Of::length);
    size("depth", &NewHouse::depth, Of::depth);
    size("wing_length", &NewHouse::wing_length, Of::wing_length);
    size("wing_depth", &NewHouse::wing_depth, Of::wing_depth);
    column->addLayout(grid);
    corners_ = new QPlainTextEdit;
    corners_->setObjectName("corners");
    corners_->setTabChangesFocus(true);
    corners_->setFixedHeight(corners_->fontMetrics().height() * 6 + 12);
    corners_field_ = new FormField(corners_, page);
    column->addWidget(corners_field_);
    connect(corners_, &QPlainTextEdit::textChanged, this, &NewHouseForm::read);
}

void NewHouseForm::add_choices(QWidget* page, QVBoxLayout* column) {
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(12);
    int at = 0;
    for (const auto& [choice, name] :
         {std::pair{&stories_, "stories"}, std::pair{&garage_, "garage"}, std::pair{&bedrooms_, "bedrooms"},
          std::pair{&baths_, "baths"}, std::pair{&cladding_, "cladding"}, std::pair{&foundation_, "foundation"},
          std::pair{&roof_, "roof"}}) {
        choice->box = new QComboBox;
        choice->box->setObjectName(name);
        choice->box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        choice->field = new FormField(choice->box, page);
        grid->addWidget(choice->field, at / 2, at % 2, Qt::AlignTop);
        ++at;
        connect(choice->box, qOverload<int>(&QComboBox::currentIndexChanged), this, &NewHouseForm::read);
    }
    grid->setColumnStretch(0, 1);
    grid->setColumnStretch(1, 1);
    column->addLayout(grid);
}

void NewHouseForm::add_animals(QWidget* page, QVBoxLayout* column) {
    auto* grid = new QGridLayout;
    for (const char* id : usual_animals) {
        if (shipped_pests().find(id) == nullptr) continue;
        auto* box = new QCheckBox(page);
        box->setObjectName(QStringLiteral("animal_") + id);
        const auto at = static_cast<int>(animals_.size());
        grid->addWidget(box, at / 2, at % 2);
        animals_.emplace_back(box, id);
        connect(box, &QCheckBox::toggled, this, &NewHouseForm::read);
    }
    column->addLayout(grid);
}

QLayout* NewHouseForm::make_foot() {
    fault_->setObjectName("form_fault");
    cancel_ = new QPushButton(this);
    cancel_->setAutoDefault(false);
    afresh_ = new QPushButton(this);
    afresh_->setObjectName("afresh");
    afresh_->setAutoDefault(false);
    connect(afresh_, &QPushButton::clicked, this, &NewHouseForm::begin_afresh);
    make_ = new QPushButton(this);
    make_->setObjectName("make");
    make_->setDefault(true);
    connect(cancel_, &QPushButton::clicked, this, &QDialog::reject);
    connect(make_, &QPushButton::clicked, this, &NewHouseForm::make);
    auto* foot = new QHBoxLayout;
    foot->setContentsMargins(18, 4, 18, 14);
    foot->addWidget(fault_, 1);
    foot->addStretch();
    foot->addWidget(afresh_);
    foot->addWidget(cancel_);
    foot->addWidget(make_);
    return foot;
}

void NewHouseForm::choose_folder() {
    const QString folder = QFileDialog::getExistingDirectory(this, tr("Folder for the new house"), folder_->text());
    if (!folder.isEmpty()) folder_->setText(QDir::toNativeSeparators(folder));
    read();
}

void NewHouseForm::read() {
    unread_.clear();
    house_.name = name_->text().simplified().toStdString();
    house_.address = address_->text().simplified().toStdString();
    house_.shape = static_cast<Shape>(shapes_->checkedId());
    for (const Size& size : sizes_) {
        if (house_.shape == Shape::corners) break;
        const Parsed<double> length = parse_distance(size.edit->text().trimmed().toStdString());
        if (length)
            house_.*size.into = *length;
        else if (!size.field->isHidden())
            unread_.emplace_back(size.field, tr("Type a length with its unit, such as 46 ft, 12 ft 6 in or 14 m."));
    }
    if (house_.shape == Shape::corners) read_corners();
    house_.stories = stories_.box->currentIndex() + 1;
    house_.garage = static_cast<NewHouse::Garage>(garage_.box->currentIndex());
    house_.bedrooms = bedrooms_.box->currentIndex();
    house_.baths = baths_.box->currentIndex() + 1;
    baths_.field->setEnabled(house_.bedrooms > 0);
    house_.cladding = static_cast<NewHouse::Cladding>(cladding_.box->currentIndex());
    house_.foundation = static_cast<NewHouse::Foundation>(foundation_.box->currentIndex());
    house_.roof = static_cast<NewHouse::Roof>(roof_.box->currentIndex());
    house_.pests.clear();
    for (const auto& [box, id] : animals_) {
        if (box->isChecked()) house_.pests.push_back(id);
    }
    show_faults();
}

void NewHouseForm::read_corners() {
    house_.corners.clear();
    const QStringList lines = corners_->toPlainText().split('\n');
    for (int i = 0; i < lines.size(); ++i) {
        const QString line = lines[i].trimmed();
        if (line.isEmpty()) continue;
        const QStringList both = line.split(',');
        const Parsed<double> x = parse_coordinate(both.value(0).trimmed().toStdString());
        const Parsed<double> y = parse_coordinate(both.value(1).trimmed().toStdString());
        if (both.size() == 2 && x && y) {
            house_.corners.push_back({*x, *y});
            continue;
        }
        unread_.emplace_back(
            corners_field_,
            tr("Line %1 is no corner: write two lengths with their units, such as 12 ft, 30 ft 6 in.").arg(i + 1));
        return;
    }
}

FormField* NewHouseForm::field_of(Of of) const {
    switch (of) {
        case Of::name: return name_field_;
        case Of::corners: return corners_field_;
        case Of::roof: return roof_.field;
        case Of::garage: return garage_.field;
        case Of::rooms: return bedrooms_.field;
        default: break;
    }
    return std::ranges::find(sizes_, of, &Size::of)->field;
}

void NewHouseForm::show_faults() {
    const Shape shape = house_.shape;
    for (std::size_t i = 0; i < sizes_.size(); ++i) {
        const bool wing = shape == Shape::l || shape == Shape::t || shape == Shape::u;
        sizes_[i].field->setVisible(shape != Shape::corners && (i < 2 || wing));
    }
    corners_field_->setVisible(shape == Shape::corners);
    std::vector<FormField*> fields{name_field_, corners_field_, roof_.field, garage_.field, bedrooms_.field};
    for (const Size& size : sizes_) fields.push_back(size.field);
    const std::vector<NewHouseFault> faults = faults_of(house_);
    bool whole = unread_.empty();
    for (FormField* field : fields) {
        QString text;
        for (const NewHouseFault& fault : faults) {
            if (field_of(fault.of) == field) text = fault.text;
        }
        for (const auto& [unread, why] : unread_) {
            if (unread == field) text = why;
        }
        const bool of_outline = field != name_field_ && field != garage_.field && field != bedrooms_.field;
        if (of_outline && !text.isEmpty()) whole = false;
        const bool empty = (field == name_field_ && house_.name.empty()) ||
                           (field == corners_field_ && corners_->toPlainText().trimmed().isEmpty());
        field->set_fault(empty && !tried_ ? QString() : text);
    }
    fault_->set_fault({});
    const bool floors = house_.stories > 1 && house_.bedrooms > 0;
    floor_->setVisible(floors);
    if (!floors) floor_->setCurrentIndex(0);
    sketch_->show_house(house_, whole);
    const NewHouseFiles files = new_house_files(QString(), QString::fromStdString(house_.name));
    files_->setText(house_.name.empty() ? QString()
                                        : tr("Writes %1 and %2.").arg(files.job.section('/', -1), files.house.section('/', -1)));
}

void NewHouseForm::make() {
    if (busy_) return;
    tried_ = true;
    read();
    std::vector<FormField*> wrong;
    for (const auto& [field, why] : unread_) wrong.push_back(field);
    for (const NewHouseFault& fault : faults_of(house_)) wrong.push_back(field_of(fault.of));
    if (!wrong.empty()) {
        fault_->set_fault(tr("Not all answers can be used yet; see beside them.", "", static_cast<int>(wrong.size())));
        wrong.front()->field()->setFocus();
        questions_->ensureWidgetVisible(wrong.front());
        return;
    }
    set_busy(true);
    NewHouse house = house_;
    house.surveyed = date_text(today());
    const QString folder = folder_->text().trimmed();
    task_.start([this, house, folder](const RunContext& context) {
        std::function<void()> answer;
        const QString name = QString::fromStdString(house.name);
        const NewHouseFiles files = new_house_files(folder, name);
        const QString of_folder = fault_of_folder(folder, name);
        try {
            if (of_folder.isEmpty()) write_new_house(house, files, context);
            answer = [this, files] {
                set_busy(false);
                accept();
                begin_afresh();
                emit job_wanted(files.job);
            };
            if (!of_folder.isEmpty()) answer = [this, of_folder] { fail(of_folder, {}); };
        } catch (const Cancelled&) {
            throw;
        } catch (const BadInput& bad) {
            answer = [this, fault = OpenFault{QString::fromUtf8(bad.what()), true}] { fail({}, fault); };
        } catch (const std::exception& error) {
            answer = [this, fault = OpenFault{QString::fromUtf8(error.what()), false}] { fail({}, fault); };
        }
        QMetaObject::invokeMethod(this, answer, Qt::QueuedConnection);
    });
}

void NewHouseForm::set_busy(bool busy) {
    busy_ = busy;
    make_->setEnabled(!busy);
}

void NewHouseForm::fail(const QString& of_folder, const OpenFault& fault) {
    set_busy(false);
    if (!of_folder.isEmpty()) {
        folder_field_->set_fault(of_folder);
        folder_->setFocus();
        questions_->ensureWidgetVisible(folder_field_);
    }
    fault_->set_fault(of_folder.isEmpty() ? tr("Nothing was written: %1").arg(fault.text) : tr("Nothing was written."));
}

void NewHouseForm::changeEvent(QEvent* event) {
    QDialog::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) retranslate();
}

void NewHouseForm::retranslate() {
    setWindowTitle(tr("New house"));
    name_field_->set_question(tr("&Name of the job"));
    name_->setPlaceholderText(tr("customer, or street and number"));
    address_field_->set_question(tr("A&ddress, if you like"));
    folder_field_->set_question(tr("&Folder for its two files"));
    folder_field_->button()->setText(tr("C&hoose..."));
    shape_heading_->setText(tr("Outline, from above"));
    build_heading_->setText(tr("How it is built"));
    animals_heading_->setText(tr("Animals to keep out"));
    const QStringList shapes{tr("Rectangle"), tr("L"), tr("T"), tr("U"), tr("Corners")};
    for (QAbstractButton* button : shapes_->buttons()) {
        button->setText(shapes[shapes_->id(button)]);
        button->setAccessibleName(tr("Outline: %1").arg(button->text()));
    }
    const QStringList sizes{tr("&Along the street"), tr("Front to &back"), tr("&Wing along the street"),
                            tr("Wing reaches back b&y")};
    for (std::size_t i = 0; i < sizes_.size(); ++i) sizes_[i].field->set_question(sizes[static_cast<int>(i)]);
    corners_field_->set_question(tr("&Corners in order, one a line: to the right, and back from the street"));
    corners_->setPlaceholderText(tr("0 ft, 0 ft\n40 ft, 0 ft\n40 ft, 28 ft 6 in\n0 ft, 28 ft 6 in"));
    stories_.field->set_question(tr("&Stories"));
    fill(stories_.box, QStringList{tr("One"), tr("Two")});
    garage_.field->set_question(tr("&Garage"));
    fill(garage_.box, QStringList{tr("None"), tr("For one car"), tr("For two cars")});
    bedrooms_.field->set_question(tr("B&edrooms"));
    fill(bedrooms_.box, QStringList{tr("No rooms laid out"), tr("1 bedroom"), tr("2 bedrooms"), tr("3 bedrooms"),
                                    tr("4 bedrooms"), tr("5 bedrooms")});
    baths_.field->set_question(tr("Bathroo&ms"));
    fill(baths_.box, QStringList{tr("1 bath"), tr("2 baths"), tr("3 baths")});
    cladding_.field->set_question(tr("&Outside of the walls"));
    fill(cladding_.box, QStringList{tr("Stucco"), tr("Brick"), tr("Siding")});
    foundation_.field->set_question(tr("It s&tands on"));
    fill(foundation_.box, QStringList{tr("A slab"), tr("A crawl space"), tr("A basement")});
    roof_.field->set_question(tr("&Roof"));
    fill(roof_.box, QStringList{tr("Hip: slopes on all sides"), tr("Gables"), tr("Shed: one slope"), tr("Flat")});
    floor_->setAccessibleName(tr("Floor that the sketch shows"));
    fill(floor_, QStringList{tr("Ground floor"), tr("Upper floor")});
    for (const auto& [box, id] : animals_) box->setText(catalog_text(shipped_pests().find(id)->name));
    promise_->setText(
        tr("Rooms, doors, windows, pipes and vents come at their usual places, gaps with usual widths, marked as assumed. Check "
           "each on site."));
    cancel_->setText(tr("Close"));
    cancel_->setToolTip(tr("Closes this; the answers stay until the program ends"));
    afresh_->setText(tr("Begin afresh"));
    afresh_->setToolTip(tr("Takes back all answers"));
    make_->setText(tr("Ma&ke the house"));
    read();
}

}  // namespace seamward::viewer
