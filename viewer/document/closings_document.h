// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QMetaType>
#include <QObject>
#include <QString>
#include <functional>
#include <map>

#include "document/closings_plan.h"
#include "document/job_document.h"

namespace seamward::viewer {

/// A gap with the number that it has in the list of closings.
struct NumberedGap {
    GapIndex gap;
    int number = 0;
    bool ticked = false;
};

/// What was done to one gap, by ids, so that it outlives the reading of a changed job.
struct ClosingState {
    std::string gap;
    std::string treatment;  ///< empty: the plan's, or the usual one
    bool ticked = false;
    bool by_hand = false;  ///< somebody ticked it or chose the treatment; else the price curve or a budget did
    friend bool operator==(const ClosingState&, const ClosingState&) = default;
};

/// What closings cost.
struct ClosingsSum {
    Money cost;
    double minutes = 0;
    std::size_t gaps = 0;
};

/// The plan of the open job as a list to tick. What is ticked is closed on trial in the job. At first nothing is. Plans, and how
/// the animals stand, are worked out on threads of its own; prices are known at once.
class ClosingsDocument : public QObject {
    Q_OBJECT

public:
    static constexpr int no_rung = -1;    ///< what is ticked is not a rung of the ladder
    static constexpr int none_done = -2;  ///< nothing is ticked: the beginning of the ladder

    explicit ClosingsDocument(JobDocument& document, QObject* parent = nullptr);

    /// Plans anew against these animals; ticks stay as far as they can. planned() follows.
    void plan_against(std::vector<Pest> pests);
    void tick(GapIndex gap, bool ticked);
    /// Ticks all steps of the plan, and leaves what else was ticked, and which treatments were chosen, by hand.
    void tick_all();
    void untick_all();
    /// Takes another treatment for a gap, by its id. refused() says when it must not be used together with what is ticked.
    void choose_treatment(GapIndex gap, const std::string& treatment);
    /// Ticks the steps of the plan with its treatments and nothing else.
    void tick_plan();
    /// Ticks what one rung of the plan's ladder closes and nothing else; `none_done`: nothing.
    void tick_rung(int rung);
    /// Ticks what is best within a budget, see PlanSettings: budget_spent() follows.
    void tick_within(Money budget);

    [[nodiscard]] bool has_plan() const { return plan_ != nullptr; }
    /// Only when there is one.
    [[nodiscard]] const ClosingsPlan& plan() const { return *plan_; }
    [[nodiscard]] const std::vector<Pest>& against() const { return against_; }
    [[nodiscard]] bool is_ticked(const OfferedClosing& offer) const { return hands_[offer.place()].ticked; }
    /// The treatment that is chosen, a position in its options, and that option.
    [[nodiscard]] std::size_t choice(const OfferedClosing& offer) const { return hands_[offer.place()].option; }
    [[nodiscard]] const Option& chosen(const OfferedClosing& offer) const { return offer.options[choice(offer)]; }
    /// What can be done to a gap, or null.
    [[nodiscard]] const OfferedClosing* offer_of(GapIndex gap) const;
    [[nodiscard]] bool chosen_by_hand(const OfferedClosing& offer) const {
        return hands_[offer.place()].by_hand && choice(offer) != offer.usual;
    }
    /// Of all that is ticked; of all steps of the plan, with the treatments chosen by hand.
    [[nodiscard]] ClosingsSum ticked() const;
    [[nodiscard]] ClosingsSum whole_plan() const;
    /// Of everything that can be closed, each by what costs and takes most: no ticks come to more.
    [[nodiscard]] ClosingsSum most() const;
    /// Position in the plan's ladder of what is ticked, with the treatments that the ladder counts; or `no_rung`, `none_done`.
    [[nodiscard]] int rung() const;
    /// Steps of the plan, and whatever else is ticked.
    [[nodiscard]] std::vector<NumberedGap> numbered() const;
    /// How things would stand; as of the latest outlook_found().
    [[nodiscard]] const ClosingsOutlook& outlook() const { return outlook_; }
    /// Why the latest plan could not be made.
    [[nodiscard]] const QString& fault() const { return fault_; }

    /// Gaps that are ticked or have another treatment than the plan's, in the order of the survey.
    [[nodiscard]] std::vector<ClosingState> state() const;
    /// The same with gaps that cannot be closed now, by id: those that went while they were ticked, and may be taken back.
    [[nodiscard]] std::vector<ClosingState> remembered() const;
    /// What is not in it is as in the plan and not ticked; treatments that there are no more are left out, gaps wait until they
    /// are taken back.
    void set_state(const std::vector<ClosingState>& state);

signals:
    /// A plan was made, or could not be made: fault() says why.
    void planned();
    /// Other gaps are ticked or other treatments chosen.
    void state_changed();
    void outlook_found();
    void refused(const seamward::Refusal& refusal, seamward::GapIndex gap);
    void budget_spent(seamward::Money budget, const seamward::BudgetResult& result);

private:
    /// What was done to an offer by hand.
    struct Hand {
        std::size_t option = 0;
        bool ticked = false;
        bool by_hand = false;
        friend bool operator==(const Hand&, const Hand&) = default;
    };
    using Hands = std::vector<Hand>;  ///< by the offers
    /// What was done to a gap that can no longer be closed, and what it was: one that is taken back is ticked as before.
    struct Gone {
        ClosingState state;
        std::string what;  ///< empty: not known, it came with set_state()
    };
    using Answer = std::function<void()>;

    void ask(NewestTask& task, std::uint64_t& newest, std::function<Answer(const RunContext&)> question);
    void plan_again(bool fresh);
    void take(std::shared_ptr<const ClosingsPlan> plan);
    /// Notes what was done to gaps that the plan, null: none, no longer offers.
    void remember_gone(const ClosingsPlan* plan);
    /// That of gaps which are there again.
    [[nodiscard]] std::vector<ClosingState> take_returned(const ClosingsPlan& plan);
    void fail(const QString& text);
    [[nodiscard]] Hands usual_hands() const;
    [[nodiscard]] Hands hands_of(const std::vector<ClosingState>& state) const;
    [[nodiscard]] Hands hands_of_rung(const LadderRung& rung) const;
    [[nodiscard]] std::vector<TickedClosing> closings(const Hands& hands) const;
    /// Of what is ticked the first that takes too much air, with why.
    [[nodiscard]] std::optional<RefusedGap> starved(const Hands& hands) const;
    void change(Hands hands);
    void change_one(const OfferedClosing& offer, const Hand& hand);
    void tell();
    void close_on_trial();

    JobDocument& document_;
    std::vector<Pest> against_;
    std::shared_ptr<const ClosingsPlan> plan_;
    Hands hands_;
    std::map<std::string, Gone> gone_;  ///< by id of the gap
    ClosingsOutlook outlook_;
    QString fault_;
    bool fresh_ = true;  ///< another job was opened since the plan was made
    std::uint64_t plan_ticket_ = 0, outlook_ticket_ = 0, budget_ticket_ = 0;
    NewestTask plan_task_, outlook_task_, budget_task_;  ///< last, so that their threads end before the rest goes
};

}  // namespace seamward::viewer

Q_DECLARE_METATYPE(seamward::GapIndex)
Q_DECLARE_METATYPE(seamward::Money)
Q_DECLARE_METATYPE(seamward::Refusal)
Q_DECLARE_METATYPE(seamward::BudgetResult)
