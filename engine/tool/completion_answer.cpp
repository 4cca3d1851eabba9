// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/json_writer.h"
#include "base/measure_text.h"
#include "base/text.h"
#include "tool/completion_command.h"

namespace seamward {

namespace {

class CompletionAnswer {
public:
    explicit CompletionAnswer(const JudgedJob& judged)
        : survey_(judged.job.survey), completion_(judged.completion), judged_(judged) {}

    std::string text() {
        json_.begin_object().key("complete").value(completion_.complete()).key("reasons").begin_array();
        for (const Message& reason : completion_.reasons) json_.value(printable(reason.english()));
        json_.end_array().key("animals").begin_array();
        for (const AnimalOutcome& outcome : completion_.animals) animal(outcome);
        json_.end_array();
        if (completion_.left) work("plan", *completion_.left);
        wrong_closings();
        callbacks();
        ways_back();
        gaps("also_open", completion_.also_open);
        json_.key("reinspect");
        if (completion_.reinspect)
            reinspection(*completion_.reinspect);
        else
            json_.null();
        gaps("undated", completion_.undated);
        json_.key("statement").value(statement()).end_object();
        return json_.text();
    }

private:
    void gaps(const char* key, const std::vector<GapIndex>& gaps) {
        json_.key(key).begin_array();
        for (const GapIndex gap : gaps) json_.value(survey_[gap].id);
        json_.end_array();
    }

    void work(const char* key, const WorkLeft& left) {
        json_.key(key).begin_object().key("feasible").value(left.feasible);
        if (left.feasible) json_.key("cost").value(static_cast<double>(left.cost.cents) / 100);
        json_.key("steps").begin_array();
        for (const PlanStep& step : left.steps) {
            json_.begin_object().key("gap").value(survey_[step.gap].id);
            json_.key("treatment").value(step.option.treatment).end_object();
        }
        json_.end_array().end_object();
    }

    void animal(const AnimalOutcome& outcome) {
        json_.begin_object().key("pest").value(judged_.settings.against[outcome.pest].id).key("shut").value(outcome.shut);
        if (outcome.shut) {
            gaps("rests_on", outcome.rests_on);
        } else {
            json_.key("gaps_on_ways").value(static_cast<std::int64_t>(outcome.gaps_on_ways));
            const OpenWay& way = *outcome.widest;
            json_.key("widest").begin_object().key("from").value(survey_[way.path.from()].id).key("to");
            json_.value(survey_[way.path.to()].id).key("pinch_mm").value(answer_millimeters(way.pinch));
            json_.key("pinch_gap").value(survey_[way.pinch_gap].id);
            gaps("gaps", way.path.gaps);
            json_.end_object();
            gaps("gnawed", outcome.gnawed);
            work("plan", outcome.left);
        }
        json_.end_object();
    }

    void wrong_closings() {
        json_.key("wrong_closings").begin_array();
        for (const WrongClosing& wrong : completion_.wrong_closings) {
            json_.begin_object().key("gap").value(survey_[wrong.gap].id);
            json_.key("why").value(wrong.why.english()).key("source").value(wrong.source.english()).end_object();
        }
        json_.end_array();
    }

    void ways_back() {
        json_.key("ways_back").begin_array();
        for (const WayBack& back : completion_.ways_back) {
            const Occupant& occupant = judged_.job.occupied[back.occupant];
            json_.begin_object().key("space").value(survey_[occupant.space].id).key("animal").value(occupant.animal.id);
            gaps("gaps", back.gaps);
            json_.end_object();
        }
        json_.end_array();
    }

    void callbacks() {
        json_.key("callbacks").begin_array();
        for (const std::uint32_t i : completion_.callbacks) {
            const ClosedGap& closed = judged_.job.closed[i];
            json_.begin_object().key("gap").value(survey_[closed.gap].id).key("date").value(date_text(closed.callback->date));
            json_.key("cause").value(printable(closed.callback->cause)).key("mended");
            if (closed.callback->mended)
                json_.value(date_text(*closed.callback->mended));
            else
                json_.null();
            json_.end_object();
        }
        json_.end_array();
    }

    void reinspection(const Reinspection& first) {
        json_.begin_object().key("date").value(date_text(first.date)).key("gap").value(survey_[first.gap].id);
        json_.key("why").value(first.why.english()).end_object();
    }

    [[nodiscard]] std::string statement() const {
        std::string text;
        for (const PageLine& line : completion_statement(judged_)) text += line.lead + line.text + '\n';
        return text;
    }

    const Survey& survey_;
    const Completion& completion_;
    const JudgedJob& judged_;
    JsonWriter json_;
};

}  // namespace

std::string completion_answer(const JudgedJob& judged) { return CompletionAnswer(judged).text(); }

}  // namespace seamward
