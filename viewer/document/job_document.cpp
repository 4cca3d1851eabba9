// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/job_document.h"

#include <algorithm>
#include <filesystem>
#include <map>
#include <utility>

#include "base/diagnostics.h"
#include "base/document.h"
#include "base/file_io.h"
#include "document/translations.h"
#include "house/route.h"
#include "job_file/model_house.h"
#include "paths/remarks.h"

namespace seamward::viewer {

struct JobDocument::Found {
    Trace ways;
    std::vector<std::vector<Point>> routes;
    std::vector<Message> remarks;
};

struct JobDocument::Opened {
    JobSource source;
    bool text_of_file = false;
    std::shared_ptr<const Job> filed, job;
    std::vector<TreatedGap> on_trial;
    TraceSettings asked;
    QString title;
    Found found;
};

namespace {

std::vector<SpaceIndex> rooms_of(const Survey& survey) {
    std::vector<SpaceIndex> rooms;
    for (std::uint32_t i = 0; i < survey.spaces.size(); ++i) {
        if (survey.spaces[i].is_living() && !survey.spaces[i].starts_paths()) rooms.push_back({i});
    }
    return rooms;
}

Job parsed(const JobSource& source, const RunContext& context, Make make) {
    const std::filesystem::path file(source.path.toStdString());
    Job job = parse_job(*source.text, file, context, make, source.newer);
    if (make == Make::solids && job.model) read_model_house(job, context);
    return job;
}

/// The job with gaps closed on trial.
std::shared_ptr<const Job> with_closed(const std::shared_ptr<const Job>& filed, const std::vector<TreatedGap>& closed) {
    if (closed.empty()) return filed;
    auto job = std::make_shared<Job>(*filed);
    for (const TreatedGap& treated : closed) close_gap(job->survey.gaps[treated.gap.value], treated.opening);
    if (!job->house.survey.spaces.empty()) job->house.survey = job->survey;
    return job;
}

/// The same gaps in a job that was read again, by their ids; those that are gone are left out.
std::vector<TreatedGap> found_again(const std::vector<TreatedGap>& gaps, const Survey& before, const Survey& now) {
    std::map<std::string, GapIndex> known;
    for (std::uint32_t i = 0; i < now.gaps.size(); ++i) known[now.gaps[i].id] = {i};
    std::vector<TreatedGap> all;
    for (const TreatedGap& gap : gaps) {
        const auto at = known.find(before[gap.gap].id);
        if (at != known.end()) all.push_back({at->second, gap.opening});
    }
    return all;
}

std::vector<std::string> ids_of(const Survey& survey, const RankedPath& way) {
    std::vector<std::string> ids;
    for (const GapIndex gap : way.path.gaps) ids.push_back(survey[gap].id);
    return ids;
}

/// What was asked of one job, of the same job read again.
TraceSettings same_asked(const TraceSettings& asked, const Survey& before, const Job& now) {
    TraceSettings same{.top = asked.top};
    for (const Pest& pest : asked.pests) {
        const auto at = std::ranges::find(now.pests, pest.id, &Pest::id);
        if (at != now.pests.end()) same.pests.push_back(*at);
    }
    for (const SpaceIndex room : asked.to) {
        const auto at = std::ranges::find(now.survey.spaces, before[room].id, &Space::id);
        if (at != now.survey.spaces.end()) same.to.push_back({static_cast<std::uint32_t>(at - now.survey.spaces.begin())});
    }
    return same;
}

}  // namespace

JobDocument::JobDocument(QObject* parent) : QObject(parent) { qRegisterMetaType<OpenFault>(); }

const RankedPath* JobDocument::chosen() const { return way_ == no_way ? nullptr : &ways_.paths[static_cast<std::size_t>(way_)]; }

void JobDocument::open(const QString& path) { read({path, std::nullopt}, false, true); }

void JobDocument::read(const JobSource& source, bool keep, bool solids) {
    solids_wanted_ = solids_wanted_ || solids;  // also when this reading overtakes one that wanted them
    keep = keep && has_job();
    opening_ = true;
    opening_another_ = !keep;
    set_busy(keep ? tr("Looking for ways in") : tr("Reading %1").arg(source.path));
    const auto question = [=, this, wanted = has_job() ? settings() : TraceSettings(), trial = on_trial_,
                           before = filed_](const RunContext& context) -> Answer {
        Opened result;
        result.source = source;
        result.text_of_file = !source.text;
        if (!source.text)
            result.source.text = read_file(source.path.toStdString(), source.path.toStdString(), Document::most_bytes);
        result.filed = std::make_shared<const Job>(parsed(result.source, context, Make::survey));
        if (keep) result.on_trial = found_again(trial, before->survey, result.filed->survey);
        result.job = with_closed(result.filed, result.on_trial);
        result.title = QString::fromStdString(heading(*result.job, source.path.toStdString()));
        result.asked = keep ? same_asked(wanted, before->survey, *result.job) : TraceSettings{.top = ways_wanted};
        result.found = traced(*result.job, result.asked, context);
        return [this, result, keep] {
            building_ = building_ || solids_wanted_;
            take(result, keep);
            if (std::exchange(solids_wanted_, false)) build_solids(result.source);
        };
    };
    ask(task_, ticket_, question, [this, keep](const OpenFault& fault) {
        opening_ = false;
        set_busy({});
        if (keep)
            emit change_failed(fault);
        else
            emit open_failed(fault);
    });
}

void JobDocument::show(const GivenJob& given, bool keep) {
    ++ticket_;  // what is being read or built is of the job before
    ++solids_ticket_;
    opening_ = building_ = solids_wanted_ = false;
    filed_ = job_ = given.job;
    solids_ = given.solids;
    prepared_ = given.prepared;
    on_trial_.clear();
    ways_ = {};
    routes_.clear();
    way_ = no_way;
    hold_.clear();
    rooms_ = rooms_of(job_->survey);
    animal_ = all_animals;
    room_ = all_rooms;
    path_ = given.path;
    title_ = given.title;
    text_.clear();
    newer_.clear();
    text_of_file_ = false;
    if (keep) {
        emit changed();
    } else {
        emit opened();
    }
    take_ways({given.ways, given.routes, {}});
}

void JobDocument::build_solids(const JobSource& source) {
    building_ = !filed_->house.survey.spaces.empty() || filed_->model;
    if (!building_) return;
    const auto question = [this, source, prepare = prepare_](const RunContext& context) -> Answer {
        const auto house = std::make_shared<const House>(std::move(parsed(source, context, Make::solids).house));
        const auto prepared = prepare ? prepare(*house, context) : nullptr;
        return [this, house, prepared] {
            building_ = false;
            solids_ = house;
            prepared_ = prepared;
            emit solids_ready();
        };
    };
    ask(solids_task_, solids_ticket_, question, [this](const OpenFault& fault) {
        building_ = false;
        emit solids_failed(fault);
    });
}

void JobDocument::choose_animal(int animal) {
    if (!has_job() || opening_ || animal == animal_) return;
    if (animal < all_animals || animal >= static_cast<int>(job_->pests.size())) return;
    animal_ = animal;
    trace_again();
}

void JobDocument::choose_room(int room) {
    if (!has_job() || opening_ || room == room_) return;
    if (room < all_rooms || room >= static_cast<int>(rooms_.size())) return;
    room_ = room;
    trace_again();
}

void JobDocument::close_on_trial(std::vector<TreatedGap> gaps) {
    if (!has_job() || opening_) return;
    hold_ = ids_of_chosen();
    on_trial_ = std::move(gaps);
    job_ = with_closed(filed_, on_trial_);
    trace_again();
}

std::vector<std::string> JobDocument::ids_of_chosen() const {
    return chosen() == nullptr ? std::vector<std::string>() : ids_of(job_->survey, *chosen());
}

TraceSettings JobDocument::settings() const {
    TraceSettings settings{.top = ways_wanted};
    if (animal_ != all_animals) settings.pests.push_back(job_->pests[static_cast<std::size_t>(animal_)]);
    if (room_ != all_rooms) settings.to.push_back(rooms_[static_cast<std::size_t>(room_)]);
    return settings;
}

void JobDocument::trace_again() {
    set_busy(tr("Looking for ways in"));
    const auto question = [this, settings = settings(), job = job_](const RunContext& context) -> Answer {
        return [this, found = traced(*job, settings, context)] { take_ways(found); };
    };
    ask(task_, ticket_, question, [this](const OpenFault& fault) { fail(fault); });
}

JobDocument::Found JobDocument::traced(const Job& job, const TraceSettings& settings, const RunContext& context) {
    Found found{trace(job.survey, settings, context), {}, {}};
    for (const RankedPath& way : found.ways.paths) {
        // Of a model only its gaps are known, and a line between two of them may lead through a wall.
        const bool known = !job.model && !job.house.survey.spaces.empty();
        found.routes.push_back(known ? route(job.house, way.path.gaps, way.path.spaces) : std::vector<Point>());
    }
    found.remarks = remarks_on(job, settings);
    return found;
}

void JobDocument::ask(NewestTask& task, std::uint64_t& newest, Question question, Failure failure) {
    const auto work = [this, question = std::move(question), failure = std::move(failure), &newest,
                       ticket = ++newest](const RunContext& context) {
        Answer answer;
        try {
            answer = question(context);
        } catch (const Cancelled&) {
            throw;
        } catch (const BadInput& bad) {
            answer = [failure, fault = OpenFault{QString::fromUtf8(bad.what()), true}] { failure(fault); };
        } catch (const std::exception& error) {
            answer = [failure, fault = OpenFault{QString::fromUtf8(error.what()), false}] { failure(fault); };
        }
        // An event of the window's thread; there an answer that was overtaken is dropped.
        const auto deliver = [&newest, ticket, answer] {
            if (ticket == newest) answer();
        };
        QMetaObject::invokeMethod(this, deliver, Qt::QueuedConnection);
    };
    task.start(work);
}

void JobDocument::choose_way(int way) {
    if (way < 0 || way >= static_cast<int>(ways_.paths.size())) way = no_way;
    if (way == way_) return;
    way_ = way;
    emit way_chosen(way_);
}

void JobDocument::set_busy(const QString& doing) {
    busy_ = !doing.isEmpty();
    emit busy_changed(doing);
}

void JobDocument::take(const Opened& result, bool keep) {
    opening_ = false;
    hold_ = keep ? ids_of_chosen() : std::vector<std::string>();
    if (!keep) {
        solids_.reset();
        prepared_.reset();
        ++solids_ticket_;  // what is being built was of the job before
    }
    ways_ = {};
    routes_ = {};
    way_ = no_way;
    filed_ = result.filed;
    job_ = result.job;
    on_trial_ = result.on_trial;
    rooms_ = rooms_of(job_->survey);
    const auto position = [](const auto& all, const auto& one, auto name) {
        const auto at = std::ranges::find(all, one, name);
        return at == all.end() ? -1 : static_cast<int>(at - all.begin());
    };
    animal_ = result.asked.pests.empty() ? all_animals : position(job_->pests, result.asked.pests.front().id, &Pest::id);
    room_ = all_rooms;
    for (std::size_t i = 0; i < rooms_.size(); ++i) {
        if (!result.asked.to.empty() && rooms_[i] == result.asked.to.front()) room_ = static_cast<int>(i);
    }
    path_ = result.source.path;
    title_ = result.title;
    text_ = *result.source.text;
    newer_ = result.source.newer;
    text_of_file_ = result.text_of_file;
    if (keep) {
        emit changed();
    } else {
        emit opened();
    }
    take_ways(result.found);
}

void JobDocument::fail(const OpenFault& fault) {
    opening_ = false;
    set_busy({});
    emit open_failed(fault);
}

QStringList JobDocument::remarks() const {
    QStringList all;
    for (const Message& remark : remarks_) all << spoken_text(remark);
    return all;
}

void JobDocument::take_ways(const Found& found) {
    ways_ = found.ways;
    routes_ = found.routes;
    remarks_ = found.remarks;
    way_ = ways_.paths.empty() ? no_way : 0;
    for (std::size_t i = 0; i < ways_.paths.size(); ++i) {
        if (ids_of(job_->survey, ways_.paths[i]) == hold_) way_ = static_cast<int>(i);
    }
    hold_.clear();
    set_busy({});
    emit ways_found();
    emit way_chosen(way_);
}

}  // namespace seamward::viewer
