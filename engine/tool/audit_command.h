// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "job_file/job.h"
#include "provisions/audit.h"
#include "provisions/compare_audits.h"
#include "tool/console.h"
#include "tool/model_options.h"

namespace seamward {

/// `seamward audit` as it was asked for. What is empty was left out.
struct AuditRequest : ModelOptions {
    std::string target;  ///< job file or model
    std::optional<std::string> rules, bcf, before, date;
    std::vector<std::string> pests;
    std::size_t top = 50;
    std::string language = "en";  ///< of the BCF file
    bool json = false;
};

/// An audit, what it was made of, and what became of another's findings.
struct Audited {
    Job job;
    GapParts parts;
    Audit audit;
    std::vector<std::string> notes;  ///< of reading a model
    std::optional<Audit> before;
    AuditChanges changes;  ///< where there is one before
};

/// Reads a job or a model, holds it against the provisions and answers; with `--bcf` it writes that file first. Throws BadInput,
/// and WrongUsage for options that make no sense; then nothing was written.
void run_audit(const AuditRequest& request, const Console& console, const RunContext& context);

/// The answer for programs.
[[nodiscard]] std::string audit_answer(const Audited& audited);

/// The answer for people.
void print_audit_table(const Audited& audited, const Console& console);

}  // namespace seamward
