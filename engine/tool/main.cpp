// SPDX-License-Identifier: GPL-3.0-or-later
#include <CLI/CLI.hpp>
#include <exception>

#include "base/diagnostics.h"
#include "base/json_writer.h"
#include "tool/console.h"
#include "tool/trace_command.h"
#include "tool/usage.h"

namespace {

/// What the process ends with; docs/commands.md explains them to users.
enum ExitCode : int { done = 0, bad_input = 1, wrong_usage = 2, fault_of_the_program = 4 };

/// With --json, standard output is one JSON document even when the input is bad.
void answer_errors(const seamward::BadInput& bad, std::ostream& out) {
    seamward::JsonWriter json;
    json.begin_object().key("errors").begin_array();
    for (const seamward::Diagnostic& fault : bad.diagnostics()) {
        json.begin_object().key("file").value(fault.file);
        json.key("line").value(std::int64_t{fault.place.line}).key("column").value(std::int64_t{fault.place.column});
        json.key("what").value(fault.what).key("mend").value(fault.mend).end_object();
    }
    json.end_array().end_object();
    out << json.text();
}

void add_trace(CLI::App& app, seamward::TraceRequest& request) {
    CLI::App* trace = app.add_subcommand("trace", "Entry paths from outdoors to living spaces, ranked by their smallest gap");
    trace->add_option("JOB", request.job, "Job file, YAML or JSON")->required();
    trace->add_option("--pest", request.pests, "Only paths that let this animal through (repeat: any of them)")->type_name("ID")->allow_extra_args(false);
    trace->add_option("--to", request.to, "Paths to this space instead of the living spaces (repeatable)")->type_name("SPACE")->allow_extra_args(false);
    trace->add_option("--top", request.top, "How many paths, best first")->type_name("K")->check(CLI::Range(std::size_t{1}, std::size_t{1'000'000'000}))->capture_default_str();
    trace->add_flag("--json", request.json, "Answer in JSON");
}

}  // namespace

int main(int argc, char** argv) {
    CLI::App app("Seamward: the ways by which pests enter a house, and their smallest gaps", "seamward");
    app.set_version_flag("--version", SEAMWARD_VERSION);
    app.require_subcommand(1);
    seamward::TraceRequest request;
    add_trace(app, request);
    const seamward::Console console = seamward::Console::of_process();
    try {
        app.parse(argc, argv);
        const seamward::RunContext context;
        seamward::run_trace(request, console, context);
        console.out.flush();
        if (!console.out) throw std::runtime_error("the answer could not be written");
        return done;
    } catch (const CLI::Success& success) {
        return app.exit(success);
    } catch (const CLI::ParseError& error) {
        console.err << "seamward: " << error.what() << "\nseamward --help and seamward COMMAND --help tell what there is\n";
        return wrong_usage;
    } catch (const seamward::WrongUsage& error) {
        console.err << "seamward: " << error.what() << '\n';
        return wrong_usage;
    } catch (const seamward::BadInput& bad) {
        console.err << bad.what() << '\n';
        if (request.json) answer_errors(bad, console.out);
        return bad_input;
    } catch (const std::exception& fault) {
        console.err << "seamward: fault of the program: " << fault.what() << '\n';
        return fault_of_the_program;
    }
}
