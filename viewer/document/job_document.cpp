// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/job_document.h"

#include <filesystem>

#include "base/diagnostics.h"
#include "paths/remarks.h"

namespace seamward::viewer {

struct JobDocument::Found {
    Trace ways;
    QStringList remarks;
};

struct JobDocument::Opened {
    std::shared_ptr<const Job> job;
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

}  // namespace

JobDocument::JobDocument(QObject* parent) : QObject(parent) { qRegisterMetaType<OpenFault>(); }

const RankedPath* JobDocument::chosen() const { return way_ == no_way ? nullptr : &ways_.paths[static_cast<std::size_t>(way_)]; }

void JobDocument::open(const QString& path) {
    opening_ = true;
    set_busy(tr("Reading %1").arg(path));
    ask([this, file = std::filesystem::path(path.toStdString())](const RunContext& context) -> Answer {
        Opened result;
        result.job = std::make_shared<const Job>(read_job(file, context));
        result.title = QString::fromStdString(heading(*result.job, file));
        result.found = traced(*result.job, {.top = ways_wanted}, context);
        return [this, result] { take(result); };
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

void JobDocument::trace_again() {
    TraceSettings settings{.top = ways_wanted};
    if (animal_ != all_animals) settings.pests.push_back(job_->pests[static_cast<std::size_t>(animal_)]);
    if (room_ != all_rooms) settings.to.push_back(rooms_[static_cast<std::size_t>(room_)]);
    set_busy(tr("Looking for ways in"));
    ask([this, settings, job = job_](const RunContext& context) -> Answer {
        return [this, found = traced(*job, settings, context)] { take_ways(found); };
    });
}

JobDocument::Found JobDocument::traced(const Job& job, const TraceSettings& settings, const RunContext& context) {
    Found found{trace(job.survey, settings, context), {}};
    for (const std::string& remark : remarks_on(job, settings)) found.remarks << QString::fromStdString(remark);
    return found;
}

void JobDocument::ask(Question question) {
    task_.start([this, question = std::move(question), ticket = ++ticket_](const RunContext& context) {
        Answer answer;
        try {
            answer = question(context);
        } catch (const Cancelled&) {
            throw;
        } catch (const BadInput& bad) {
            answer = [this, fault = OpenFault{QString::fromUtf8(bad.what()), true}] { fail(fault); };
        } catch (const std::exception& error) {
            answer = [this, fault = OpenFault{QString::fromUtf8(error.what()), false}] { fail(fault); };
        }
        // An event of the window's thread; there an answer that was overtaken is dropped.
        const auto deliver = [this, ticket, answer] {
            if (ticket == ticket_) answer();
        };
        QMetaObject::invokeMethod(this, deliver, Qt::QueuedConnection);
    });
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

void JobDocument::take(const Opened& result) {
    opening_ = false;
    ways_ = {};
    way_ = no_way;
    animal_ = all_animals;
    room_ = all_rooms;
    job_ = result.job;
    rooms_ = rooms_of(job_->survey);
    title_ = result.title;
    emit opened();
    take_ways(result.found);
}

void JobDocument::fail(const OpenFault& fault) {
    opening_ = false;
    set_busy({});
    emit open_failed(fault);
}

void JobDocument::take_ways(const Found& found) {
    ways_ = found.ways;
    remarks_ = found.remarks;
    way_ = ways_.paths.empty() ? no_way : 0;
    set_busy({});
    emit ways_found();
    emit way_chosen(way_);
}

}  // namespace seamward::viewer
