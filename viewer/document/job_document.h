// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QMetaType>
#include <QObject>
#include <QString>
#include <QStringList>
#include <memory>

#include "document/newest_task.h"
#include "job_file/job.h"
#include "paths/trace.h"

namespace seamward::viewer {

/// A job that could not be opened.
struct OpenFault {
    QString text;           ///< all of it, a line for each fault
    bool in_input = false;  ///< the input is bad; otherwise the program failed
};

/// The open job, its ways in for the animal and into the room chosen, and the way in chosen. Lives on the window's
/// thread; files are read and ways are traced on a thread of its own.
class JobDocument : public QObject {
    Q_OBJECT

public:
    static constexpr int all_animals = -1;
    static constexpr int all_rooms = -1;
    static constexpr int no_way = -1;
    static constexpr std::size_t ways_wanted = 25;

    explicit JobDocument(QObject* parent = nullptr);

    /// Reads a job file. Ends with opened(), then ways_found(), or with open_failed(), after which the job that was
    /// open before still is.
    void open(const QString& path);
    /// Traces again for one animal, by its position in the job's pests, or for `all_animals`: ways_found() follows.
    void choose_animal(int animal);
    /// The same for one room, by its position in rooms(), or for `all_rooms`.
    void choose_room(int room);
    /// Chooses a way in by its position in ways().paths, or `no_way`.
    void choose_way(int way);

    [[nodiscard]] bool has_job() const { return job_ != nullptr; }
    /// The open job; only when there is one.
    [[nodiscard]] const Job& job() const { return *job_; }
    [[nodiscard]] QString title() const { return title_; }
    [[nodiscard]] const Trace& ways() const { return ways_; }
    /// What in the survey ought to be looked at again, a sentence each.
    [[nodiscard]] const QStringList& remarks() const { return remarks_; }
    /// Rooms of the job where ways in can end, in its order.
    [[nodiscard]] const std::vector<SpaceIndex>& rooms() const { return rooms_; }
    [[nodiscard]] int animal() const { return animal_; }
    [[nodiscard]] int room() const { return room_; }
    [[nodiscard]] int way() const { return way_; }
    /// The way in chosen, or null.
    [[nodiscard]] const RankedPath* chosen() const;
    [[nodiscard]] bool is_busy() const { return busy_; }

signals:
    void opened();
    void open_failed(const seamward::viewer::OpenFault& fault);
    void ways_found();
    void way_chosen(int way);
    /// Work began (`doing` says what) or ended (empty).
    void busy_changed(const QString& doing);

private:
    struct Found;
    struct Opened;
    using Answer = std::function<void()>;                       ///< run on the window's thread
    using Question = std::function<Answer(const RunContext&)>;  ///< run on the document's own

    void ask(Question question);
    void set_busy(const QString& doing);
    void take(const Opened& result);
    void fail(const OpenFault& fault);
    void take_ways(const Found& found);
    void trace_again();
    [[nodiscard]] static Found traced(const Job& job, const TraceSettings& settings, const RunContext& context);

    std::shared_ptr<const Job> job_;
    QString title_;
    Trace ways_;
    QStringList remarks_;
    std::vector<SpaceIndex> rooms_;
    int animal_ = all_animals;
    int room_ = all_rooms;
    int way_ = no_way;
    bool busy_ = false;
    bool opening_ = false;
    std::uint64_t ticket_ = 0;  ///< of the newest question; answers to older ones are dropped
    NewestTask task_;           ///< last, so that its thread ends before the rest goes
};

}  // namespace seamward::viewer

Q_DECLARE_METATYPE(seamward::viewer::OpenFault)
