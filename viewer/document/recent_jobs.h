// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDate>
#include <QObject>
#include <QSettings>
#include <QString>
#include <map>
#include <vector>

#include "document/newest_task.h"
#include "job_file/job.h"

namespace seamward::viewer {

/// A job that was open once.
struct RecentJob {
    QString path;      ///< without links and dots
    QString name;      ///< of the job
    QString place;     ///< its address; may be empty
    QString surveyed;  ///< as the job says it; may be empty
    QDate opened;
    bool missing = false;  ///< there is no such file now
};

/// The jobs that were open last, the newest first, each once. Kept from one start to the next in the user's settings.
class RecentJobs : public QObject {
    Q_OBJECT

public:
    static constexpr std::size_t most = 12;

    /// Those of the user.
    explicit RecentJobs(QObject* parent = nullptr);
    /// Those in a file, which need not exist.
    explicit RecentJobs(const QString& file, QObject* parent = nullptr);

    /// The job in that file was opened today.
    void add(const QString& path, const Job& job);
    void remove(const QString& path);
    /// Looks on a thread of its own which files are still there, and which are one and the same; changed() when that is news.
    void look();

    [[nodiscard]] const std::vector<RecentJob>& jobs() const { return jobs_; }

signals:
    void changed();

private:
    /// What a look at the disk found of a path.
    struct Seen {
        QString path;  ///< without links and dots
        bool missing = false;
    };

    void read();
    void write();
    void take(const std::map<QString, Seen>& seen);

    QSettings settings_;
    std::vector<RecentJob> jobs_;
    NewestTask task_;  ///< last, so that its thread ends before the rest goes
};

}  // namespace seamward::viewer
