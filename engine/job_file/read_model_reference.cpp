// SPDX-License-Identifier: GPL-3.0-or-later
#include "job_file/read_model_reference.h"

#include <array>

#include "exchange/model_kinds.h"

namespace seamward {

namespace {

constexpr std::array<std::string_view, 3> model_keys{"file", "unit", "up"};
constexpr std::array<std::string_view, 5> unit_words{"m", "cm", "mm", "in", "ft"};
constexpr std::array<std::string_view, 3> axis_words{"x", "y", "z"};

void check_file(const Record& record, const ModelReference& model) {
    const Place place = record["file"].place();
    std::error_code error;
    if (!std::filesystem::exists(model.path, error))
        record.report(place, "no such file: " + model.path.string(),
                      "check the path; it is taken from the folder of the job file");
    else if (!is_model_name(model.path))
        record.report(place, model.path.string() + " is of no kind of 3D file that can be read",
                      "use one of " + all_model_kinds());
    else if (std::filesystem::is_directory(model.path, error))
        record.report(place, model.path.string() + " is a folder, not a 3D file", "name a file in it");
}

}  // namespace

std::optional<ModelReference> read_model_reference(const Record& file, Diagnostics& diagnostics) {
    if (!file.has("model") || file["model"].is_null()) return std::nullopt;
    const Record record(file["model"], model_keys, "model", diagnostics);
    if (!record.usable()) return std::nullopt;
    ModelReference model;
    model.file = record.required_line("file");
    if (const auto unit = record.word("unit", unit_words)) model.unit = static_cast<ModelUnit>(*unit);
    if (const auto axis = record.word("up", axis_words)) model.up = static_cast<UpAxis>(*axis);
    if (model.file.empty()) return std::nullopt;
    model.path = std::filesystem::path(diagnostics.file()).parent_path() / model.file;
    check_file(record, model);
    return model;
}

}  // namespace seamward
