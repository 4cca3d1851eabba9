// SPDX-License-Identifier: GPL-3.0-or-later
#include <CLI/CLI.hpp>

#include "tool/drill_command.h"

namespace seamward {

namespace {

void add_language(CLI::App& command, DrillRequest& request) {
    command.add_option("--lang", request.language, "Language: en or es (en when left out)")->type_name("en|es");
}

void add_drill_file(CLI::App& command, DrillRequest& request) {
    command.add_option("DRILL", request.drill, "Drill file, YAML or JSON")->required();
}

void add_output(CLI::App& command, DrillRequest& request, const char* text, const char* type) {
    command.add_option("-o,--output", request.file, text)->type_name(type)->required();
}

void add_trainee_commands(CLI::App& drill, DrillRequest& request) {
    CLI::App* list = drill.add_subcommand("list", "The drills of a folder, from easy to hard by their names");
    list->add_option("FOLDER", request.folder, "Folder of drill files (scenarios/drills when left out)");
    CLI::App* brief = drill.add_subcommand("brief", "The story and the places to look at; not which of them are open");
    add_drill_file(*brief, request);
    brief->add_flag("--json", request.json, "Answer in JSON");
    CLI::App* look = drill.add_subcommand("look", "What hands and gauges tell at some places");
    add_drill_file(*look, request);
    look->add_option("PLACE", request.places, "Numbers of the briefing")->required();
    CLI::App* blank = drill.add_subcommand("blank", "An answers file to fill in");
    add_drill_file(*blank, request);
    add_output(*blank, request, "Answers file to write", "FILE.yaml");
    CLI::App* check = drill.add_subcommand("check", "Points, what does harm, and the ways that were missed");
    add_drill_file(*check, request);
    check->add_option("ANSWERS", request.answers, "Answers file, YAML or JSON")->required();
    check->add_option("--progress", request.keep, "File that the attempt is added to, made when there is none")
        ->type_name("FILE");
    check->add_flag("--json", request.json, "Answer in JSON");
    for (CLI::App* command : {list, brief, look, blank, check}) add_language(*command, request);
}

void add_trainer_commands(CLI::App& drill, DrillRequest& request) {
    CLI::App* summary = drill.add_subcommand("summary", "A class as a table: who did what, and what is missed most");
    summary->add_option("PROGRESS", request.progress, "Progress files")->required();
    add_output(*summary, request, "Table to write", "FILE.csv");
    CLI::App* sheet = drill.add_subcommand("sheet", "The briefing as a page to print and to write on");
    add_drill_file(*sheet, request);
    add_output(*sheet, request, "Page to write", "FILE.html");
    CLI::App* key = drill.add_subcommand("key", "For the trainer: answers that have all points");
    add_drill_file(*key, request);
    key->add_option("-o,--output", request.file, "Answers file to write; printed when left out")->type_name("FILE.yaml");
    CLI::App* make = drill.add_subcommand("make", "A random drill: a house, its job and a drill, in a folder of their own");
    make->add_option("--seed", request.seed, "A whole number from 1 on; the same one makes the same drill (1 when left out)")
        ->type_name("N");
    make->add_option("--difficulty", request.difficulty, "How much is planted (easy when left out)")
        ->type_name("easy|medium|hard");
    make->add_option("--house", request.house, "House file (one of models/ when left out)")->type_name("FILE");
    make->add_option("-o,--output", request.file, "Folder to write into")->type_name("FOLDER")->required();
    CLI::App* lesson =
        drill.add_subcommand("lesson", "The skin of a house, part by part: what each keeps out, and how water leaves");
    lesson->add_option("-o,--output", request.file, "Page to write, with drawn sections; as text when left out")
        ->type_name("FILE.html");
    for (CLI::App* command : {summary, sheet, lesson}) add_language(*command, request);
}

}  // namespace

void add_drill(CLI::App& app, DrillRequest& request) {
    CLI::App* drill = app.add_subcommand("drill", "Training: find what is open in a house, and be scored");
    drill->require_subcommand(1);
    add_trainee_commands(*drill, request);
    add_trainer_commands(*drill, request);
}

}  // namespace seamward
