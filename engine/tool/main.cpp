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
#include "tool/console.h"
#include "tool/trace_command.h"
#include "tool/wrong_usage.h"

namespace {

/// What the process ends with; docs/commands.md explains them to users.
enum ExitCode : int { done = 0, bad_input = 1, wrong_usage = 2, fault_of_the_program = 4 };

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

void add_trace(CLI::App& app, seamward::TraceRequest& request) {
    CLI::App* trace = app.add_subcommand("trace", "Entry paths from outdoors to living spaces, ranked by their smallest gap");
    trace->add_option("JOB", request.job, "Job file, YAML or JSON")->required();
    trace->add_option("--pest", request.pests, "Only paths that let this animal through (repeat: any of them)")
        ->type_name("ID")
        ->allow_extra_args(false);
    trace->add_option("--to", request.to, "Paths to this space instead of the living spaces (repeatable)")
        ->type_name("SPACE")
        ->allow_extra_args(false);
    trace
        ->add_option_function<std::string>(
            "--top",
            [&request](const std::string& text) {
                const seamward::Parsed<std::uint32_t> count = seamward::parse_count(text);
                if (!count) throw seamward::WrongUsage("--top: " + count.fault.what);
                request.top = *count;
            },
            "How many paths, best first (10 when left out)")
        ->type_name("K");
    trace->add_flag("--json", request.json, "Answer in JSON");
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
    std::vector<std::string> names;
    for (const CLI::Option* option : app.get_subcommand(words.front())->get_options()) {
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
    const auto fail = [&](ExitCode code, const std::string& text, const std::vector<seamward::Diagnostic>& faults) {
        console.err << text << '\n';
        // Before the options are read, the word alone has to do.
        if (request.json || std::find(words.begin(), words.end(), "--json") != words.end()) answer_errors(faults, console.out);
        return code;
    };
    const auto fail_in_words = [&](ExitCode code, const std::string& what) {
        return fail(code, "seamward: " + seamward::printable(what), {{.what = what}});
    };

    CLI::App app("Seamward: the ways by which pests enter a house, and their smallest gaps", "seamward");
    app.set_version_flag("--version", SEAMWARD_VERSION);
    app.require_subcommand(1);
    add_trace(app, request);
    if (words.empty()) return fail(wrong_usage, app.help(), {});
    try {
        check_words(app, words);
        app.parse(argc, argv);
        const auto begin = std::chrono::steady_clock::now();
        const seamward::RunContext context([&](std::string_view stage) {
            if (std::chrono::steady_clock::now() - begin > std::chrono::seconds(1)) console.err << stage << " ...\n";
        });
        seamward::run_trace(request, console, context);
        console.out.flush();
        if (!console.out) throw std::runtime_error("the answer could not be written");
        return done;
    } catch (const CLI::Success& success) {
        return app.exit(success);
    } catch (const CLI::ParseError& error) {
        return fail_in_words(wrong_usage,
                             std::string(error.what()) + "; seamward --help and seamward COMMAND --help tell what there is");
    } catch (const seamward::WrongUsage& error) {
        return fail_in_words(wrong_usage, error.what());
    } catch (const seamward::BadInput& bad) {
        return fail(bad_input, bad.what(), bad.diagnostics());
    } catch (const std::bad_alloc&) {
        return fail_in_words(bad_input, "the input needs more memory than there is");
    } catch (const std::exception& fault) {
        return fail_in_words(fault_of_the_program, std::string("fault of the program: ") + fault.what());
    }
}
