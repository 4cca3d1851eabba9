// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QMetaType>
#include <QObject>
#include <QString>
#include <QStringList>
#include <memory>
#include <vector>

#include "base/message.h"
#include "document/newest_task.h"
#include "job_file/job.h"
#include "paths/trace.h"
#include "plan/treated_gap.h"

namespace seamward::viewer {

/// What the picture makes of solids before it shows them; of a folder that uses this one.
struct PreparedHouse;

/// A job that could not be opened.
struct OpenFault {
    QString text;           ///< all of it, a line for each fault
    bool in_input = false;  ///< the input is bad; otherwise the program failed
};

/// What is to be read as a job: a file, and what stands in it where that is newer than the file.
struct JobSource {
    QString path;
    std::optional<std::string> text;  ///< nothing: what the file says
    FileTexts newer{};                ///< what is newer than the file of the house
};

/// A job that is in no file, with what is to be shown of it.
struct GivenJob {
    std::shared_ptr<const Job> job;
    std::shared_ptr<const House> solids;            ///< or null
    std::shared_ptr<const PreparedHouse> prepared;  ///< of these, or null
    Trace ways;                                     ///< the first is chosen
    std::vector<std::vector<Point>> routes;         ///< one for each
    QString path, title;
};

/// The open job, its ways in for the animal and into the room chosen, and the way in chosen. Gaps can be closed on trial: all but
/// filed() tells the house as it would be then. Lives on the window's thread; files are read, solids are built and ways are
/// traced on threads of its own.
class JobDocument : public QObject {
    Q_OBJECT

public:
    static constexpr int all_animals = -1;
    static constexpr int all_rooms = -1;
    static constexpr int no_way = -1;
    static constexpr std::size_t ways_wanted = 25;

    explicit JobDocument(QObject* parent = nullptr);

    /// What is to be done with solids on the thread that builds them, before solids_ready(): its answer is prepared().
    using PrepareSolids = std::function<std::shared_ptr<const PreparedHouse>(const House&, const RunContext&)>;
    void prepare_solids_with(PrepareSolids prepare) { prepare_ = std::move(prepare); }

    /// Reads a job file. Ends with opened(), then ways_found(), and, where the job has a house or a model, solids_ready() or
    /// solids_failed(); or with open_failed(), after which the job that was open before still is.
    void open(const QString& path);
    /// The same with a text that may be newer than the file. `keep`: the job is the same as before with something changed, so
    /// that the animal, the room and, as far as they still are there, the way and what is closed on trial stay chosen; ends with
    /// changed() in place of opened(), or with change_failed() and the job as it was. `solids`: the house itself may have
    /// changed.
    void read(const JobSource& source, bool keep, bool solids);
    /// Takes a job that is there already, with its ways and solids, in place of the open one: opened() or, with `keep`,
    /// changed(), then ways_found(). Nothing of it is traced, nor built.
    void show(const GivenJob& given, bool keep);
    /// Traces again for one animal, by its position in the job's pests, or for `all_animals`: ways_found() follows.
    void choose_animal(int animal);
    /// The same for one room, by its position in rooms(), or for `all_rooms`.
    void choose_room(int room);
    /// Chooses a way in by its position in ways().paths, or `no_way`.
    void choose_way(int way);
    /// Closes these gaps on trial and opens all others that were: ways_found() follows.
    void close_on_trial(std::vector<TreatedGap> gaps);

    [[nodiscard]] bool has_job() const { return job_ != nullptr; }
    /// The open job with what is closed on trial; only when there is one. Its house has no solids.
    [[nodiscard]] const Job& job() const { return *job_; }
    /// The open job as its file has it.
    [[nodiscard]] std::shared_ptr<const Job> filed() const { return filed_; }
    [[nodiscard]] const std::vector<TreatedGap>& on_trial() const { return on_trial_; }
    /// The solids of the house or the model, or null as long as there are none. After a change, those from before it until
    /// solids_ready().
    [[nodiscard]] std::shared_ptr<const House> solids() const { return solids_; }
    /// Whether newer ones are being built.
    [[nodiscard]] bool is_building() const { return building_; }
    /// What prepare_solids_with() made of these, or null.
    [[nodiscard]] std::shared_ptr<const PreparedHouse> prepared() const { return prepared_; }
    [[nodiscard]] QString path() const { return path_; }
    /// What the open job was read from.
    [[nodiscard]] const std::string& text() const { return text_; }
    [[nodiscard]] const FileTexts& newer() const { return newer_; }
    /// Whether that came from the file, not from whoever asked.
    [[nodiscard]] bool is_text_of_file() const { return text_of_file_; }
    [[nodiscard]] QString title() const { return title_; }
    [[nodiscard]] const Trace& ways() const { return ways_; }
    /// The line of each of ways().paths through the air of the house, in its frame; empty where only its gaps are known.
    [[nodiscard]] const std::vector<std::vector<Point>>& routes() const { return routes_; }
    /// What in the survey ought to be looked at again, a sentence each.
    [[nodiscard]] QStringList remarks() const;
    /// Rooms of the job where ways in can end, in its order.
    [[nodiscard]] const std::vector<SpaceIndex>& rooms() const { return rooms_; }
    [[nodiscard]] int animal() const { return animal_; }
    [[nodiscard]] int room() const { return room_; }
    [[nodiscard]] int way() const { return way_; }
    /// The way in chosen, or null.
    [[nodiscard]] const RankedPath* chosen() const;
    [[nodiscard]] bool is_busy() const { return busy_; }
    /// Whether another job is being read to take the place of the open one.
    [[nodiscard]] bool is_opening_another() const { return opening_ && opening_another_; }

signals:
    void opened();
    /// The open job was read again after a change.
    void changed();
    /// The changed text is no job; the open one is as it was.
    void change_failed(const seamward::viewer::OpenFault& fault);
    void open_failed(const seamward::viewer::OpenFault& fault);
    void ways_found();
    void way_chosen(int way);
    void solids_ready();
    void solids_failed(const seamward::viewer::OpenFault& fault);
    /// Work began (`doing` says what) or ended (empty).
    void busy_changed(const QString& doing);

private:
    struct Found;
    struct Opened;
    using Answer = std::function<void()>;                       ///< run on the window's thread
    using Question = std::function<Answer(const RunContext&)>;  ///< run on a thread of the document's own
    using Failure = std::function<void(const OpenFault&)>;      ///< run on the window's thread

    void ask(NewestTask& task, std::uint64_t& newest, Question question, Failure failure);
    void set_busy(const QString& doing);
    void take(const Opened& result, bool keep);
    void build_solids(const JobSource& source);
    void fail(const OpenFault& fault);
    void take_ways(const Found& found);
    void trace_again();
    [[nodiscard]] TraceSettings settings() const;
    [[nodiscard]] std::vector<std::string> ids_of_chosen() const;
    [[nodiscard]] static Found traced(const Job& job, const TraceSettings& settings, const RunContext& context);

    std::shared_ptr<const Job> filed_, job_;
    std::shared_ptr<const House> solids_;
    PrepareSolids prepare_;
    std::shared_ptr<const PreparedHouse> prepared_;
    std::vector<TreatedGap> on_trial_;
    QString path_, title_;
    std::string text_;
    FileTexts newer_;
    bool text_of_file_ = false;
    Trace ways_;
    std::vector<std::vector<Point>> routes_;
    std::vector<Message> remarks_;
    std::vector<SpaceIndex> rooms_;
    std::vector<std::string> hold_;  ///< gaps of the way that stays chosen when ways are traced again
    int animal_ = all_animals;
    int room_ = all_rooms;
    int way_ = no_way;
    bool busy_ = false;
    bool opening_ = false;
    bool solids_wanted_ = false;
    bool building_ = false;
    bool opening_another_ = false;
    std::uint64_t ticket_ = 0, solids_ticket_ = 0;  ///< of the newest question; answers to older ones are dropped
    NewestTask solids_task_;                        ///< the tasks stand last, so that their threads end before the rest goes
    NewestTask task_;
};

}  // namespace seamward::viewer

Q_DECLARE_METATYPE(seamward::viewer::OpenFault)
