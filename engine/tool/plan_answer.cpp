// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/json_writer.h"
#include "base/measure_text.h"
#include "catalog/shipped.h"
#include "plan/owner_part.h"
#include "tool/plan_command.h"
#include "tool/sightings_lines.h"

namespace seamward {

namespace {

class PlanAnswer {
public:
    PlanAnswer(const Job& job, const PlanSettings& settings, const Plan& plan, bool diy)
        : job_(job), survey_(job.survey), settings_(settings), plan_(plan), diy_(diy) {}

    std::string text() {
        json_.begin_object().key("feasible").value(plan_.feasible);
        if (plan_.feasible) {
            json_.key("cost").value(dollars(plan_.cost)).key("minutes").value(plan_.minutes);
            steps();
            proof();
        }
        if (plan_.open_way) open_path();
        if (plan_.budget) budget(*plan_.budget);
        ladder();
        if (plan_.feasible) materials();
        if (!plan_.departures.empty()) departures();
        if (diy_ && plan_.feasible) owner();
        refused();
        marginal();
        wrong_closings();
        write_sightings(job_, plan_, settings_, json_);
        if (plan_.chances) chances(*plan_.chances);
        std::vector<Message> notes = plan_.vent_doubts;
        notes.insert(notes.end(), plan_.notes.begin(), plan_.notes.end());
        texts("notes", notes);
        texts("before", plan_.before);
        texts("last_checks", plan_.last_checks);
        json_.end_object();
        return json_.text();
    }

private:
    static double dollars(Money money) { return static_cast<double>(money.cents) / 100; }

    void gaps(const std::vector<GapIndex>& gaps) {
        json_.key("gaps").begin_array();
        for (const GapIndex gap : gaps) json_.value(survey_[gap].id);
        json_.end_array();
    }

    void texts(const char* name, const std::vector<Message>& lines) {
        json_.key(name).begin_array();
        for (const Message& line : lines) json_.value(line.english());
        json_.end_array();
    }

    /// What the crew has to know at a step.
    void place(const PlanStep& step) {
        if (step.stop.ladder_first > 0) {
            json_.key("ladder").begin_array().value(std::int64_t{step.stop.ladder_first});
            json_.value(std::int64_t{step.stop.ladder_last}).end_array();
        }
        json_.key("people").value(std::int64_t{step.stop.two_people ? 2 : 1});
        if (step.waits) json_.key("waits").value(true);
        if (diy_) json_.key("by").value(step.owner ? "owner" : "hire");
        texts("do", step.option.steps);
        texts("cautions", step.cautions());
    }

    void departures() {
        json_.key("departures").begin_array();
        for (const Departure& departure : plan_.departures) {
            const Occupant& occupant = job_.occupied[departure.occupant];
            json_.begin_object().key("space").value(survey_[occupant.space].id).key("animal").value(occupant.animal.id);
            json_.key("last").begin_array();
            for (const GapIndex gap : departure.last) json_.value(survey_[gap].id);
            json_.end_array();
            json_.key("way_known").value(departure.way_known);
            if (departure.device) json_.key("device").value(survey_[*departure.device].id);
            if (departure.removal != nullptr) removal(departure);
            json_.end_object();
        }
        json_.end_array();
    }

    void removal(const Departure& departure) {
        const Removal& removal = *departure.removal;
        json_.key("by").value(removal_word(removal.by)).key("how").value(removal.how);
        json_.key("source").value(cited(shipped_removals().sources, removal.source).english());
        if (departure.waits()) {
            json_.key("quiet_nights").value(std::int64_t{removal.quiet_nights});
            json_.key("close_from").value(date_text(departure.close_from));
        }
        if (departure.season) {
            const ClosedSeason& season = *departure.season->season;
            json_.key("season").begin_object().key("why").value(season.why);
            json_.key("not_before").value(date_text(departure.begin));
            json_.key("source").value(cited(shipped_removals().sources, season.source).english()).end_object();
        }
        std::vector<Message> cautions;
        for (const Caution& caution : removal.cautions) cautions.push_back(caution.text);
        texts("cautions", cautions);
    }

    void owner() {
        const OwnerPart part = owner_part(plan_, settings_.prices);
        json_.key("diy").begin_object().key("steps").value(static_cast<std::int64_t>(part.steps));
        json_.key("minutes").value(part.minutes).key("to_buy").value(dollars(part.to_buy));
        json_.key("hired_steps").value(static_cast<std::int64_t>(part.hired_steps));
        json_.key("hired").value(dollars(part.hired)).end_object();
    }

    void steps() {
        json_.key("steps").begin_array();
        std::int64_t order = 0;
        for (const PlanStep& step : plan_.steps) {
            json_.begin_object().key("order").value(++order).key("gap").value(survey_[step.gap].id);
            json_.key("treatment").value(step.option.treatment).key("cost").value(dollars(step.option.cost));
            json_.key("minutes").value(step.option.minutes);
            json_.key("widest_open_mm_after").value(answer_millimeters(step.widest_open_after));
            if (step.option.opening > 0) json_.key("leaves_mm").value(answer_millimeters(step.option.opening));
            json_.key("where").value(zone_words(step.stop.zone));
            place(step);
            json_.end_object();
        }
        json_.end_array();
    }

    void proof() {
        const Proof& proof = plan_.proof;
        const bool flow = proof.kind == Proof::Kind::flow;
        json_.key("proof").begin_object().key("kind").value(flow ? "flow" : "bound");
        json_.key("lower_bound").value(dollars(proof.lower_bound));
        if (!flow) json_.key("solver_gap").value(proof.solver_gap);
        json_.key("routes").begin_array();
        for (const ProofRoute& route : proof.routes) {
            json_.begin_object();
            gaps(route.gaps);
            json_.key("amount").value(dollars(route.amount)).key("pest").value(settings_.against[route.pest].id).end_object();
        }
        json_.end_array().end_object();
    }

    void way(const OpenWay& way) {
        json_.key("from").value(survey_[way.path.from()].id).key("to").value(survey_[way.path.to()].id);
        json_.key("pinch_mm").value(answer_millimeters(way.pinch)).key("pinch_gap").value(survey_[way.pinch_gap].id);
        gaps(way.path.gaps);
        json_.key("spaces").begin_array();
        for (const SpaceIndex space : way.path.spaces) json_.value(survey_[space].id);
        json_.end_array().key("pest").value(settings_.against[way.pest].id);
    }

    void open_path() {
        json_.key("open_path").begin_object();
        way(*plan_.open_way);
        json_.key("why").begin_array();
        for (const Message& reason : plan_.open_way_reasons) json_.value(reason.english());
        json_.end_array().end_object();
    }

    void budget(const BudgetResult& result) {
        json_.key("within_budget").value(result.reaches_all).key("full_cost").value(dollars(result.full_cost));
        json_.key("still_to_pay").value(dollars(result.still_to_pay)).key("left_open").begin_object();
        if (result.left_open) {
            way(*result.left_open);
        } else {
            json_.key("pinch_mm").value(0.0);
            gaps({});
        }
        json_.end_object();
    }

    void ladder() {
        json_.key("ladder").begin_array();
        for (const LadderRung& rung : plan_.ladder) {
            json_.begin_object().key("keeps_out_mm").value(answer_millimeters(rung.width));
            json_.key("cost").value(dollars(rung.cost));
            gaps(rung.gaps);
            json_.end_object();
        }
        json_.end_array();
        if (plan_.rungs_left_out > 0) json_.key("ladder_left_out").value(static_cast<std::int64_t>(plan_.rungs_left_out));
        if (!plan_.ladder_stop) return;
        json_.key("ladder_stops_at").begin_object().key("mm").value(answer_millimeters(plan_.ladder_stop->width));
        json_.key("gap")
            .value(survey_[plan_.ladder_stop->gap].id)
            .key("why")
            .value(plan_.ladder_stop->why.english())
            .end_object();
    }

    void materials() {
        json_.key("materials").begin_array();
        for (const Purchase& purchase : plan_.materials) {
            const Material& material = *settings_.prices.find(purchase.material);
            json_.begin_object().key("material").value(purchase.material).key("name").value(material.name);
            json_.key("needed").value(material.holds > 0 ? purchase.needed / material.holds : purchase.needed);
            json_.key("unit").value(material.unit).key("units").value(static_cast<std::int64_t>(purchase.units));
            json_.key("cases")
                .value(static_cast<std::int64_t>(purchase.cases))
                .key("cost")
                .value(dollars(purchase.cost))
                .end_object();
        }
        json_.end_array();
    }

    void refused() {
        json_.key("refused").begin_array();
        for (const RefusedGap& refused : plan_.refused) {
            json_.begin_object().key("gap").value(survey_[refused.gap].id);
            if (!refused.refusal.treatment.empty()) json_.key("treatment").value(refused.refusal.treatment);
            json_.key("why")
                .value(refused.refusal.why.english())
                .key("source")
                .value(refused.refusal.source.english())
                .end_object();
        }
        json_.end_array();
    }

    void marginal() {
        json_.key("marginal").begin_array();
        for (const MarginalStop& stop : plan_.marginal) {
            json_.begin_object().key("gap").value(survey_[stop.gap].id).key("pest").value(settings_.against[stop.pest].id);
            json_.key("percent").value(std::int64_t(stop.share_short * 100 + 0.5)).end_object();
        }
        json_.end_array();
    }

    void wrong_closings() {
        json_.key("wrong_closings").begin_array();
        for (const WrongClosing& wrong : plan_.wrong_closings) {
            json_.begin_object().key("gap").value(survey_[wrong.gap].id);
            json_.key("why").value(wrong.why.english()).key("source").value(wrong.source.english()).end_object();
        }
        json_.end_array();
    }

    void chance(const char* name, const OpenChance& open) {
        json_.key(name).begin_object().key("chance").value(open.chance).key("exact").value(open.exact);
        if (!open.exact) json_.key("low").value(open.low).key("high").value(open.high);
        json_.end_object();
    }

    void chances(const PlanChances& all) {
        json_.key("chances").begin_array();
        for (std::size_t i = 0; i < all.before.size(); ++i) {
            json_.begin_object().key("pest").value(settings_.against[all.before[i].pest].id);
            chance("now", all.before[i].open);
            chance("after", all.after[i].open);
            json_.key("measure").begin_array();
            for (const WorthMeasuring& one : worth_measuring(all, i)) {
                json_.begin_object().key("gap").value(survey_[one.gap].id).key("passes").value(one.passes);
                json_.key("matters").value(one.matters).key("change").value(one.change).end_object();
            }
            json_.end_array().end_object();
        }
        json_.end_array();
    }

    const Job& job_;
    const Survey& survey_;
    const PlanSettings& settings_;
    const Plan& plan_;
    bool diy_;
    JsonWriter json_;
};

}  // namespace

std::string plan_answer(const Job& job, const PlanSettings& settings, const Plan& plan, bool diy) {
    return PlanAnswer(job, settings, plan, diy).text();
}

}  // namespace seamward
