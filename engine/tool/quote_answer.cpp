// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/json_writer.h"
#include "base/measure_text.h"
#include "tool/quote_command.h"

namespace seamward {

namespace {

class QuoteAnswer {
public:
    QuoteAnswer(const Job& job, const QuoteSettings& settings, const Quote& quote, const QuoteTerms& terms)
        : job_(job), survey_(job.survey), settings_(settings), quote_(quote), terms_(terms) {}

    std::string text(const std::string& heading) {
        json_.begin_object().key("job").value(heading).key("date").value(date_text(quote_.date));
        json_.key("valid_until").value(date_text(quote_.valid_until)).key("prices").value(settings_.prices.name);
        json_.key("prices_invented").value(settings_.invented).key("options").begin_array();
        for (const QuoteOption& one : quote_.options) option(one);
        json_.end_array();
        strings("exclusions", terms_.exclusions);
        strings("approvals", terms_.approvals);
        warranty();
        strings("last_checks", terms_.checks);
        strings("cautions", terms_.cautions);
        std::vector<Message> notes = terms_.notes;
        if (!terms_.warning.empty()) notes.insert(notes.begin(), terms_.warning);
        strings("notes", notes);
        json_.end_object();
        return json_.text();
    }

private:
    static double dollars(Money money) { return static_cast<double>(money.cents) / 100; }

    void strings(const char* name, const std::vector<Message>& texts) {
        json_.key(name).begin_array();
        for (const Message& text : texts) json_.value(text.english());
        json_.end_array();
    }

    void option(const QuoteOption& option) {
        json_.begin_object().key("name").value(option.name.english()).key("against").begin_array();
        for (const std::size_t animal : option.against) json_.value(quote_.animals[animal].id);
        json_.end_array().key("feasible").value(option.plan.feasible);
        if (option.plan.feasible) {
            if (option.everything) json_.key("nothing_from_mm").value(answer_millimeters(option.nothing_from));
            json_.key("steps").value(static_cast<std::int64_t>(option.plan.steps.size()));
            json_.key("minutes").value(option.sum.minutes);
            json_.key("visits").value(std::int64_t{option.sum.visits});
            json_.key("assumed").value(static_cast<std::int64_t>(option.guessed));
            json_.key("not_measured").value(static_cast<std::int64_t>(option.unmeasured));
            strings("stays_inside", who_stays_inside(job_, option.plan));
            sum(option.sum);
            closings(option);
        }
        stays_open(option);
        if (!option.plan.feasible) {
            json_.key("gaps").begin_array();
            for (const GapIndex gap : option.stays_open.front().path.gaps) json_.value(survey_[gap].id);
            json_.end_array();
            strings("why", option.plan.open_way_reasons);
        }
        json_.end_object();
    }

    void sum(const QuoteSum& sum) {
        json_.key("lines").begin_array();
        for (const ChargeLine& line : sum.lines)
            json_.begin_object().key("what").value(charge_id(line.charge)).key("amount").value(dollars(line.amount)).end_object();
        json_.end_array().key("total").value(dollars(sum.total)).key("deposit").value(dollars(sum.deposit));
        json_.key("balance").value(dollars(sum.balance));
    }

    void closings(const QuoteOption& option) {
        json_.key("closings").begin_array();
        for (const PlanStep& step : option.plan.steps) {
            json_.begin_object().key("gap").value(survey_[step.gap].id).key("treatment").value(step.option.treatment);
            json_.key("cost").value(dollars(step.option.cost)).key("waits").value(step.waits).end_object();
        }
        json_.end_array();
    }

    void stays_open(const QuoteOption& option) {
        json_.key("stays_open").begin_array();
        for (const OpenWay& way : option.stays_open) {
            json_.begin_object().key("pest").value(quote_.animals[way.pest].id);
            json_.key("pinch_mm").value(answer_millimeters(way.pinch)).key("gap").value(survey_[way.pinch_gap].id);
            json_.key("to").value(survey_[way.path.to()].id).end_object();
        }
        json_.end_array();
    }

    void warranty() {
        const Warranty& warranty = terms_.warranty;
        json_.key("warranty").begin_object().key("months").value(std::int64_t{warranty.months});
        if (warranty.months > 0) {
            json_.key("covers").value(warranty.covers.english()).key("callback").value(warranty.callback.english());
            strings("void_if", warranty.void_if);
        }
        json_.end_object();
    }

    const Job& job_;
    const Survey& survey_;
    const QuoteSettings& settings_;
    const Quote& quote_;
    const QuoteTerms& terms_;
    JsonWriter json_;
};

}  // namespace

std::string quote_answer(const Job& job, const std::string& heading, const QuoteSettings& settings, const Quote& quote,
                         const QuoteTerms& terms) {
    return QuoteAnswer(job, settings, quote, terms).text(heading);
}

}  // namespace seamward
