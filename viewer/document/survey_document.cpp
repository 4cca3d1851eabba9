// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/survey_document.h"

#include <QCryptographicHash>
#include <QDir>
#include <QFileInfo>
#include <algorithm>
#include <filesystem>

#include "base/diagnostics.h"
#include "base/document.h"
#include "base/file_io.h"
#include "document/edit_words.h"
#include "exchange/write_whole_file.h"

namespace seamward::viewer {

namespace {

constexpr int draft_delay = 400;  ///< milliseconds; with the time to write, well under the second that may be lost

QByteArray print_of(const std::string& text) {
    QCryptographicHash hash(QCryptographicHash::Sha256);
    hash.addData(text.data(), static_cast<int>(text.size()));
    return hash.result();
}

/// Empty when there is no such file.
QByteArray print_of_file(const QString& path) {
    try {
        return print_of(read_file(path.toStdString(), path.toStdString(), Document::most_bytes));
    } catch (const BadInput&) {
        return {};
    }
}

/// The path of a house file that only this job has; no such file is there.
QString own_house(const QFileInfo& job, const QFileInfo& house) {
    QString path = job.dir().absoluteFilePath(house.fileName());
    const QString beside = job.dir().absoluteFilePath(job.completeBaseName() + QStringLiteral("-house"));
    for (int i = 1; QFileInfo::exists(path); ++i)
        path = beside + (i > 1 ? QStringLiteral("-%1.").arg(i) : QStringLiteral(".")) + house.suffix();
    return path;
}

/// What is wrong, without the name of the file that is open anyway.
QString words_of(const BadInput& bad) {
    QStringList all;
    for (const Diagnostic& one : bad.diagnostics()) {
        const QString what = QString::fromStdString(one.what);
        all << (one.mend.empty() ? what : SurveyDocument::tr("%1: %2").arg(what, QString::fromStdString(one.mend)));
    }
    return all.join('\n');
}

}  // namespace

SurveyDocument::SurveyDocument(JobDocument& document, QObject* parent) : QObject(parent), document_(document) {
    draft_timer_.setSingleShot(true);
    draft_timer_.setInterval(draft_delay);
    connect(&draft_timer_, &QTimer::timeout, this, [this] { drafts_.keep(job_file(), house_); });
    connect(&drafts_, &DraftStore::failed, this, &SurveyDocument::draft_failed);
    connect(&document_, &JobDocument::opened, this, &SurveyDocument::take_opened);
    connect(&document_, &JobDocument::changed, this, [this] {
        if (is_read()) good_ = position_;
    });
    connect(&document_, &JobDocument::change_failed, this, &SurveyDocument::take_back_failed);
    connect(&document_, &JobDocument::open_failed, this, [this] {
        if (!recovering_) return;
        recovering_.reset();
        drafts_.let_go();
        if (modified_) draft_timer_.start();  // the job that still is open keeps its own
    });
    if (document_.has_job()) take_opened();
}

SurveyDocument::~SurveyDocument() {
    if (recovering_) drafts_.let_go();  // it was not opened yet, and whoever starts next is offered it
}

void SurveyDocument::take_opened() {
    // Another job may have been opened while the draft was on its way.
    if (recovering_ && (document_.path() != recovering_->job.path || document_.text() != recovering_->job.text)) {
        recovering_.reset();
        drafts_.let_go();
    }
    text_ = document_.text();
    history_.clear();
    position_ = bytes_ = 0;
    good_ = 0;
    draft_timer_.stop();
    house_ = recovering_ ? recovering_->house : std::nullopt;
    if (house_) house_as_read_ = house_->text;
    if (recovering_)
        disk_print_ = recovering_->job.disk_print;
    else
        disk_print_ = document_.is_text_of_file() ? print_of(text_) : print_of_file(document_.path());
    recovering_.reset();
    text_changed();
    emit history_changed();
}

bool SurveyDocument::change(const std::vector<Edit>& edits) {
    if (!document_.has_job() || document_.is_opening_another() || edits.empty()) return false;
    try {
        if (std::ranges::any_of(edits, is_of_house)) load_house();
        SurveyStep step;
        step.text = edit_words(edits.front(), *document_.filed());
        std::string job = text_, house = house_ ? house_->text : std::string(), first;
        for (const Edit& edit : edits) {
            for (const bool of_house : {true, false}) {
                if (!(of_house ? is_of_house(edit) : is_of_job(edit))) continue;
                std::string& text = of_house ? house : job;
                Edited edited = apply(text, (of_house ? house_->path : job_file().path).toStdString(), edit);
                text = std::move(edited.text);
                if (first.empty()) first = std::move(edited.id);
                if (!edited.change.empty()) step.parts.push_back({std::move(edited.change), of_house});
            }
            step.solids = step.solids || changes_solids(edit);
        }
        changed_id_ = std::move(first);
        if (!step.parts.empty()) add(std::move(step));
        return true;
    } catch (const BadInput& bad) {
        emit edit_failed(words_of(bad));
        return false;
    }
}

/// Of a described house other widths, and what stands on it. The ways through gaps of a model are told by position, so that its
/// solids have to be told the new ones.
bool SurveyDocument::changes_solids(const Edit& edit) const {
    if (is_of_house(edit)) return true;
    const Job& job = *document_.filed();
    if (job.model) return std::holds_alternative<AddGap>(edit) || std::holds_alternative<RemoveGap>(edit);
    const auto* one = std::get_if<ChangeGap>(&edit);
    if (one == nullptr || !one->shape) return false;
    const auto at = std::ranges::find(job.survey.gaps, one->id, &Gap::id);
    return static_cast<std::size_t>(at - job.survey.gaps.begin()) < job.gaps_of_house;
}

void SurveyDocument::load_house() {
    if (house_) return;
    const std::filesystem::path path = house_of(text_, job_file().path.toStdString());
    if (path.empty())
        throw BadInput({{document_.path().toStdString(), {}, tr("This job has no described house.").toStdString(), ""}});
    EditedFile house{QString::fromStdString(path.string()), read_file(path, path.string(), Document::most_bytes), {}};
    house.disk_print = print_of(house.text);
    house_as_read_ = house.text;
    house_ = std::move(house);
}

FileTexts SurveyDocument::newer_of(const std::optional<EditedFile>& house) {
    FileTexts texts;
    std::error_code error;
    if (house) texts[std::filesystem::weakly_canonical(house->path.toStdString(), error)] = house->text;
    return texts;
}

EditedFile SurveyDocument::job_file() const { return {QFileInfo(document_.path()).absoluteFilePath(), text_, disk_print_}; }

void SurveyDocument::push(Command command) {
    add({std::move(command.text), {}, false, std::move(command.redo), std::move(command.undo)});
}

void SurveyDocument::add(SurveyStep step) {
    cut_history(position_);
    bytes_ += step.bytes();
    history_.push_back(std::move(step));
    ++position_;
    while (bytes_ > limit_ && history_.size() > 1) {
        bytes_ -= history_.front().bytes();
        history_.pop_front();
        --position_;
        good_ = good_.value_or(0) > 0 ? std::optional(*good_ - 1) : std::nullopt;
    }
    run(history_.back(), true);
    emit history_changed();
}

void SurveyDocument::cut_history(std::size_t steps) {
    while (history_.size() > steps) {
        bytes_ -= history_.back().bytes();
        history_.pop_back();
    }
    if (good_ && *good_ > steps) good_.reset();
}

void SurveyDocument::undo() {
    if (!can_undo() || document_.is_opening_another()) return;
    --position_;
    run(history_[position_], false);
    emit history_changed();
}

void SurveyDocument::redo() {
    if (!can_redo() || document_.is_opening_another()) return;
    ++position_;
    run(history_[position_ - 1], true);
    emit history_changed();
}

void SurveyDocument::run(const SurveyStep& step, bool forward) {
    if (step.parts.empty()) {
        (forward ? step.redo : step.undo)();
        return;
    }
    const auto make = [this](const TextChange& change, bool of_house) {
        std::string& text = of_house ? house_->text : text_;
        text = seamward::changed(text, change);
    };
    if (forward) {
        for (const SurveyStep::Part& part : step.parts) make(part.change, part.of_house);
    } else {
        for (auto part = step.parts.rbegin(); part != step.parts.rend(); ++part) make(part->change.inverse(), part->of_house);
    }
    text_changed();
    document_.read({document_.path(), text_, newer()}, true, step.solids);
}

void SurveyDocument::take_back_failed(const OpenFault& fault) {
    if (is_read()) return;
    const std::size_t good = good_.value_or(0);
    if (!good_ || good <= position_) cut_history(good);
    position_ = good;
    good_ = good;
    text_ = document_.text();
    if (house_) house_->text = document_.newer().empty() ? house_as_read_ : document_.newer().begin()->second;
    text_changed();
    emit history_changed();
    emit edit_failed(fault.text);
}

void SurveyDocument::text_changed() {
    update_modified();
    if (recovering_) return;  // the draft at hand is that of the job on its way
    if (!modified_) {
        draft_timer_.stop();
        drafts_.forget();
    } else if (!draft_timer_.isActive()) {  // changes that go on and on do not put it off
        draft_timer_.start();
    }
}

void SurveyDocument::update_modified() {
    const bool modified = print_of(text_) != disk_print_ || (house_ && print_of(house_->text) != house_->disk_print);
    if (modified == modified_) return;
    modified_ = modified;
    emit modified_changed(modified_);
}

QString SurveyDocument::undo_text() const { return can_undo() ? tr("Undo: %1").arg(history_[position_ - 1].text) : tr("Undo"); }

QString SurveyDocument::redo_text() const { return can_redo() ? tr("Redo: %1").arg(history_[position_].text) : tr("Redo"); }

bool SurveyDocument::differs_on_disk() const {
    const auto differs = [](const EditedFile& file) {
        const QByteArray now = print_of_file(file.path);
        return !now.isEmpty() && now != file.disk_print && now != print_of(file.text);
    };
    return differs(job_file()) || (house_ && differs(*house_));
}

bool SurveyDocument::write(const QString& path) {
    try {
        // The house first: a job that names what its house does not have yet could not be opened.
        std::vector<WholeFile> files;
        if (house_ && print_of(house_->text) != house_->disk_print)
            files.push_back({house_->path.toStdString(), house_->path.toStdString(), house_->text});
        files.push_back({path.toStdString(), path.toStdString(), text_});
        write_whole_files(files);
    } catch (const BadInput& bad) {
        emit save_failed(words_of(bad));
        return false;
    }
    disk_print_ = print_of(text_);
    if (house_) house_->disk_print = print_of(house_->text);
    text_changed();
    emit saved(path);
    return true;
}

SurveyDocument::Saved SurveyDocument::save(Overwrite overwrite) {
    if (!document_.has_job()) return Saved::failed;
    if (overwrite == Overwrite::no && differs_on_disk()) {
        emit file_changed_elsewhere(document_.path());
        return Saved::changed_elsewhere;
    }
    return write(document_.path()) ? Saved::done : Saved::failed;
}

SurveyDocument::Saved SurveyDocument::save_as(const QString& path) {
    if (!document_.has_job()) return Saved::failed;
    const QFileInfo from(document_.path()), to(path);
    if (from.absoluteFilePath() == to.absoluteFilePath()) return save();
    const auto is_json = [](const QFileInfo& file) { return file.suffix() == "json"; };
    if (is_json(from) != is_json(to)) {
        emit save_failed(is_json(from) ? tr("This job is written in JSON. Choose a name that ends in .json.")
                                       : tr("This job is written in YAML. Choose a name that ends in .yaml."));
        return Saved::failed;
    }
    const std::string before = text_;
    const std::optional<EditedFile> house_before = house_;
    try {
        MoveJob move{from.absolutePath().toStdString(), to.absolutePath().toStdString()};
        if (house_ && print_of(house_->text) != house_->disk_print) {
            house_ = EditedFile{own_house(to, QFileInfo(house_->path)), house_->text, {}};
            move.house = QFileInfo(house_->path).fileName().toStdString();
        }
        text_ = apply(text_, document_.path().toStdString(), move).text;
    } catch (const BadInput& bad) {
        house_ = house_before;
        emit save_failed(words_of(bad));
        return Saved::failed;
    }
    if (!write(path)) {
        text_ = before;
        house_ = house_before;
        return Saved::failed;
    }
    if (house_) house_as_read_ = house_->text;
    if (text_ != before) {  // older changes no longer fit the text
        cut_history(0);
        position_ = 0;
        good_ = 0;
        emit history_changed();
    }
    document_.read({path, text_, newer()}, true, false);
    return Saved::done;
}

bool SurveyDocument::recover(const Draft& draft) {
    if (document_.is_opening_another()) return false;
    std::optional<Draft> now = drafts_.adopt(draft.id);
    if (!now) return false;
    draft_timer_.stop();  // the job that still is open does not go into the draft of the other
    recovering_ = std::move(now);
    document_.read({recovering_->job.path, recovering_->job.text, newer_of(recovering_->house)}, false, true);
    return true;
}

}  // namespace seamward::viewer
