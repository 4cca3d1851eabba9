// SPDX-License-Identifier: GPL-3.0-or-later
#include "catalog/duties.h"

#include <optional>

#include "catalog/table_reader.h"

namespace seamward {

namespace {

constexpr std::array<std::string_view, 12> row_keys{"id",    "name",   "when",       "free", "full",   "allow",
                                                    "least", "widest", "keeps_area", "why",  "source", "instead"};
constexpr std::array serving{Duty::drain, Duty::weep, Duty::vent, Duty::exhaust, Duty::combustion_air, Duty::flood, Duty::relief};

class DutyReader {
public:
    DutyReader(TableReader<DutyRow>& reader, const Table<Feature>& features) : reader_(reader), features_(features) {}

    DutyRow read(Node node, Diagnostics& diagnostics) {
        const Record record(node, row_keys, "row", diagnostics);
        DutyRow row;
        last_ = node.place();
        if (!record.usable()) return row;
        row.id = record.required_line("id");
        row.name = record.required_line("name");
        record.require({"when"});
        if (record.has("when"))
            row.when = read_duty_case(reader_.record(record["when"], duty_case_keys(), "when"), features_, diagnostics);
        row.source = reader_.source(record);
        row.free = record.truth("free").value_or(false);
        if (row.free)
            check_free(record);
        else
            read_ruling(record, row, diagnostics);
        check_guard(record, row);
        return row;
    }

    /// What must hold of the whole table.
    void finish(const std::string& shown_as) const {
        Diagnostics diagnostics(shown_as);
        for (const Duty duty : serving) {
            if (!settled_[static_cast<std::size_t>(duty)])
                diagnostics.add(last_, "no row fits every gap with the duty " + std::string(duty_word(duty)),
                                "add a row with when: {duties: [" + std::string(duty_word(duty)) + "]} and full: false");
        }
        diagnostics.throw_if_any();
    }

private:
    void check_free(const Record& record) {
        for (const std::string_view key : {"full", "allow", "least", "widest", "keeps_area", "why", "instead"}) {
            if (record.has(key))
                record.report(record[key].place(), std::string(key) + " says nothing of a row that is free",
                              "remove it, or free");
        }
    }

    void read_ruling(const Record& record, DutyRow& row, Diagnostics& diagnostics) {
        record.require({"full", "allow"});
        row.full = record.truth("full").value_or(false);
        row.allow = read_lines(record, "allow", "treatment", diagnostics);
        for (std::size_t i = 0; i < row.allow.size(); ++i) {
            if (std::find(row.allow.begin(), row.allow.begin() + static_cast<std::ptrdiff_t>(i), row.allow[i]) !=
                row.allow.begin() + static_cast<std::ptrdiff_t>(i))
                record.report(record["allow"].place(), "treatment " + row.allow[i] + " stands twice", "keep one");
        }
        if (row.full && record.has("allow") && row.allow.empty())
            record.report(record["allow"].place(), "a full closing is allowed, by no treatment",
                          "name treatments, or full: false");
        row.keeps_area = record.truth("keeps_area").value_or(false);
        for (const std::string_view key : {"least", "widest"}) {
            if (record.has(key) && (row.full || row.allow.empty()))
                record.report(record[key].place(), std::string(key) + " is of a mesh, and this row allows none but full closings",
                              "remove it");
        }
        row.least = record.length("least").value_or(0);
        row.widest = record.length("widest").value_or(row.widest);
        if (row.least > row.widest)
            record.report(record["widest"].place(), "the widest opening is less than the least", "change one of them");
        row.why = record.required_line("why");
        row.instead = record.line("instead").value_or("");
    }

    /// No row may let a gap be closed that serves as an opening, and none may stand where it is never reached.
    void check_guard(const Record& record, const DutyRow& row) {
        if (row.full || row.free) {
            for (const Duty duty : serving) {
                if (!row.when.takes(duty) || settled_[static_cast<std::size_t>(duty)]) continue;
                record.report(record[row.free ? "free" : "full"].place(),
                              "closing defeats the duty " + std::string(duty_word(duty)) + ", and this row allows it",
                              "write full: false, or say in when: {duties: [...]} which gaps it is for");
                break;
            }
        }
        const bool reached =
            row.when.duties.empty() || std::any_of(row.when.duties.begin(), row.when.duties.end(),
                                                   [&](Duty duty) { return !settled_[static_cast<std::size_t>(duty)]; });
        if (!reached) record.report(record.place(), "no gap reaches this row: one before it fits all of that duty", "move it up");
        if (!row.when.asks_duty_only()) return;
        for (const Duty duty : row.when.duties) settled_[static_cast<std::size_t>(duty)] = true;
    }

    TableReader<DutyRow>& reader_;
    const Table<Feature>& features_;
    std::array<bool, 10> settled_{};  ///< an earlier row fits every gap of that duty
    Place last_;
};

}  // namespace

Table<DutyRow> read_duties(std::string_view yaml, const std::string& shown_as, const Table<Feature>& features) {
    TableReader<DutyRow> reader(yaml, shown_as, "duties");
    DutyReader rows(reader, features);
    Table<DutyRow> table = reader.read([&](Node node, Diagnostics& diagnostics) { return rows.read(node, diagnostics); });
    rows.finish(shown_as);
    return table;
}

Message cited(const CatalogSource& source) {
    const bool named = source.publisher != "none" && source.publisher != "not named";
    Message text = as_named(source.title);
    if (named) text = message("{}, {}", {text, as_named(source.publisher)});
    if (source.year != 0) text = message("{}, {}", {text, as_it_stands(std::to_string(source.year))});
    if (source.seen == CatalogSource::Seen::secondary) text = message("{} (second hand)", {text});
    const std::string said = text.english();
    const bool says_so = said.find("from memory") != std::string::npos || said.find("no published source") != std::string::npos;
    if (source.seen == CatalogSource::Seen::memory && !says_so) text = message("{} (from memory)", {text});
    return text;
}

Message cited(const std::vector<CatalogSource>& sources, const std::string& id) {
    for (const CatalogSource& source : sources) {
        if (source.id == id) return cited(source);
    }
    return as_it_stands(id);
}

std::string starred(std::string text) {
    for (const std::string_view mark : {" (from memory)", " (second hand)"}) {
        for (std::size_t at = text.find(mark); at != std::string::npos; at = text.find(mark, at))
            text.replace(at, mark.size(), "*");
    }
    return text;
}

Message starred(Message text) {
    if (text.parts.empty()) return text;
    text.pattern = starred(text.pattern);
    for (Message& part : text.parts) part = starred(part);
    return text;
}

}  // namespace seamward
