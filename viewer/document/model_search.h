// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QString>
#include <QStringList>
#include <atomic>
#include <memory>
#include <thread>

#include "document/job_document.h"
#include "exchange/read_model.h"
#include "interior/find.h"

namespace seamward::viewer {

/// A 3D file that spaces and gaps are to be found in, and the job file that is to hold them.
struct ModelRequest {
    QString model, job;
    ReadSettings reading;
    FindSettings finding;
};

/// What was found in a model; its job file is written.
struct ModelFinding {
    QString job;
    int parts = 0, spaces = 0, rooms = 0, gaps = 0, joints = 0;  ///< joints: drawn shut, where parts touch
    double smallest = 0, widest = 0;                             ///< meters: the gaps that were looked for
    QStringList lost;   ///< a sentence for each class of products that did not come through
    QStringList notes;  ///< what was assumed and left out, as the engine says it
};

/// Why a job file cannot be the answer for that model, a sentence; empty when it can. Looks at the disk.
[[nodiscard]] QString fault_of_job_name(const QString& job, const QString& model);

/// Finds spaces and gaps in a 3D file on a thread of its own and writes them as a job file, as `seamward find -o` does. Ends with
/// one of found(), failed() and cancelled(); after the last two, nothing was written.
class ModelSearch : public QObject {
    Q_OBJECT

public:
    explicit ModelSearch(QObject* parent = nullptr);
    /// Calls off what runs, and waits for it.
    ~ModelSearch() override;

    /// Only while nothing runs.
    void start(const ModelRequest& request);
    /// cancelled() follows soon, or found() when the file is being written already.
    void cancel();
    [[nodiscard]] bool is_running() const { return running_; }

signals:
    void stage_began(const QString& doing);
    void found(const seamward::viewer::ModelFinding& finding);
    void failed(const seamward::viewer::OpenFault& fault);
    void cancelled();

private:
    enum class State : std::uint8_t { searching, writing, called_off };

    /// A run; the thread holds it too.
    struct Run {
        explicit Run(RunContext::Listener on_stage) : context(std::move(on_stage)) {}
        RunContext context;
        std::atomic<State> state{State::searching};
    };

    [[nodiscard]] static ModelFinding search(const ModelRequest& request, Run& run);
    void finish();

    std::shared_ptr<Run> run_;
    std::thread thread_;
    bool running_ = false;
};

}  // namespace seamward::viewer

Q_DECLARE_METATYPE(seamward::viewer::ModelFinding)
