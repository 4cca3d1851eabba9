// SPDX-License-Identifier: GPL-3.0-or-later
#include <CLI/CLI.hpp>
#include <algorithm>
#include <chrono>
#include <exception>
#include <new>
#include <string>
#include <vector>

#include "base/diagnostics.h"
#include "base/json_writer.h"
#include "base/nearest_word.h"
#include "base/quantity.h"
#include "base/text.h"
#include "tool/audit_command.h"
#include "tool/completion_command.h"
#include "tool/console.h"
#include "tool/drill_command.h"
#include "tool/find_command.h"
#include "tool/interrupt.h"
#include "tool/lots_command.h"
#include "tool/picture_command.h"
#include "tool/plan_command.h"
#include "tool/quote_command.h"
#include "tool/report_command.h"
#include "tool/sweep_command.h"
#include "tool/trace_command.h"
#include "tool/worksheet_command.h"
#include "tool/wrong_usage.h"
#ifdef SEAMWARD_PICTURES
#include "offscreen/draw_picture.h"
#endif

namespace {

/// What the process ends with; docs/commands.md explains them to users.
enum ExitCode : int { done = 0, bad_input = 1, wrong_usage = 2, no_plan = 3, fault_of_the_program = 4 };

/// With --json, standard output is one JSON document even when there is no answer.
void answer_errors(const std::vector<seamward::Diagnostic>& faults, std::ostream& out) {
    seamward::JsonWriter json;
    json.begin_object().key("errors").begin_array();
    for (const seamward::Diagnostic& fault : faults) {
        json.begin_object().key("file").value(seamward::printable(fault.file));
        json.key("line").value(std::int64_t{fault.place.line}).key("column").value(std::int64_t{fault.place.column});
        json.key("what").value(seamward::printable(fault.what)).key("mend").value(seamward::printable(fault.mend)).end_object();
    }
    json.end_array().end_object();
    out << json.text();
}

void add_pests_and_ends(CLI::App& command, std::vector<std::string>& pests, std::vector<std::string>& to) {
    command.add_option("--pest", pests, "Only paths that let this animal through (repeat: any of them)")
        ->type_name("ID")
        ->allow_extra_args(false);
    command.add_option("--to", to, "Paths to this space instead of the living spaces (repeatable)")
        ->type_name("SPACE")
        ->allow_extra_args(false);
}

/// A whole number from 1 as the value of an option.
void add_count(CLI::App& command, const std::string& option, const std::string& word, const std::string& text,
               std::size_t& count) {
    command
        .add_option_function<std::string>(
            option,
            [option, &count](const std::string& value) {
                const seamward::Parsed<std::uint32_t> parsed = seamward::parse_count(value);
                if (!parsed) throw seamward::WrongUsage(option + ": " + parsed.fault.what);
                count = *parsed;
            },
            text)
        ->type_name(word);
}

void add_trace(CLI::App& app, seamward::TraceRequest& request) {
    CLI::App* trace = app.add_subcommand("trace", "Entry paths from outdoors to living spaces, ranked by their smallest gap");
    trace->add_option("JOB", request.job, "Job file, YAML or JSON")->required();
    add_pests_and_ends(*trace, request.pests, request.to);
    add_count(*trace, "--top", "K", "How many paths, best first (10 when left out)", request.top);
    trace->add_flag("--json", request.json, "Answer in JSON");
}

/// What every command that plans has.
void add_planning(CLI::App& command, seamward::Planning& planning) {
    command.add_option("JOB", planning.job, "Job file, YAML or JSON")->required();
    command.add_option("--against", planning.against, "Plan against this animal (repeatable; the job's when left out)")
        ->type_name("ID")
        ->allow_extra_args(false);
    command.add_option("--on", planning.date, "Day of the work, such as 2026-06-15 (today when left out)")->type_name("DATE");
    command.add_option("--prices", planning.prices, "Price book of your own, YAML")->type_name("FILE");
}

void add_nominal(CLI::App& command, seamward::Planning& planning) {
    command.add_flag("--nominal", planning.nominal, "Take widths as stated, without their plus-minus");
}

void add_json(CLI::App& command, bool& json) { command.add_flag("--json", json, "Answer in JSON"); }

void add_plan(CLI::App& app, seamward::PlanRequest& request) {
    CLI::App* plan = app.add_subcommand("plan", "The cheapest closings that leave the animals no way in, in working order");
    add_planning(*plan, request);
    add_nominal(*plan, request);
    add_json(*plan, request.json);
    plan->add_option("--budget", request.budget, "Spend no more than this, such as $400")->type_name("MONEY");
    plan->add_flag("--explain", request.explain, "Tell how sure it is: chances of a way in, and what to measure again");
    plan->add_flag("--diy", request.diy, "Tell which steps an owner can do safely, and what is left for hire");
}

void add_completion(CLI::App& app, seamward::CompletionRequest& request) {
    CLI::App* completion =
        app.add_subcommand("completion", "The page to leave with the customer, or what keeps it from being given");
    add_planning(*completion, request);
    add_nominal(*completion, request);
    add_json(*completion, request.json);
}

void add_quote(CLI::App& app, seamward::QuoteRequest& request) {
    CLI::App* quote = app.add_subcommand("quote", "What a customer can order, what each option costs, and what it leaves open");
    add_planning(*quote, request);
    add_json(*quote, request.json);
}

void add_worksheet(CLI::App& app, seamward::WorksheetRequest& request) {
    CLI::App* sheet = app.add_subcommand("worksheet", "The sheet for whoever does the work: stop by stop, with boxes");
    add_planning(*sheet, request);
    add_nominal(*sheet, request);
}

void add_report(CLI::App& app, seamward::ReportRequest& request) {
    CLI::App* report = app.add_subcommand("report", "What was found and what to do, as one page that works offline");
    add_planning(*report, request);
    add_nominal(*report, request);
    report->add_option("-o,--output", request.file, "Page to write, or table")
        ->type_name("FILE.html|.pdf|.csv|.xlsx")
        ->required();
    report->add_option("--compare", request.before, "Job file of an earlier visit: tells what changed since")
        ->type_name("OLD_JOB");
    report->add_option("--for", request.audience, "homeowner (when left out), crew, builder, diy, survey")->type_name("WHOM");
    report->add_option("--lang", request.language, "en (when left out) or es")->type_name("LANGUAGE");
    report->add_option("--lengths", request.lengths, "in (when left out; millimeters beside them) or mm")->type_name("UNIT");
    report->add_option("--table", request.table, "Of a .csv file: gaps (when left out), closings, materials")->type_name("WHICH");
    report->add_option("--paper", request.paper, "letter (when left out) or a4")->type_name("SIZE");
}

/// What says how to read a 3D file and what to look for in it.
void add_model_options(CLI::App& command, seamward::ModelOptions& options) {
    command.add_option("--room", options.rooms, "A point in a room, in meters, and what to call the room (repeatable)")
        ->type_name("NAME[:KIND]=X,Y,Z")
        ->allow_extra_args(false);
    command.add_option("--smallest", options.smallest, "What is narrower counts as shut (0.3 mm when left out)")
        ->type_name("WIDTH");
    command.add_option("--widest", options.widest, "What is wider is no gap but one space (25 mm when left out)")
        ->type_name("WIDTH");
    command.add_option("--unit", options.unit, "What one unit of the file is (what the file says, else m)")
        ->type_name("m|cm|mm|in|ft");
    command.add_option("--up", options.up, "The axis of the file that points up (what the file says, else y)")
        ->type_name("x|y|z");
}

void add_find(CLI::App& app, seamward::FindRequest& request) {
    CLI::App* find = app.add_subcommand("find", "Spaces and gaps of a 3D file, and the ways in, from its geometry alone");
    find->add_option("MODEL", request.model, "3D file; docs/models.md lists the kinds")->required();
    add_model_options(*find, request);
    find->add_option("-o,--output", request.output, "Job file to write")->type_name("JOB");
    add_json(*find, request.json);
}

void add_sweep(CLI::App& app, seamward::SweepRequest& request) {
    CLI::App* sweep = app.add_subcommand("sweep", "Many lots at once: a row for each, and which details of which plan leak");
    sweep->add_option("LOTS", request.lots, "Folder of job files, or a list of them, one a line")
        ->type_name("LIST|FOLDER")
        ->required();
    sweep->add_option("--do", request.work, "What to do for each lot")->type_name("trace|plan|audit")->required();
    sweep->add_option("-o,--output", request.folder, "Folder for the results; a sweep into it goes on where it ended")
        ->type_name("FOLDER")
        ->required();
    sweep->add_option("--against", request.against, "Against this animal (repeatable; each job's own when left out)")
        ->type_name("ID")
        ->allow_extra_args(false);
    sweep->add_option("--on", request.date, "Day of the work, such as 2026-06-15 (today when left out)")->type_name("DATE");
    sweep->add_option("--prices", request.prices, "Price book of your own, YAML")->type_name("FILE");
    add_count(*sweep, "--threads", "N", "Lots worked on at once, of each process (all processors when left out)",
              request.threads);
}

void add_audit(CLI::App& app, seamward::AuditRequest& request) {
    CLI::App* audit = app.add_subcommand("audit", "What codes and the trade ask of a house, measured: passed, failed, not known");
    audit->add_option("JOB|MODEL", request.target, "Job file, or 3D file")->required();
    audit->add_option("--rules", request.rules, "Rules of your own in place of the shipped ones, YAML")->type_name("FILE");
    audit->add_option("--bcf", request.bcf, "Write the findings as a BCF 2.1 file")->type_name("FILE.bcf");
    audit->add_option("--compare", request.before, "An earlier job or model: tells what was put right since")->type_name("OTHER");
    audit->add_option("--pest", request.pests, "Ways in of this animal are findings (repeatable; the job's when left out)")
        ->type_name("ID")
        ->allow_extra_args(false);
    add_count(*audit, "--top", "K", "How many ways in become findings, best first (50 when left out)", request.top);
    audit->add_option("--on", request.date, "Day of the audit, such as 2026-06-15 (today when left out)")->type_name("DATE");
    audit->add_option("--lang", request.language, "Of the BCF file: en (when left out) or es")->type_name("LANGUAGE");
    add_model_options(*audit, request);
    add_json(*audit, request.json);
}

void add_lots(CLI::App& app, seamward::LotsRequest& request) {
    CLI::App* lots = app.add_subcommand("lots", "Made-up job files of a subdivision, to try a sweep with");
    lots->add_option("--count", request.count, "How many lots (100 when left out)")->type_name("N");
    lots->add_option("--seed", request.seed, "The same seed makes the same lots (1 when left out)")->type_name("N");
    lots->add_option("--bad", request.bad, "So many of them with a fault (none when left out)")->type_name("N");
    lots->add_option("-o,--output", request.folder, "Folder to make")->type_name("FOLDER")->required();
}

void add_picture(CLI::App& app, seamward::PictureCommand& command) {
    CLI::App* picture = app.add_subcommand("picture", "The house of a job and its ways in as a picture");
    picture->add_option("JOB", command.job, "Job file with a described house or a model")->required();
    picture->add_option("-o,--output", command.file, "PNG to write")->type_name("FILE.png")->required();
    add_pests_and_ends(*picture, command.pests, command.to);
    add_count(*picture, "--way", "N", "Show this way in, by its rank (1 when left out)", command.way);
    picture->add_option("--gap", command.gap, "Show this gap from close by")->type_name("ID");
    picture
        ->add_option_function<std::string>(
            "--size", [&command](const std::string& text) { seamward::parse_picture_size(text, command); },
            "Width and height in pixels (1600x1100 when left out)")
        ->type_name("WxH");
    picture->add_flag("--without-words", command.without_words,
                      "Only the house and the line of the way, as large as there is room");
}

void add_export(CLI::App& app, seamward::PictureCommand& command) {
    CLI::App* exported = app.add_subcommand("export", "The solids of a job's house as a 3D file");
    exported->add_option("JOB", command.job, "Job file with a described house")->required();
    exported->add_option("-o,--output", command.file, "3D file to write")->type_name("FILE.glb|FILE.obj")->required();
}

void draw(const seamward::PictureCommand& command, const seamward::Console& console, const seamward::RunContext& context) {
    if (!command.file.ends_with(".png"))
        throw seamward::WrongUsage("-o: " + seamward::in_quotes(command.file) + " does not end in .png");
#ifdef SEAMWARD_PICTURES
    const seamward::PictureContent content = seamward::picture_content(command, context);
    std::vector<seamward::viewer::DrawnPath> paths;
    for (std::size_t i = 0; i < content.ways.size(); ++i) paths.push_back({content.ways[i], content.routes[i]});
    seamward::viewer::PictureRequest request;
    request.file = command.file;
    request.width = command.width;
    request.height = command.height;
    request.rank = command.way;
    request.more_ways = content.more_ways;
    request.animals = content.animals;
    request.closeup = content.closeup;
    request.words = !command.without_words;
    context.stage("drawing");
    seamward::viewer::draw_picture(content.job.house, content.heading, paths, request);
    console.out << command.file << '\n';
#else
    (void)console;
    context.check();
    throw seamward::WrongUsage("this program was built without pictures (SEAMWARD_VIEWER=OFF)");
#endif
}

/// CLI11 says that a word was not expected; this says what it was probably meant to be.
void check_words(const CLI::App& app, const std::vector<std::string>& words) {
    if (words.front().starts_with('-')) return;
    std::vector<std::string_view> known;
    for (const CLI::App* command : app.get_subcommands([](const CLI::App*) { return true; }))
        known.emplace_back(command->get_name());
    if (std::find(known.begin(), known.end(), words.front()) == known.end()) {
        throw seamward::WrongUsage("unknown command " + seamward::in_quotes(words.front()) + "; " +
                                   seamward::suggestion(words.front(), known));
    }
    // Of a command that has commands of its own, such as drill, those count.
    const CLI::App* command = app.get_subcommand(words.front());
    const auto under = command->get_subcommands([](const CLI::App*) { return true; });
    if (!under.empty()) {
        if (words.size() > 1) check_words(*command, {words.begin() + 1, words.end()});
        return;
    }
    std::vector<std::string> names;
    for (const CLI::Option* option : command->get_options()) {
        for (const std::string& name : option->get_lnames()) names.push_back("--" + name);
    }
    const std::vector<std::string_view> options(names.begin(), names.end());
    for (const std::string& word : words) {
        if (word == "--") return;  // from here on words are no options
        const std::string option = word.substr(0, word.find('='));
        if (!option.starts_with("--") || std::find(options.begin(), options.end(), option) != options.end()) continue;
        throw seamward::WrongUsage("unknown option " + seamward::in_quotes(option) + "; " +
                                   seamward::suggestion(option, options));
    }
}

}  // namespace

int main(int argc, char** argv) {
    const std::vector<std::string> words(argv + 1, argv + argc);
    const seamward::Console console = seamward::Console::of_process();
    seamward::TraceRequest request;
    seamward::PictureCommand picture, exported;
    seamward::PlanRequest planned;
    seamward::CompletionRequest completed;
    seamward::QuoteRequest quoted;
    seamward::ReportRequest reported;
    seamward::WorksheetRequest sheet;
    seamward::FindRequest finding;
    seamward::AuditRequest auditing;
    seamward::SweepRequest sweeping;
    sweeping.version = SEAMWARD_VERSION;
    seamward::LotsRequest making;
    seamward::DrillRequest drill;
    const auto fail = [&](ExitCode code, const std::string& text, const std::vector<seamward::Diagnostic>& faults) {
        console.err << text << '\n';
        // Before the options are read, the word alone has to do.
        if (request.json || planned.json || completed.json || quoted.json || finding.json || auditing.json || drill.json ||
            std::find(words.begin(), words.end(), "--json") != words.end())
            answer_errors(faults, console.out);
        return code;
    };
    const auto fail_in_words = [&](ExitCode code, const std::string& what) {
        return fail(code, "seamward: " + seamward::printable(what), {{.what = what}});
    };

    const auto finish = [&](ExitCode code) {
        console.out.flush();
        if (!console.out) throw std::runtime_error("the answer could not be written");
        return code;
    };

    CLI::App app("Seamward: the ways by which pests enter a house, and their smallest gaps", "seamward");
    app.set_version_flag("--version", SEAMWARD_VERSION);
    app.require_subcommand(1);
    add_trace(app, request);
    add_plan(app, planned);
    add_completion(app, completed);
    add_quote(app, quoted);
    add_report(app, reported);
    add_worksheet(app, sheet);
    add_find(app, finding);
    add_audit(app, auditing);
    add_sweep(app, sweeping);
    add_lots(app, making);
    seamward::add_drill(app, drill);
    add_picture(app, picture);
    add_export(app, exported);
    if (words.empty()) return fail(wrong_usage, app.help(), {});
    const auto fail_by_signal = [&] {
        console.err << "seamward: stopped; nothing was written\n";
        seamward::end_by_signal(seamward::CancelOnSignal::signal_seen());
        return fault_of_the_program;
    };
    try {
        check_words(app, words);
        app.parse(argc, argv);
        const auto begin = std::chrono::steady_clock::now();
        std::string last;
        seamward::RunContext context([&](std::string_view stage) {
            if (stage == last || std::chrono::steady_clock::now() - begin <= std::chrono::seconds(1)) return;
            console.err << stage << " ...\n";
            last = stage;
        });
        if (app.got_subcommand("trace")) seamward::run_trace(request, console, context);
        if (app.got_subcommand("plan") && !seamward::run_plan(planned, console, context)) return finish(no_plan);
        if (app.got_subcommand("quote") && !seamward::run_quote(quoted, console, context)) return finish(no_plan);
        if (app.got_subcommand("completion")) seamward::run_completion(completed, console, context);
        if (app.got_subcommand("worksheet") && !seamward::run_worksheet(sheet, console, context)) return finish(no_plan);
        if (app.got_subcommand("report")) seamward::run_report(reported, console, context);
        if (app.got_subcommand("drill")) seamward::run_drill(app, drill, console, context);
        if (app.got_subcommand("find")) {
            const seamward::CancelOnSignal guard(context);
            seamward::run_find(finding, console, context);
        }
        if (app.got_subcommand("lots")) seamward::run_lots(making, console, context);
        if (app.got_subcommand("sweep")) seamward::run_sweep(sweeping, console, context);
        if (app.got_subcommand("audit")) {
            const seamward::CancelOnSignal guard(context);
            seamward::run_audit(auditing, console, context);
        }
        if (app.got_subcommand("picture")) draw(picture, console, context);
        if (app.got_subcommand("export")) seamward::export_house(exported.job, exported.file, context);
        return finish(done);
    } catch (const CLI::Success& success) {
        return app.exit(success);
    } catch (const CLI::ParseError& error) {
        return fail_in_words(wrong_usage,
                             std::string(error.what()) + "; seamward --help and seamward COMMAND --help tell what there is");
    } catch (const seamward::WrongUsage& error) {
        return fail_in_words(wrong_usage, error.what());
    } catch (const seamward::Cancelled&) {
        return fail_by_signal();
    } catch (const seamward::BadInput& bad) {
        // Ctrl-C also reaches the program that reads the model, which then seems to fail.
        if (seamward::CancelOnSignal::signal_seen() != 0) return fail_by_signal();
        return fail(bad_input, bad.what(), bad.diagnostics());
#ifdef SEAMWARD_PICTURES
    } catch (const seamward::viewer::BadPicture& bad) {
        return fail_in_words(bad_input, bad.what());
#endif
    } catch (const std::overflow_error& fault) {
        return fail_in_words(bad_input, std::string(fault.what()) + "; divide the job, or check its prices and counts");
    } catch (const std::length_error& fault) {
        return fail_in_words(bad_input, fault.what());
    } catch (const std::bad_alloc&) {
        return fail_in_words(bad_input, "the input needs more memory than there is");
    } catch (const std::exception& fault) {
        return fail_in_words(fault_of_the_program, std::string("fault of the program: ") + fault.what());
    }
}
