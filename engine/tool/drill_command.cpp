// SPDX-License-Identifier: GPL-3.0-or-later
#include "tool/drill_command.h"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <array>

#include "base/nearest_word.h"
#include "base/text.h"
#include "exchange/write_whole_file.h"
#include "teach/make_drill.h"
#include "teach/progress.h"
#include "tool/wrong_usage.h"

namespace seamward {

namespace {

Language language_of(const DrillRequest& request) {
    if (request.language == "en") return Language::english;
    if (request.language == "es") return Language::spanish;
    throw WrongUsage("--lang: unknown word " + in_quotes(request.language) + "; known: en, es");
}

void list_drills(const DrillRequest& request, const Translator& say, const Console& console, const RunContext& context) {
    const std::optional<std::vector<std::filesystem::path>> files = drill_files(request.folder);
    if (!files) throw WrongUsage(in_quotes(request.folder) + " is no folder of drills; name one");
    if (files->empty())
        print_paragraph("",
                        say(message("No drill is in {}: the first key of a drill file is seamward-drill.",
                                    {as_it_stands(printable(request.folder))})),
                        console);
    for (const std::filesystem::path& file : *files) {
        const DrillRound round = read_drill(file, context);
        const Briefing brief = briefing(round, say);
        print_paragraph(padded(file.string(), 40) + "  ",
                        say(message("{} ({}, places: {})", {as_it_stands(brief.title), as_it_stands(brief.difficulty),
                                                            as_it_stands(brief.places.size())})),
                        console);
    }
}

std::size_t place_number(const std::string& word, const DrillRound& round) {
    const Parsed<std::uint32_t> number = parse_count(word);
    if (!number || *number > round.places.size())
        throw WrongUsage("there is no place " + in_quotes(word) + "; the briefing has places 1 to " +
                         std::to_string(round.places.size()));
    return *number - 1;
}

void look(const DrillRequest& request, const Translator& say, const Console& console, const RunContext& context) {
    const DrillRound round = read_drill(request.drill, context);
    for (const std::string& word : request.places) {
        const std::size_t place = place_number(word, round);
        print_paragraph(std::to_string(place + 1) + "  ", place_name(round, place, say), console);
        for (const std::string& note : close_look(round, place, say)) print_paragraph("     ", note, console);
    }
}

void check(const DrillRequest& request, const Translator& say, const Console& console, const RunContext& context) {
    const DrillRound round = read_drill(request.drill, context);
    const Answers answers = read_answers(request.answers, round);
    const DrillResult result = score(round, answers);
    const DrillFeedback told = feedback(round, answers, result, say, context);
    if (request.keep) {
        const std::size_t attempts = add_attempt(attempt_of(round, answers, result), *request.keep, *request.keep);
        console.err << say(message("attempt {} of {} at this drill",
                                   {as_it_stands(attempts), as_it_stands(printable(answers.trainee))}))
                    << '\n';
    }
    if (request.json)
        console.out << check_answer(round, answers, result, told);
    else
        print_feedback(told, say, console);
}

void brief_on(const DrillRequest& request, const Translator& say, const Console& console, const RunContext& context) {
    const DrillRound round = read_drill(request.drill, context);
    const Briefing brief = briefing(round, say);
    if (request.json)
        console.out << briefing_answer(round, brief);
    else
        print_briefing(brief, say, console);
}

void write(const DrillRequest& request, const std::string& text, const Console& console) {
    write_whole_file(request.file, request.file, text);
    console.out << request.file << '\n';
}

void give_key(const DrillRequest& request, const Console& console, const RunContext& context) {
    const DrillRound round = read_drill(request.drill, context);
    const std::string text = written_answers(perfect_answers(round, "key"), round);
    if (request.file.empty())
        console.out << text;
    else
        write(request, text, console);
}

void summarize(const DrillRequest& request, const Translator& say, const Console& console) {
    std::vector<Attempt> attempts;
    for (const std::string& file : request.progress) {
        std::vector<Attempt> more = read_progress(file, file);
        std::move(more.begin(), more.end(), std::back_inserter(attempts));
    }
    write(request, class_summary(attempts, say), console);
}

/// The house that a random drill is on when none is named: the harder, the larger.
const char* usual_house(Difficulty difficulty) {
    constexpr std::array houses{"models/wall-corner.yaml", "models/larkspur.yaml", "models/quillfeather.yaml"};
    return houses.at(static_cast<std::size_t>(difficulty));
}

void make(const DrillRequest& request, const Console& console, const RunContext& context) {
    constexpr std::array<std::string_view, 3> words{"easy", "medium", "hard"};
    const auto word = std::find(words.begin(), words.end(), request.difficulty);
    if (word == words.end())
        throw WrongUsage("--difficulty: unknown word " + in_quotes(request.difficulty) + "; known: easy, medium, hard");
    const Parsed<std::uint32_t> seed = parse_count(request.seed);
    if (!seed) throw WrongUsage("--seed: " + seed.fault.what);
    const auto difficulty = static_cast<Difficulty>(word - words.begin());
    const std::filesystem::path house = request.house.value_or(usual_house(difficulty));
    std::error_code error;
    if (!request.house && !std::filesystem::exists(house, error))
        throw WrongUsage("there is no " + house.string() +
                         " here; name a house file with --house, or go to the folder of Seamward");
    const std::filesystem::path folder = request.file;
    refuse_files_of_others(folder);
    const MadeDrill made = make_drill(house, *seed, difficulty, context);
    std::filesystem::create_directories(folder, error);
    if (error) throw WrongUsage("-o: " + in_quotes(request.file) + " is no folder and cannot be made one");
    const std::array<std::pair<const char*, const std::string*>, 3> texts{
        {{"house.yaml", &made.house}, {"job.yaml", &made.job}, {"drill.yaml", &made.drill}}};
    std::vector<WholeFile> files;
    for (const auto& [name, text] : texts) files.push_back({folder / name, (folder / name).string(), *text});
    write_whole_files(files);
    console.out << (folder / "drill.yaml").string() << '\n';
}

void teach(const DrillRequest& request, const Translator& say, const Console& console) {
    if (!request.file.empty()) {
        write(request, lesson_page(say.language()), console);
        return;
    }
    print_lesson(envelope_lesson(say), console);
}

}  // namespace

void run_drill(const CLI::App& app, const DrillRequest& request, const Console& console, const RunContext& context) {
    const Translator say(language_of(request));
    const std::string verb = app.get_subcommand("drill")->get_subcommands().front()->get_name();
    if (verb == "list") list_drills(request, say, console, context);
    if (verb == "brief") brief_on(request, say, console, context);
    if (verb == "look") look(request, say, console, context);
    if (verb == "blank") write(request, blank_answers(read_drill(request.drill, context), say), console);
    if (verb == "check") check(request, say, console, context);
    if (verb == "key") give_key(request, console, context);
    if (verb == "sheet") write(request, briefing_sheet(read_drill(request.drill, context), say), console);
    if (verb == "summary") summarize(request, say, console);
    if (verb == "make") make(request, console, context);
    if (verb == "lesson") teach(request, say, console);
}

}  // namespace seamward
