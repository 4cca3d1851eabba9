// SPDX-License-Identifier: GPL-3.0-or-later
#include "teach/progress.h"

#include <fcntl.h>
#include <sys/file.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <charconv>
#include <cstring>

#include "base/file_io.h"
#include "base/json_writer.h"
#include "base/record.h"
#include "base/text.h"
#include "exchange/write_whole_file.h"
#include "teach/briefing.h"
#include "teach/reading.h"

namespace seamward {

namespace {

constexpr std::array<std::string_view, 12> keys{
    "seamward-progress", "trainee", "drill", "date", "points", "most", "passed", "harms", "missed",
    "false_alarms",      "title",   "names"};
constexpr std::array<std::string_view, 2> name_keys{"id", "name"};
constexpr std::uint64_t most_bytes = 64ULL << 20;
constexpr int most_points = 1'000'000;
constexpr const char* mend_line = "mend the line, or take it out; every line is one attempt as seamward drill check writes it";

int read_number(const Record& record, std::string_view key) {
    const Node node = record[key];
    int value = 0;
    const std::string_view text = node.present() ? node.text() : std::string_view();
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (!node.present())
        (void)record.require({key});
    else if (error != std::errc() || end != text.data() + text.size() || value < 0 || value > most_points)
        record.report(node.place(), std::string(key) + ": " + in_quotes(text) + " is no whole number from 0 on", mend_line);
    return value;
}

std::vector<std::string> read_ids(const Record& record, std::string_view key, Diagnostics& diagnostics) {
    std::vector<std::string> ids;
    record.each(key, [&](Node node) {
        if (std::optional<std::string> id = read_line(node, key, diagnostics)) ids.push_back(std::move(*id));
    });
    return ids;
}

std::map<std::string, Spoken> read_names(const Record& record, Diagnostics& diagnostics) {
    std::map<std::string, Spoken> names;
    record.each("names", [&](Node node) {
        const Record one(node, name_keys, "name", diagnostics);
        if (!one.usable() || !one.require({"id", "name"})) return;
        const std::string id = one.required_line("id");
        Spoken name = read_spoken(one, "name", diagnostics);
        if (!id.empty() && !name.empty()) names[id] = std::move(name);
    });
    return names;
}

Attempt read_attempt(Node node, Diagnostics& diagnostics) {
    const Record record(node, keys, "attempt", diagnostics);
    Attempt attempt;
    if (!record.usable()) return attempt;
    check_version(record, "seamward-progress");
    record.require({"passed"});
    attempt.trainee = record.required_line("trainee");
    attempt.drill = record.required_line("drill");
    if (is_said(record, "date")) attempt.date = record.date("date");
    attempt.points = read_number(record, "points");
    attempt.most = read_number(record, "most");
    if (attempt.points > attempt.most) record.report(record["points"].place(), "more points than there are", mend_line);
    attempt.passed = record.truth("passed").value_or(false);
    attempt.harms = read_ids(record, "harms", diagnostics);
    attempt.missed = read_ids(record, "missed", diagnostics);
    attempt.false_alarms = static_cast<std::size_t>(record.has("false_alarms") ? read_number(record, "false_alarms") : 0);
    attempt.title = read_spoken(record, "title", diagnostics);
    attempt.names = read_names(record, diagnostics);
    return attempt;
}

/// Reads one line; its faults are told at that line of the file.
void read_one(std::string_view line, std::uint32_t number, std::vector<Attempt>& attempts, Diagnostics& all) {
    std::optional<Document> document;
    try {
        document = parse_json(line, all.file());
    } catch (const BadInput& bad) {
        for (const Diagnostic& fault : bad.diagnostics()) all.add({number, fault.place.column}, fault.what, mend_line);
        return;
    }
    try {
        Diagnostics of_line(all.file());
        attempts.push_back(read_attempt(document->root(), of_line));
        of_line.throw_if_any();
    } catch (const BadInput& bad) {
        for (const Diagnostic& fault : bad.diagnostics())
            all.add({number, fault.place.column}, fault.what, fault.mend.empty() ? mend_line : fault.mend);
    }
}

void write_spoken(JsonWriter& json, const char* key, const Spoken& spoken) {
    json.key(key).begin_object().key("en").value(spoken.english).key("es").value(spoken.spanish).end_object();
}

void write_names(JsonWriter& json, const Attempt& attempt) {
    if (!attempt.title.empty()) write_spoken(json, "title", attempt.title);
    if (attempt.names.empty()) return;
    json.key("names").begin_array();
    for (const auto& [id, name] : attempt.names) {
        json.begin_object().key("id").value(id);
        write_spoken(json, "name", name);
        json.end_object();
    }
    json.end_array();
}

std::string written(const Attempt& attempt) {
    JsonWriter json;
    json.begin_object().key("seamward-progress").value(std::int64_t{1});
    json.key("trainee").value(attempt.trainee).key("drill").value(attempt.drill);
    if (attempt.date) json.key("date").value(date_text(*attempt.date));
    json.key("points").value(std::int64_t{attempt.points}).key("most").value(std::int64_t{attempt.most});
    json.key("passed").value(attempt.passed).key("harms").begin_array();
    for (const std::string& id : attempt.harms) json.value(id);
    json.end_array().key("missed").begin_array();
    for (const std::string& id : attempt.missed) json.value(id);
    json.end_array().key("false_alarms").value(static_cast<std::int64_t>(attempt.false_alarms));
    write_names(json, attempt);
    json.end_object();
    // In one line: what a JSON text has between its tokens may go, and no text of it holds a line end.
    std::string line;
    bool begins = true;
    for (const char letter : json.text()) {
        if (letter == '\n') {
            begins = true;
            continue;
        }
        if (begins && letter == ' ') continue;
        if (begins && !line.empty() && line.back() == ',') line += ' ';
        begins = false;
        line += letter;
    }
    return line + '\n';
}

/// A progress file is for one at a time from its reading to its writing. The lock is a file beside it, as the file itself is
/// replaced; it is never removed, as another may wait for it.
class ProgressLock {
public:
    ProgressLock(const std::filesystem::path& path, const std::string& shown_as) {
        std::error_code error;
        if (std::filesystem::exists(path, error) && !std::filesystem::is_regular_file(path, error)) return;
        // A link and what it points to are one file.
        std::filesystem::path lock = std::filesystem::weakly_canonical(path, error);
        if (error) lock = path;
        lock += ".lock";
        number_ = open(lock.c_str(), O_RDONLY | O_CREAT | O_CLOEXEC, 0666);
        // In shared folders the file of another user may be opened, and not asked to be made.
        if (number_ < 0 && errno == EACCES) number_ = open(lock.c_str(), O_RDONLY | O_CLOEXEC);
        int failed = number_ < 0 ? errno : 0;
        while (failed == 0 && flock(number_, LOCK_EX) != 0) {
            if (errno != EINTR) failed = errno;
        }
        if (failed == 0) return;
        if (number_ >= 0) close(number_);
        throw BadInput({{shown_as,
                         {},
                         std::string("nobody else can be kept from writing to it meanwhile (") + std::strerror(failed) + ')',
                         "check that its folder is there and that " + lock.filename().string() + " can be made in it"}});
    }
    ~ProgressLock() {
        if (number_ >= 0) close(number_);
    }
    ProgressLock(const ProgressLock&) = delete;
    ProgressLock& operator=(const ProgressLock&) = delete;

private:
    int number_ = -1;
};

/// What the round calls a gap of it, in one language; a gap that is no place of it has the survey's name.
std::string gap_name(const DrillRound& round, GapIndex gap, const Translator& say) {
    for (std::size_t i = 0; i < round.places.size(); ++i) {
        if (round.places[i].gap == gap) return printable(place_name(round, i, say));
    }
    return printable(say(round.job.survey[gap].called()));
}

}  // namespace

Attempt attempt_of(const DrillRound& round, const Answers& answers, const DrillResult& result) {
    const Translator english(Language::english), spanish(Language::spanish);
    Attempt attempt;
    const auto id_of = [&](GapIndex gap) {
        const std::string& id = round.job.survey[gap].id;
        attempt.names[id] = {gap_name(round, gap, english), gap_name(round, gap, spanish)};
        return id;
    };
    attempt.trainee = answers.trainee;
    attempt.drill = round.drill.id;
    attempt.title = round.drill.title;
    attempt.date = answers.date;
    attempt.points = result.points;
    attempt.most = result.most;
    attempt.passed = result.passed;
    for (const Harm& harm : result.harms) attempt.harms.push_back(id_of(harm.gap));
    for (std::size_t i = 0; i < result.places.size(); ++i) {
        if (result.places[i].missed()) attempt.missed.push_back(id_of(*round.places[i].gap));
    }
    attempt.false_alarms = result.false_alarms.size();
    return attempt;
}

std::vector<Attempt> parse_progress(std::string_view text, const std::string& shown_as) {
    std::vector<Attempt> attempts;
    Diagnostics faults(shown_as);
    std::uint32_t number = 0;
    for (std::size_t begin = 0; begin < text.size();) {
        const std::size_t end = text.find('\n', begin);
        ++number;
        if (end == std::string_view::npos) {
            faults.add({number, 1}, "the last line does not end: the file is cut off",
                       "take the line out, or end it if it is whole");
            break;
        }
        const std::string_view line = text.substr(begin, end - begin);
        if (is_blank(line))
            faults.add({number, 1}, "the line is empty", "take it out");
        else
            read_one(line, number, attempts, faults);
        begin = end + 1;
    }
    faults.throw_if_any();
    return attempts;
}

std::vector<Attempt> read_progress(const std::filesystem::path& path, const std::string& shown_as) {
    return parse_progress(read_file(path, shown_as, most_bytes), shown_as);
}

std::string written_progress(std::span<const Attempt> attempts) {
    std::string text;
    for (const Attempt& attempt : attempts) text += written(attempt);
    return text;
}

std::size_t add_attempt(const Attempt& attempt, const std::filesystem::path& path, const std::string& shown_as) {
    const ProgressLock lock(path, shown_as);
    std::vector<Attempt> attempts;
    std::error_code error;
    if (std::filesystem::exists(path, error)) attempts = read_progress(path, shown_as);
    attempts.push_back(attempt);
    write_whole_file(path, shown_as, written_progress(attempts));
    return static_cast<std::size_t>(std::count_if(attempts.begin(), attempts.end(), [&](const Attempt& one) {
        return one.trainee == attempt.trainee && one.drill == attempt.drill;
    }));
}

}  // namespace seamward
