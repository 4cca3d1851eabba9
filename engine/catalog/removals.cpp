// SPDX-License-Identifier: GPL-3.0-or-later
#include "catalog/removals.h"

#include "catalog/table_reader.h"

namespace seamward {

namespace {

constexpr std::array<std::string_view, 10> removal_keys{"id",       "animals", "by",     "how",      "quiet_nights",
                                                        "material", "minutes", "source", "cautions", "seasons"};
constexpr std::array<std::string_view, 4> by_words{"one-way", "trapping", "licensed", "nothing"};
constexpr std::array<std::string_view, 5> season_keys{"state", "from", "to", "why", "source"};
constexpr std::array<std::string_view, 2> caution_keys{"text", "source"};
/// Longer than any row of seasons one after another.
constexpr int days_looked_ahead = 800;

class RemovalReader {
public:
    RemovalReader(std::string_view yaml, const std::string& shown_as, const Table<Pest>& pests)
        : reader_(yaml, shown_as, "removals"), pests_(pests) {}

    Table<Removal> read() {
        return reader_.read([&](Node node, Diagnostics& diagnostics) { return read_row(node, diagnostics); });
    }

private:
    Removal read_row(Node node, Diagnostics& diagnostics) {
        const Record record(node, removal_keys, "removal", diagnostics);
        Removal row;
        if (!record.usable()) return row;
        record.require({"by", "animals"});
        row.id = record.required_line("id");
        record.each("animals", [&](Node item) { read_animal(item, diagnostics, row); });
        row.by = static_cast<Removal::By>(record.word("by", by_words).value_or(0));
        row.how = record.required_line("how");
        row.quiet_nights = record.count("quiet_nights").value_or(0);
        row.material = record.line("material").value_or("");
        row.minutes = record.duration("minutes").value_or(0);
        row.source = reader_.source(record);
        record.each("cautions", [&](Node item) {
            const Record caution = reader_.record(item, caution_keys, "caution");
            row.cautions.push_back({caution.required_line("text"), reader_.source(caution)});
        });
        record.each("seasons", [&](Node item) { row.seasons.push_back(read_season(item)); });
        return row;
    }

    void read_animal(Node item, Diagnostics& diagnostics, Removal& row) {
        const std::optional<std::string> id = read_line(item, "animal", diagnostics);
        if (!id) return;
        if (pests_.find(*id) == nullptr)
            diagnostics.add(item.place(), "unknown animal \"" + *id + '"', suggestion(*id, pests_.ids()));
        if (std::find(animals_.begin(), animals_.end(), *id) != animals_.end())
            diagnostics.add(item.place(), "animal \"" + *id + "\" stands twice", "keep one");
        animals_.push_back(*id);
        row.animals.push_back(*id);
    }

    ClosedSeason read_season(Node item) {
        const Record record = reader_.record(item, season_keys, "season");
        record.require({"from", "to"});
        const std::chrono::month_day new_year = std::chrono::January / 1;
        return {record.line("state").value_or(""), record.day_of_year("from").value_or(new_year),
                record.day_of_year("to").value_or(new_year), record.required_line("why"), reader_.source(record)};
    }

    TableReader<Removal> reader_;
    const Table<Pest>& pests_;
    std::vector<std::string> animals_;
};

}  // namespace

const char* removal_word(Removal::By by) { return by_words.at(static_cast<std::size_t>(by)).data(); }

bool ClosedSeason::holds_on(Date date) const {
    const std::chrono::month_day day(date.month(), date.day());
    return from <= to ? from <= day && day <= to : from <= day || day <= to;
}

Table<Removal> read_removals(std::string_view yaml, const std::string& shown_as, const Table<Pest>& pests) {
    return RemovalReader(yaml, shown_as, pests).read();
}

const Removal* removal_of(const Table<Removal>& table, std::string_view animal) {
    for (const Removal& row : table.rows) {
        if (std::find(row.animals.begin(), row.animals.end(), animal) != row.animals.end()) return &row;
    }
    return nullptr;
}

std::optional<InSeason> closed_season(const Removal& removal, const std::string& state, Date date) {
    const auto of_state = [&](const ClosedSeason& season) { return season.state == state; };
    const bool own = !state.empty() && std::any_of(removal.seasons.begin(), removal.seasons.end(), of_state);
    const auto matters = [&](const ClosedSeason& season) {
        return state.empty() || season.state == (own ? state : std::string());
    };
    const auto season_on = [&](Date day) -> const ClosedSeason* {
        for (const ClosedSeason& season : removal.seasons) {
            if (matters(season) && season.holds_on(day)) return &season;
        }
        return nullptr;
    };
    const ClosedSeason* season = season_on(date);
    if (season == nullptr) return std::nullopt;
    Date over = date;
    for (int days = 1; days < days_looked_ahead && season_on(over) != nullptr; ++days) over = days_after(date, days);
    return InSeason{season, over};
}

}  // namespace seamward
