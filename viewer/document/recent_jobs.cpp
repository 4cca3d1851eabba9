// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/recent_jobs.h"

#include <QDir>
#include <QFileInfo>
#include <algorithm>

namespace seamward::viewer {

namespace {

const QString list = QStringLiteral("recent_jobs");

/// The one name of a file; of one that is gone, what is left of it.
QString plain_path(const QString& path) {
    const QFileInfo file(path);
    const QString real = file.canonicalFilePath();
    return real.isEmpty() ? QDir::cleanPath(file.absoluteFilePath()) : real;
}

}  // namespace

RecentJobs::RecentJobs(QObject* parent) : QObject(parent), settings_("Seamward", "Seamward") { read(); }

RecentJobs::RecentJobs(const QString& file, QObject* parent) : QObject(parent), settings_(file, QSettings::IniFormat) { read(); }

void RecentJobs::read() {
    const int count = settings_.beginReadArray(list);
    for (int i = 0; i < count && jobs_.size() < most; ++i) {
        settings_.setArrayIndex(i);
        RecentJob job;
        job.path = settings_.value("path").toString();
        job.name = settings_.value("name").toString();
        job.place = settings_.value("place").toString();
        job.surveyed = settings_.value("surveyed").toString();
        job.opened = QDate::fromString(settings_.value("opened").toString(), Qt::ISODate);
        if (!job.path.isEmpty() && std::ranges::count(jobs_, job.path, &RecentJob::path) == 0) jobs_.push_back(job);
    }
    settings_.endArray();
}

void RecentJobs::write() {
    settings_.remove(list);
    settings_.beginWriteArray(list, static_cast<int>(jobs_.size()));
    for (std::size_t i = 0; i < jobs_.size(); ++i) {
        settings_.setArrayIndex(static_cast<int>(i));
        settings_.setValue("path", jobs_[i].path);
        settings_.setValue("name", jobs_[i].name);
        settings_.setValue("place", jobs_[i].place);
        settings_.setValue("surveyed", jobs_[i].surveyed);
        settings_.setValue("opened", jobs_[i].opened.toString(Qt::ISODate));
    }
    settings_.endArray();
    emit changed();
}

void RecentJobs::add(const QString& path, const Job& job) {
    RecentJob added;
    added.path = plain_path(path);
    added.name = QString::fromStdString(heading(job, path.toStdString()));
    added.place = QString::fromStdString(job.address);
    added.surveyed = QString::fromStdString(job.surveyed);
    added.opened = QDate::currentDate();
    std::erase_if(jobs_, [&](const RecentJob& other) { return other.path == added.path; });
    jobs_.insert(jobs_.begin(), added);
    if (jobs_.size() > most) jobs_.resize(most);
    write();
}

void RecentJobs::remove(const QString& path) {
    if (std::erase_if(jobs_, [&](const RecentJob& job) { return job.path == path; }) > 0) write();
}

void RecentJobs::look() {
    QStringList paths;
    for (const RecentJob& job : jobs_) paths << job.path;
    task_.start([this, paths](const RunContext& context) {
        std::map<QString, Seen> seen;
        for (const QString& path : paths) {
            context.check();
            seen[path] = {plain_path(path), !QFileInfo::exists(path)};
        }
        QMetaObject::invokeMethod(
            this, [this, seen] { take(seen); }, Qt::QueuedConnection);
    });
}

void RecentJobs::take(const std::map<QString, Seen>& seen) {
    bool news = false;
    bool renamed = false;
    std::vector<RecentJob> jobs;
    for (RecentJob job : jobs_) {
        if (const auto found = seen.find(job.path); found != seen.end()) {
            news |= job.missing != found->second.missing;
            renamed |= job.path != found->second.path;
            job.missing = found->second.missing;
            job.path = found->second.path;
        }
        // The newest of those that turn out to be one file stays.
        if (std::ranges::count(jobs, job.path, &RecentJob::path) == 0) jobs.push_back(std::move(job));
    }
    jobs_ = std::move(jobs);
    if (renamed) return write();
    if (news) emit changed();
}

}  // namespace seamward::viewer
