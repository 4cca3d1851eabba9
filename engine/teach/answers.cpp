// SPDX-License-Identifier: GPL-3.0-or-later
#include "teach/answers.h"

#include <algorithm>
#include <set>

#include "base/file_io.h"
#include "base/nearest_word.h"
#include "base/text.h"
#include "catalog/shipped.h"
#include "job_file/id_index.h"
#include "plan/departures.h"
#include "teach/reading.h"
#include "teach/score.h"

namespace seamward {

namespace {

constexpr std::array<std::string_view, 6> answer_keys{"seamward-answers", "drill", "trainee", "date", "entry", "findings"};
constexpr std::array<std::string_view, 9> finding_keys{"place",   "gap",       "at",      "state", "width",
                                                       "between", "treatment", "opening", "wait"};
constexpr std::array<std::string_view, 3> entry_keys{"place", "gap", "at"};
constexpr std::array<std::string_view, 2> state_words{"open", "tight"};
constexpr std::uint64_t most_bytes = 16ULL << 20;
constexpr std::size_t most_findings = 10'000;

class AnswersReader {
public:
    AnswersReader(const Document& document, const DrillRound& round)
        : round_(round),
          diagnostics_(document.file()),
          file_(document.root(), answer_keys, "answers file", diagnostics_),
          spaces_(round.job.survey.spaces.size()),
          gaps_(round.job.survey.gaps.size()) {
        for (const Space& space : round.job.survey.spaces) spaces_.add(space.id);
        for (const Gap& gap : round.job.survey.gaps) gaps_.add(gap.id);
    }

    Answers read() {
        check_version(file_, "seamward-answers");
        Answers answers;
        answers.trainee = file_.required_line("trainee");
        answers.drill = file_.required_line("drill");
        if (!answers.drill.empty() && answers.drill != round_.drill.id)
            file_.report(file_["drill"].place(), "these are answers to the drill " + in_quotes(answers.drill),
                         "check them against that drill; this one is " + round_.drill.id);
        if (is_said(file_, "date")) answers.date = file_.date("date");
        if (file_.has("entry") && !file_["entry"].is_null()) answers.entry = read_entry();
        if (file_.has("findings") && file_["findings"].size() > most_findings)
            file_.report(file_["findings"].place(), "more than " + std::to_string(most_findings) + " findings",
                         "name each place once");
        else
            file_.each("findings", [&](Node node) { add(node, answers); });
        diagnostics_.throw_if_any();
        return answers;
    }

private:
    std::optional<FoundAt> read_entry() {
        const Record record(file_["entry"], entry_keys, "entry", diagnostics_);
        if (!record.usable() || !(is_said(record, "place") || is_said(record, "gap") || is_listed(record, "at")))
            return std::nullopt;
        if (!round_.drill.seen)
            record.report(record.place(), "this drill does not ask by which entry an animal came", "remove entry");
        return read_where(record);
    }

    FoundAt read_where(const Record& record) {
        FoundAt where;
        const std::size_t said = static_cast<std::size_t>(is_said(record, "place")) +
                                 static_cast<std::size_t>(is_said(record, "gap")) +
                                 static_cast<std::size_t>(is_listed(record, "at"));
        if (said != 1) {
            record.report(record.place(), said == 0 ? "nobody can tell where this is" : "this says more than once where it is",
                          "write one of place: 3, gap: ID and at: [4.5 m, 9 m, 0.05 m]");
            return where;
        }
        if (is_said(record, "place")) {
            const auto number = record.count("place");
            if (number && *number > round_.places.size())
                record.report(record["place"].place(), "there is no place " + std::to_string(*number),
                              "the briefing has places 1 to " + std::to_string(round_.places.size()));
            else if (number)
                where.place = *number - 1;
        }
        if (is_said(record, "gap")) {
            if (const auto gap = gaps_.resolve(record["gap"], "gap", diagnostics_)) where.gap = GapIndex{*gap};
        }
        if (is_listed(record, "at")) where.at = read_at(record["at"], diagnostics_);
        return where;
    }

    void read_treatment(const Record& record, PlaceAnswer& finding) {
        if (!is_said(record, "treatment")) return;
        finding.treatment = record.line("treatment").value_or("");
        const Treatment* row = shipped_treatments().find(finding.treatment);
        if (row == nullptr && finding.treatment != leave_open) {
            std::vector<std::string_view> known = shipped_treatments().ids();
            known.emplace_back(leave_open);
            const std::string mend = suggestion(finding.treatment, known);
            record.report(record["treatment"].place(), "unknown treatment " + in_quotes(finding.treatment),
                          mend.empty() ? "docs/catalog.md lists them; leave-open leaves it as it is" : mend);
            return;
        }
        const bool by_size = row != nullptr && row->leaves_mesh() && !(row->opening > 0);
        if (is_said(record, "opening")) finding.opening = record.length("opening").value_or(0);
        if (by_size && !(finding.opening > 0))
            record.report(record["treatment"].place(), "the treatment does not say how fine its mesh is",
                          "add opening: 1/4 in, or name a kind such as mesh-1-4");
        if (!by_size && is_said(record, "opening"))
            record.report(record["opening"].place(), "opening says nothing of this treatment", "remove it");
    }

    void add(Node node, Answers& answers) {
        const Record record(node, finding_keys, "finding", diagnostics_);
        if (!record.usable()) return;
        const bool says_more = is_said(record, "width") || is_listed(record, "between") || is_said(record, "treatment");
        if (!is_said(record, "state") && !says_more) return;  // an empty form: nobody looked there
        PlaceAnswer finding;
        finding.where = read_where(record);
        finding.open = !is_said(record, "state") || record.word("state", state_words).value_or(0) == 0;
        if (is_said(record, "width")) finding.width = record.length("width");
        if (is_listed(record, "between")) read_between(record, finding);
        read_treatment(record, finding);
        if (is_said(record, "wait")) finding.wait = record.truth("wait").value_or(false);
        if (!finding.open && finding.closes())
            record.report(record["treatment"].place(), "what is tight needs no treatment",
                          "write state: open, or remove treatment");
        check_twice(record, finding);
        answers.findings.push_back(std::move(finding));
    }

    void read_between(const Record& record, PlaceAnswer& finding) {
        const Node node = record["between"];
        if (!node.is_sequence() || node.size() != 2) {
            record.report(node.place(), "a gap joins exactly two spaces", "write between: [SPACE, SPACE]");
            return;
        }
        std::array<SpaceIndex, 2> ends;
        std::size_t end = 0;
        record.each("between", [&](Node id) {
            if (const auto space = spaces_.resolve(id, "space", diagnostics_)) ends.at(end) = {*space};
            ++end;
        });
        if (ends[0].valid() && ends[1].valid()) finding.between = ends;
    }

    /// Places that are named by number or id twice; of points, the nearest counts.
    void check_twice(const Record& record, const PlaceAnswer& finding) {
        if (finding.where.at) return;
        const std::optional<std::size_t> place = match(round_, finding.where).place;
        if (place && !told_.insert(*place).second)
            record.report(record.place(), "place " + std::to_string(*place + 1) + " is told of twice", "keep one finding for it");
    }

    const DrillRound& round_;
    Diagnostics diagnostics_;
    Record file_;
    IdIndex spaces_, gaps_;
    std::set<std::size_t> told_;  ///< places named by number or id
};

}  // namespace

double PlaceAnswer::left() const {
    const Treatment* row = shipped_treatments().find(treatment);
    if (row == nullptr || row->leaves == Treatment::Leaves::nothing) return 0;
    return row->opening > 0 ? row->opening : opening;
}

Answers parse_answers(std::string_view yaml, const std::string& shown_as, const DrillRound& round) {
    const Document document = shown_as.ends_with(".json") ? parse_json(yaml, shown_as) : parse_yaml(yaml, shown_as);
    return AnswersReader(document, round).read();
}

Answers read_answers(const std::filesystem::path& path, const DrillRound& round) {
    return parse_answers(read_file(path, path.string(), most_bytes), path.string(), round);
}

Answers perfect_answers(const DrillRound& round, const std::string& trainee) {
    Answers answers{trainee, round.drill.id, std::nullopt, std::nullopt, {}};
    const std::vector<PlaceKey> key = drill_key(round);
    std::vector<TreatedGap> treated;
    for (std::size_t i = 0; i < key.size(); ++i) {
        if (!key[i].due()) continue;
        const GapIndex gap = *round.places[i].gap;
        PlaceAnswer finding;
        finding.where.place = i;
        finding.open = true;
        finding.width = key[i].width;
        finding.between = round.job.survey[gap].between;
        if (key[i].leave)
            finding.treatment = leave_open;
        else if (!key[i].right.empty())
            finding.treatment = key[i].right.front().id;
        if (finding.closes()) treated.push_back({gap, finding.left()});
        answers.findings.push_back(std::move(finding));
    }
    for (const Departure& departure : departures_of(round.job, treated, drill_date(round.job))) {
        for (PlaceAnswer& finding : answers.findings) {
            const GapIndex gap = *round.places[*finding.where.place].gap;
            if (std::find(departure.last.begin(), departure.last.end(), gap) != departure.last.end()) finding.wait = true;
        }
    }
    const std::vector<GapIndex> entries = right_entries(round);
    if (!entries.empty()) answers.entry = FoundAt{std::nullopt, entries.front(), std::nullopt};
    return answers;
}

}  // namespace seamward
