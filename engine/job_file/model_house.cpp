// SPDX-License-Identifier: GPL-3.0-or-later
#include "job_file/model_house.h"

#include <array>
#include <string_view>
#include <utility>

#include "exchange/read_model.h"

namespace seamward {

namespace {

/// Beginnings of classes; the first that fits decides.
constexpr std::array<std::pair<std::string_view, Layer>, 16> layers{{{"IfcSite", Layer::ground},
                                                                     {"IfcGeographic", Layer::ground},
                                                                     {"IfcFooting", Layer::foundation},
                                                                     {"IfcPile", Layer::foundation},
                                                                     {"IfcRoof", Layer::roof},
                                                                     {"IfcDoor", Layer::opening},
                                                                     {"IfcWindow", Layer::opening},
                                                                     {"IfcWall", Layer::cladding},
                                                                     {"IfcCurtainWall", Layer::cladding},
                                                                     {"IfcBeam", Layer::framing},
                                                                     {"IfcColumn", Layer::framing},
                                                                     {"IfcMember", Layer::framing},
                                                                     {"IfcFlow", Layer::fixture},
                                                                     {"IfcPipe", Layer::fixture},
                                                                     {"IfcDuct", Layer::fixture},
                                                                     {"IfcSanitary", Layer::fixture}}};

}  // namespace

Layer layer_of_class(const std::string& ifc_class) {
    for (const auto& [beginning, layer] : layers) {
        if (ifc_class.starts_with(beginning)) return layer;
    }
    return Layer::interior;
}

void read_model_house(Job& job, const RunContext& context) {
    ReadSettings settings;
    settings.unit = job.model->unit;
    settings.up = job.model->up;
    Model model = read_model(job.model->path, job.model->path.string(), settings, context);
    for (ModelPart& part : model.parts) {
        Part drawn;
        drawn.id = std::move(part.id);
        drawn.name = std::move(part.name);
        drawn.layer = layer_of_class(part.ifc_class);
        if (part.ifc_class.starts_with("IfcWindow")) drawn.material = "glass";
        drawn.mesh = std::move(part.mesh);
        drawn.bounds.resize(drawn.mesh.triangles.size());
        job.house.parts.push_back(std::move(drawn));
    }
    job.house.survey = job.survey;
    job.house.middles.resize(job.survey.spaces.size());
}

}  // namespace seamward
