// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QStringList>
#include <memory>
#include <optional>
#include <set>
#include <vector>

#include "document/drill_signs.h"
#include "document/job_document.h"
#include "document/newest_task.h"
#include "teach/briefing.h"
#include "teach/feedback.h"

namespace seamward::viewer {

/// A drill that is being done: what the trainee says of its places, and, once that is handed in, how it was judged. What the
/// picture shows of it is shown(): before, a house of which no gap is known. Lives on the window's thread; the drill is read on a
/// thread of its own.
class DrillDocument : public QObject {
    Q_OBJECT

public:
    static constexpr int no_place = -1;

    explicit DrillDocument(QObject* parent = nullptr);

    void prepare_solids_with(JobDocument::PrepareSolids prepare) { prepare_ = std::move(prepare); }
    /// Ends with opened(), or with open_failed() and the drill that was open before.
    void open(const QString& path);
    /// The drill is left: there is none any more.
    void close();

    [[nodiscard]] bool has_drill() const { return round_ != nullptr; }
    /// Only when there is one, as all below.
    [[nodiscard]] const DrillRound& round() const { return *round_; }
    [[nodiscard]] JobDocument& shown() { return shown_; }
    /// In the language spoken; made anew when that changes.
    [[nodiscard]] const Briefing& told() const;
    [[nodiscard]] QString title() const { return QString::fromStdString(told().title); }
    [[nodiscard]] std::size_t place_count() const { return round_->places.size(); }

    /// Chooses a place by its position in the round, or `no_place`.
    void choose(int place);
    [[nodiscard]] int chosen() const { return chosen_; }
    /// The nearest place within reach of a point of the house; nothing when none is.
    [[nodiscard]] std::optional<std::size_t> place_near(const Point& at) const;
    /// Looks closely at a place, which stays looked at until the round begins again.
    void look_closely(std::size_t place);
    [[nodiscard]] bool has_looked(std::size_t place) const { return looked_.contains(place); }
    /// What that showed; empty where nobody looked.
    [[nodiscard]] QStringList close_look(std::size_t place) const;

    /// What was said of a place, or null.
    [[nodiscard]] const PlaceAnswer* answer(std::size_t place) const;
    /// Takes the place of what was said of the same one. Not after handing in, as all that changes answers.
    void set_answer(const PlaceAnswer& answer);
    void remove_answer(std::size_t place);
    /// By which place the seen animal came; nothing: not said.
    void set_entry(std::optional<std::size_t> place);
    [[nodiscard]] std::optional<std::size_t> entry() const { return entry_; }
    [[nodiscard]] std::size_t answered() const;
    /// The next place that nothing is said of, after the chosen one and then from the first; `no_place`: none.
    [[nodiscard]] int next_open_question() const;
    [[nodiscard]] Answers answers() const;
    [[nodiscard]] bool is_unfinished() const { return has_drill() && !result_ && (answered() > 0 || entry_.has_value()); }

    void hand_in();
    [[nodiscard]] bool is_handed_in() const { return result_.has_value(); }
    [[nodiscard]] const DrillResult& result() const { return *result_; }
    /// In the language spoken, as told().
    [[nodiscard]] const DrillFeedback& feedback() const;
    [[nodiscard]] PlaceSign sign_of(std::size_t place) const;
    /// The same drill anew, nothing said.
    void begin_again();
    void set_trainee(const QString& name, const QString& progress_file);
    [[nodiscard]] QString trainee() const { return trainee_; }
    [[nodiscard]] QString progress_file() const { return progress_file_; }
    /// How many attempts the trainee has at this drill, once this one was kept.
    [[nodiscard]] std::optional<std::size_t> kept() const { return kept_; }
    /// Adds the attempt to the progress file, once. What went wrong; empty: nothing.
    [[nodiscard]] QString keep_progress();
    /// The same of an answers file.
    [[nodiscard]] QString save_answers(const QString& path) const;

signals:
    void opened();
    void closed();
    void open_failed(const seamward::viewer::OpenFault& fault);
    void busy_changed(const QString& doing);
    void place_chosen(int place);
    void answers_changed();
    void handed_in();
    void trainee_changed();

private:
    struct Read;

    void take(const Read& read);
    void begin();
    void show_hidden(bool keep);
    void show_way(int place);

    JobDocument shown_;
    JobDocument::PrepareSolids prepare_;
    std::shared_ptr<const DrillRound> round_;
    std::shared_ptr<const Job> hidden_;
    std::shared_ptr<const House> solids_;  ///< which bound no gap, or null
    std::shared_ptr<const PreparedHouse> prepared_;
    QString path_, trainee_, progress_file_;
    std::vector<std::optional<PlaceAnswer>> answers_;  ///< by place
    std::optional<std::size_t> entry_, kept_;
    std::set<std::size_t> looked_;
    std::optional<DrillResult> result_;
    Answers handed_in_;
    mutable std::optional<Briefing> told_;
    mutable std::optional<DrillFeedback> feedback_;
    mutable QString told_in_, feedback_in_;  ///< languages
    int chosen_ = no_place;
    std::uint64_t ticket_ = 0;
    NewestTask task_;  ///< last, so that its thread ends before the rest goes
};

}  // namespace seamward::viewer
