// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/json_writer.h"
#include "base/measure_text.h"
#include "tool/plan_command.h"

namespace seamward {

namespace {

class PlanAnswer {
public:
    PlanAnswer(const Job& job, const PlanSettings& settings, const Plan& plan)
        : survey_(job.survey), settings_(settings), plan_(plan) {}

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
        refused();
        marginal();
        if (plan_.chances) chances(*plan_.chances);
        json_.key("notes").begin_array();
        for (const std::string& doubt : plan_.vent_doubts) json_.value(doubt);
        json_.end_array();
        json_.key("last_checks").begin_array();
        for (const std::string& check : plan_.last_checks) json_.value(check);
        json_.end_array().end_object();
        return json_.text();
    }

private:
    static double dollars(Money money) { return static_cast<double>(money.cents) / 100; }

    void gaps(const std::vector<GapIndex>& gaps) {
        json_.key("gaps").begin_array();
        for (const GapIndex gap : gaps) json_.value(survey_[gap].id);
        json_.end_array();
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
            json_.key("where").value(zone_words(step.zone)).end_object();
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
        for (const std::string& reason : plan_.open_way_reasons) json_.value(reason);
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
        if (!plan_.ladder_stop) return;
        json_.key("ladder_stops_at").begin_object().key("mm").value(answer_millimeters(plan_.ladder_stop->width));
        json_.key("gap").value(survey_[plan_.ladder_stop->gap].id).key("why").value(plan_.ladder_stop->why).end_object();
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
            json_.key("why").value(refused.refusal.why).key("source").value(refused.refusal.source).end_object();
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

    const Survey& survey_;
    const PlanSettings& settings_;
    const Plan& plan_;
    JsonWriter json_;
};

}  // namespace

std::string plan_answer(const Job& job, const PlanSettings& settings, const Plan& plan) {
    return PlanAnswer(job, settings, plan).text();
}

}  // namespace seamward
