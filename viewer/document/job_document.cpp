// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/job_document.h"

#include <filesystem>

#include "base/diagnostics.h"

namespace seamward::viewer {

struct JobDocument::Opened {
    std::shared_ptr<const Job> job;
    QString title;
    Trace ways;
};

namespace {

TraceSettings settings_for(const Job& job, int animal) {
    TraceSettings settings;
    settings.top = JobDocument::ways_wanted;
    if (animal != JobDocument::all_animals) settings.pests.push_back(job.pests[static_cast<std::size_t>(animal)]);
    return settings;
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
        result.ways = trace(result.job->survey, settings_for(*result.job, all_animals), context);
        return [this, result] { take(result); };
    });
}

void JobDocument::choose_animal(int animal) {
    if (!has_job() || opening_ || animal == animal_) return;
    if (animal < all_animals || animal >= static_cast<int>(job_->pests.size())) return;
    animal_ = animal;
    set_busy(tr("Looking for ways in"));
    ask([this, animal, job = job_](const RunContext& context) -> Answer {
        return [this, ways = trace(job->survey, settings_for(*job, animal), context)] { take_ways(ways); };
    });
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
    job_ = result.job;
    title_ = result.title;
    emit opened();
    take_ways(result.ways);
}

void JobDocument::fail(const OpenFault& fault) {
    opening_ = false;
    set_busy({});
    emit open_failed(fault);
}

void JobDocument::take_ways(Trace ways) {
    ways_ = std::move(ways);
    way_ = ways_.paths.empty() ? no_way : 0;
    set_busy({});
    emit ways_found();
    emit way_chosen(way_);
}

}  // namespace seamward::viewer
