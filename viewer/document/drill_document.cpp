// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/drill_document.h"

#include <algorithm>
#include <filesystem>
#include <utility>

#include "base/diagnostics.h"
#include "document/translations.h"
#include "exchange/write_whole_file.h"
#include "house/route.h"
#include "job_file/model_house.h"
#include "teach/match.h"
#include "teach/progress.h"

namespace seamward::viewer {

struct DrillDocument::Read {
    QString path;
    std::shared_ptr<const DrillRound> round;
    std::shared_ptr<const Job> hidden;
    std::shared_ptr<const House> solids;
    std::shared_ptr<const PreparedHouse> prepared;
};

namespace {

Translator speaker() { return Translator(spoken() == "es" ? Language::spanish : Language::english); }

/// The solids of the house that is inspected: they do not say which gap they bound.
std::shared_ptr<const House> inspected_solids(Job& hidden) {
    if (hidden.house.parts.empty()) return nullptr;
    auto house = std::make_shared<House>(hidden.house);
    for (Part& part : house->parts) std::fill(part.bounds.begin(), part.bounds.end(), GapIndex{});
    hidden.house.parts.clear();
    return house;
}

/// The job for a picture in which only the gaps of one way stand.
std::shared_ptr<const Job> job_with(const Job& job, const std::vector<GapIndex>& gaps) {
    auto only = std::make_shared<Job>(job);
    for (std::uint32_t i = 0; i < only->survey.gaps.size(); ++i) {
        if (std::ranges::find(gaps, GapIndex{i}) == gaps.end()) only->survey.gaps[i].at.reset();
    }
    return only;
}

OpenFault fault_of(const std::exception& error) {
    return {QString::fromUtf8(error.what()), dynamic_cast<const BadInput*>(&error) != nullptr};
}

}  // namespace

DrillDocument::DrillDocument(QObject* parent) : QObject(parent) { qRegisterMetaType<OpenFault>(); }

void DrillDocument::open(const QString& path) {
    emit busy_changed(tr("Reading %1").arg(path));
    const auto answer = [this, ticket = ++ticket_](const std::function<void()>& act) {
        QMetaObject::invokeMethod(
            this,
            [this, ticket, act] {
                if (ticket != ticket_) return;
                emit busy_changed({});
                act();
            },
            Qt::QueuedConnection);
    };
    task_.start([this, path, prepare = prepare_, answer](const RunContext& context) {
        try {
            Read read{path, nullptr, nullptr, nullptr, nullptr};
            DrillRound round = read_drill(path.toStdString(), context, Make::solids);
            if (round.job.model) read_model_house(round.job, context);
            Job hidden = job_to_inspect(round);
            read.solids = inspected_solids(hidden);
            if (read.solids && prepare) read.prepared = prepare(*read.solids, context);
            read.hidden = std::make_shared<const Job>(std::move(hidden));
            round.job.house.parts.clear();
            read.round = std::make_shared<const DrillRound>(std::move(round));
            answer([this, read] { take(read); });
        } catch (const Cancelled&) {
            throw;
        } catch (const std::exception& error) {
            answer([this, fault = fault_of(error)] { emit open_failed(fault); });
        }
    });
}

void DrillDocument::take(const Read& read) {
    path_ = read.path;
    round_ = read.round;
    hidden_ = read.hidden;
    solids_ = read.solids;
    prepared_ = read.prepared;
    begin();
    show_hidden(false);
    emit opened();
}

void DrillDocument::begin() {
    answers_.assign(round_->places.size(), std::nullopt);
    entry_.reset();
    kept_.reset();
    looked_.clear();
    result_.reset();
    handed_in_ = {};
    told_.reset();
    feedback_.reset();
    chosen_ = no_place;
}

void DrillDocument::show_hidden(bool keep) { shown_.show({hidden_, solids_, prepared_, {}, {}, path_, title()}, keep); }

void DrillDocument::close() {
    ++ticket_;  // what is being read is not wanted any more
    emit busy_changed({});
    round_.reset();
    result_.reset();
    answers_.clear();
    chosen_ = no_place;
    emit closed();
}

const Briefing& DrillDocument::told() const {
    if (!told_ || told_in_ != spoken()) {
        told_ = briefing(*round_, speaker());
        told_in_ = spoken();
    }
    return *told_;
}

void DrillDocument::choose(int place) {
    if (!has_drill()) return;
    if (place < 0 || place >= static_cast<int>(place_count())) place = no_place;
    if (place == chosen_) return;
    chosen_ = place;
    if (result_) show_way(place);
    emit place_chosen(place);
}

std::optional<std::size_t> DrillDocument::place_near(const Point& at) const {
    return match(*round_, FoundAt{std::nullopt, std::nullopt, at}).place;
}

void DrillDocument::look_closely(std::size_t place) {
    if (looked_.insert(place).second) emit answers_changed();
}

QStringList DrillDocument::close_look(std::size_t place) const {
    QStringList lines;
    if (!has_looked(place)) return lines;
    for (const std::string& note : seamward::close_look(*round_, place, speaker())) lines << QString::fromStdString(note);
    return lines;
}

const PlaceAnswer* DrillDocument::answer(std::size_t place) const {
    const std::optional<PlaceAnswer>& one = answers_.at(place);
    return one ? &*one : nullptr;
}

void DrillDocument::set_answer(const PlaceAnswer& answer) {
    if (!has_drill() || result_ || !answer.where.place) return;
    answers_.at(*answer.where.place) = answer;
    emit answers_changed();
}

void DrillDocument::remove_answer(std::size_t place) {
    if (result_) return;
    answers_.at(place).reset();
    if (entry_ == place) entry_.reset();
    emit answers_changed();
}

void DrillDocument::set_entry(std::optional<std::size_t> place) {
    if (result_ || !round_->drill.seen || place == entry_) return;
    entry_ = place;
    emit answers_changed();
}

std::size_t DrillDocument::answered() const {
    return static_cast<std::size_t>(
        std::ranges::count_if(answers_, [](const std::optional<PlaceAnswer>& one) { return one.has_value(); }));
}

int DrillDocument::next_open_question() const {
    const auto count = static_cast<int>(place_count());
    for (int step = 1; step <= count; ++step) {
        const int place = (std::max(chosen_, -1) + step) % count;
        if (place != chosen_ && answer(static_cast<std::size_t>(place)) == nullptr) return place;
    }
    return no_place;
}

Answers DrillDocument::answers() const {
    if (result_) return handed_in_;
    Answers all{trainee_.toStdString(), round_->drill.id, today(), std::nullopt, {}};
    if (entry_) all.entry = FoundAt{entry_, std::nullopt, std::nullopt};
    for (const std::optional<PlaceAnswer>& one : answers_) {
        if (one) all.findings.push_back(*one);
    }
    return all;
}

void DrillDocument::hand_in() {
    if (!has_drill() || result_) return;
    handed_in_ = answers();
    result_ = score(*round_, handed_in_);
    feedback_.reset();
    chosen_ = no_place;
    show_way(no_place);
    emit handed_in();
    emit place_chosen(no_place);
}

const DrillFeedback& DrillDocument::feedback() const {
    if (!feedback_ || feedback_in_ != spoken()) {
        feedback_ = seamward::feedback(*round_, handed_in_, *result_, speaker(), RunContext());
        feedback_in_ = spoken();
    }
    return *feedback_;
}

PlaceSign DrillDocument::sign_of(std::size_t place) const {
    const PlaceAnswer* said = answer(place);
    if (!result_) return said == nullptr ? PlaceSign::nothing : said->open ? PlaceSign::told_open : PlaceSign::told_tight;
    const auto harms_here = [&](const Harm& harm) { return result_->matched[harm.finding].place == place; };
    const PlaceResult& judged = result_->places[place];
    if (std::ranges::any_of(result_->harms, harms_here)) return PlaceSign::harm;
    if (judged.false_alarm) return PlaceSign::false_alarm;
    if (judged.missed()) return PlaceSign::missed;
    if (judged.most > 0) return judged.points == judged.most ? PlaceSign::right : PlaceSign::partly;
    return said != nullptr && !said->open ? PlaceSign::right : PlaceSign::nothing;
}

void DrillDocument::show_way(int place) {
    GivenJob given{nullptr, solids_, prepared_, {}, {}, path_, title()};
    const auto& places = feedback().places;
    const auto told = std::ranges::find(places, static_cast<std::size_t>(place), &PlaceFeedback::place);
    std::vector<GapIndex> gaps;
    if (place != no_place && told != places.end() && told->way) {
        const MissedWay& way = *told->way;
        gaps = way.path.gaps;
        given.ways.paths.push_back({way.path, way.pinch, way.pinch_gap, false});
        const House& house = round_->job.house;
        const bool known = !round_->job.model && !house.survey.spaces.empty();
        given.routes.push_back(known ? route(house, way.path.gaps, way.path.spaces) : std::vector<Point>());
    }
    given.job = job_with(round_->job, gaps);
    shown_.show(given, true);
}

void DrillDocument::begin_again() {
    if (!has_drill()) return;
    begin();
    show_hidden(true);
    emit opened();
}

void DrillDocument::set_trainee(const QString& name, const QString& progress_file) {
    trainee_ = name.simplified();
    progress_file_ = progress_file.trimmed();
    if (result_ && !kept_) handed_in_.trainee = trainee_.toStdString();
    emit trainee_changed();
}

QString DrillDocument::keep_progress() {
    if (!result_ || kept_ || trainee_.isEmpty() || progress_file_.isEmpty()) return {};
    try {
        const std::string file = progress_file_.toStdString();
        kept_ = add_attempt(attempt_of(*round_, handed_in_, *result_), file, file);
    } catch (const BadInput& bad) {
        return QString::fromUtf8(bad.what());
    }
    emit trainee_changed();
    return {};
}

QString DrillDocument::save_answers(const QString& path) const {
    try {
        const std::string file = path.toStdString();
        write_whole_file(file, file, written_answers(answers(), *round_));
        return {};
    } catch (const BadInput& bad) {
        return QString::fromUtf8(bad.what());
    }
}

}  // namespace seamward::viewer
