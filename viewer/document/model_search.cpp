// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/model_search.h"

#include <QCoreApplication>
#include <QDir>
#include <QFileInfo>
#include <algorithm>
#include <filesystem>

#include "base/diagnostics.h"
#include "base/measure_text.h"
#include "base/text.h"
#include "exchange/write_whole_file.h"
#include "job_file/found_survey.h"
#include "job_file/write_job.h"

namespace seamward::viewer {

namespace {

namespace fs = std::filesystem;

struct Words {
    Q_DECLARE_TR_FUNCTIONS(model_search)
};

/// A stage of the engine in the words of the window.
QString stage_words(std::string_view stage) {
    if (stage == "reading the model") return Words::tr("Reading the model");
    if (stage == "mending parts") return Words::tr("Mending its parts");
    if (stage == "cutting the air into cells" || stage == "telling air from solid") return Words::tr("Telling air from walls");
    if (stage == "looking for spaces") return Words::tr("Looking for rooms and cavities");
    if (stage == "measuring openings" || stage == "measuring gaps") return Words::tr("Measuring gaps");
    if (stage == "looking for pockets" || stage == "looking where parts touch") return Words::tr("Looking where parts touch");
    return Words::tr("Working");
}

/// A file by the real name of its folder and its own name, which may be that of a link.
fs::path in_real_folder(const fs::path& file) {
    const fs::path path = fs::absolute(file);
    return fs::canonical(path.parent_path()) / path.filename();
}

/// The model as the job file names it: from the job file's folder.
ModelReference model_reference(const ModelRequest& request) {
    const fs::path model = in_real_folder(request.model.toStdString());
    const fs::path folder = in_real_folder(request.job.toStdString()).parent_path();
    const std::string file = model.lexically_relative(folder).string();
    if (!is_utf8(file) || file != one_line(file))
        throw BadInput({{request.model.toStdString(),
                         {},
                         "a job file cannot hold the name of this file",
                         "rename it, in one line, with single spaces"}});
    return {file, model, request.reading.unit, request.reading.up};
}

/// A name that was given and stands nowhere would be a room that nothing is said of.
void check_rooms(const FindSettings& settings, const Found& found) {
    std::vector<Diagnostic> faults;
    for (const RoomSeed& room : settings.rooms) {
        if (std::ranges::count(found.spaces, room.id, &FoundSpace::id) > 0) continue;
        faults.push_back({room.id,
                          {},
                          "no space got this name: the point lies outside of the model, or in the same air as another room",
                          "give a point in the middle of the room, and one name to each space"});
    }
    if (!faults.empty()) throw BadInput(std::move(faults));
}

std::vector<std::string> head_of_job(const FindSettings& settings) {
    return {"Spaces and gaps that were measured in a 3D file: gaps from " + millimeters_text(settings.smallest) + " to " +
                millimeters_text(settings.widest) + ".",
            "The widths are those of the model; the house has its own. Put the width that was measured in the place of the",
            "modeled one and say so, evidence: {how: measured, plus_minus: 0.2 mm}; add what a model does not tell.",
            "Where parts touch (joint-1 and so on, at the end of the gaps) the model is shut: width 0.",
            "docs/job-file.md has every key."};
}

QString lost_words(const LostProducts& lost) {
    const QString what = QString::fromStdString(lost.ifc_class);
    if (lost.read == 0)
        return Words::tr("None of the file's %n part(s) of the class %1 came through.", "", static_cast<int>(lost.in_file))
            .arg(what);
    return Words::tr("Of the file's %n part(s) of the class %1, only %2 came through.", "", static_cast<int>(lost.in_file))
        .arg(what)
        .arg(lost.read);
}

/// A note of the engine without what it says of options of the command line.
QString note_words(const std::string& note) {
    QString text = QString::fromStdString(note);
    const int option = text.indexOf(" --");
    if (option > 0) {
        text.truncate(option);
        while (text.endsWith(';') || text.endsWith('.') || text.endsWith(',') || text.endsWith(' ')) text.chop(1);
    }
    return text.endsWith('.') ? text : text + '.';
}

}  // namespace

QString fault_of_job_name(const QString& job, const QString& model) {
    if (job.trimmed().isEmpty()) return Words::tr("Say where the job file is to stand.");
    const QFileInfo file(job);
    const QString ending = file.suffix();
    if (ending != "yaml" && ending != "yml") return Words::tr("Give the job file a name that ends in .yaml.");
    if (!file.absoluteDir().exists()) return Words::tr("There is no such folder; make it first.");
    if (file.isDir()) return Words::tr("A folder has this name; give another one.");
    const bool same = file.exists() && file.canonicalFilePath() == QFileInfo(model).canonicalFilePath();
    if (same) return Words::tr("This is the model itself; give another name.");
    if (file.exists()) return Words::tr("There is a file of this name already; give another one.");
    return {};
}

ModelSearch::ModelSearch(QObject* parent) : QObject(parent) {}

ModelSearch::~ModelSearch() {
    cancel();
    if (thread_.joinable()) thread_.join();
}

ModelFinding ModelSearch::search(const ModelRequest& request, Run& run) {
    const RunContext& context = run.context;
    const std::string path = request.model.toStdString();
    ModelFinding finding;
    finding.job = request.job;
    Job job;
    Found found;
    {
        Model model = read_model(path, path, request.reading, context);
        job.name = one_line(fs::path(path).stem().string());
        job.model = model_reference(request);
        found = find_gaps(model, request.finding, context);
        for (const LostProducts& lost : model.lost) finding.lost << lost_words(lost);
        for (const std::string& note : model.notes) finding.notes << note_words(note);
    }
    check_rooms(request.finding, found);
    for (const std::string& note : found.notes) finding.notes << note_words(note);
    job.survey = found_survey(found);
    job.house.places = found_places(found);
    finding.parts = static_cast<int>(found.parts.size());
    finding.spaces = static_cast<int>(found.spaces.size());
    finding.rooms = static_cast<int>(std::ranges::count(found.spaces, SpaceKind::living, &FoundSpace::kind));
    finding.joints = static_cast<int>(found.joints.size());
    finding.smallest = request.finding.smallest;
    finding.widest = request.finding.widest;
    finding.gaps = static_cast<int>(found.gaps.size());
    const std::string text = job_text(job, head_of_job(request.finding));
    State searching = State::searching;  // from here on it is too late to call it off
    if (!run.state.compare_exchange_strong(searching, State::writing)) throw Cancelled();
    write_whole_file(request.job.toStdString(), request.job.toStdString(), text);
    return finding;
}

void ModelSearch::start(const ModelRequest& request) {
    if (running_) return;
    running_ = true;
    // Of the window's thread; what comes from a run before is told before this one begins.
    const auto on_stage = [this](std::string_view stage) {
        const QString doing = stage_words(stage);
        QMetaObject::invokeMethod(
            this, [this, doing] { emit stage_began(doing); }, Qt::QueuedConnection);
    };
    run_ = std::make_shared<Run>(on_stage);
    thread_ = std::thread([this, request, run = run_] {
        std::function<void()> answer;
        try {
            answer = [this, finding = search(request, *run)] { emit found(finding); };
        } catch (const Cancelled&) {
            answer = [this] { emit cancelled(); };
        } catch (const BadInput& bad) {
            answer = [this, fault = OpenFault{QString::fromUtf8(bad.what()), true}] { emit failed(fault); };
        } catch (const std::exception& error) {
            answer = [this, fault = OpenFault{QString::fromUtf8(error.what()), false}] { emit failed(fault); };
        }
        const auto deliver = [this, answer] {
            finish();
            answer();
        };
        QMetaObject::invokeMethod(this, deliver, Qt::QueuedConnection);
    });
}

void ModelSearch::finish() {
    thread_.join();
    run_.reset();
    running_ = false;
}

void ModelSearch::cancel() {
    if (!run_) return;
    State searching = State::searching;
    if (run_->state.compare_exchange_strong(searching, State::called_off)) run_->context.cancel();
}

}  // namespace seamward::viewer
