// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/reader/read_ifc.h"

#include <ifcpp/IFC4/EntityFactory.h>
#include <ifcpp/IFC4/include/IfcGloballyUniqueId.h>
#include <ifcpp/IFC4/include/IfcLabel.h>
#include <ifcpp/IFC4/include/IfcProduct.h>
#include <ifcpp/IFC4/include/IfcSpace.h>
#include <ifcpp/geometry/Carve/GeometryConverter.h>
#include <ifcpp/model/BuildingModel.h>
#include <ifcpp/reader/ReaderSTEP.h>

#include <algorithm>
#include <carve/triangulator.hpp>
#include <cctype>
#include <limits>
#include <map>
#include <set>
#include <string>
#include <unordered_map>
#include <utility>

#include "base/phrases.h"
#include "base/text.h"
#include "exchange/reader/mesh_builder.h"
#include "exchange/reader/refusal.h"
#include "exchange/reader/step_products.h"
#include "exchange/reader/turn_alike.h"

namespace seamward {

namespace {

using CarveFace = carve::mesh::Face<3>;
using CarveMeshSet = carve::mesh::MeshSet<3>;

/// Sides of a full circle: the chord of a pipe of 100 mm across is 0.2 mm off at most.
constexpr int circle_sides = 32;

std::string utf8(const std::wstring& text) {
    std::string out;
    for (const wchar_t letter : text) {
        const auto code = static_cast<std::uint32_t>(letter);
        const auto tail = [&](unsigned shift) { out += static_cast<char>(0x80U | ((code >> shift) & 0x3FU)); };
        if (code < 0x80U) {
            out += static_cast<char>(code);
        } else if (code < 0x800U) {
            out += static_cast<char>(0xC0U | (code >> 6U));
            tail(0);
        } else if (code < 0x10000U) {
            out += static_cast<char>(0xE0U | (code >> 12U));
            tail(6);
            tail(0);
        } else {
            out += static_cast<char>(0xF0U | ((code >> 18U) & 7U));
            tail(12);
            tail(6);
            tail(0);
        }
    }
    return out;
}

/// The library leaves quotes doubled, as STEP writes them.
std::string label(const shared_ptr<IfcLabel>& text) {
    std::string label = text ? utf8(text->m_value) : "";
    for (std::size_t at = label.find("''"); at != label.npos; at = label.find("''", at + 1)) label.erase(at, 1);
    return label;
}

/// "IFCWALLSTANDARDCASE" as "IfcWallStandardCase"; of a class that the library does not know, "IfcOther".
std::string spelled(const std::string& ifc_class) {
    const std::unique_ptr<BuildingEntity> entity(EntityFactory::createEntityObject(ifc_class));
    if (entity) return entity->className();
    std::string plain = ifc_class;
    for (std::size_t i = 1; i < plain.size(); ++i)
        plain[i] = i == 3 ? plain[i] : static_cast<char>(std::tolower(static_cast<unsigned char>(plain[i])));
    return plain;
}

/// "IfcWallStandardCase" named "Basic Wall:Party Wall:138584" as "wall-138584": the class, and what the name ends in.
std::string id_of(std::string ifc_class, const std::string& name, const std::string& global_id) {
    if (ifc_class.starts_with("Ifc")) ifc_class.erase(0, 3);
    if (ifc_class.ends_with("StandardCase")) ifc_class.resize(ifc_class.size() - 12);
    std::string id;
    for (const char c : ifc_class) {
        const bool capital = c >= 'A' && c <= 'Z';
        if (capital && !id.empty()) id += '-';
        id += capital ? static_cast<char>(c - 'A' + 'a') : c;
    }
    const std::string tail = name.substr(name.rfind(':') + 1);
    return id + '-' + (tail.empty() ? global_id : tail);
}

/// The bodies of a product: what its file calls "Body", else all but what is known to be none.
std::vector<shared_ptr<RepresentationData>> bodies_of(const ProductShapeData& shape) {
    static const std::set<std::wstring> no_bodies{L"Annotation", L"Axis",     L"Box",     L"Clearance", L"CoG",
                                                  L"FootPrint",  L"Lighting", L"Profile", L"Reference"};
    std::vector<shared_ptr<RepresentationData>> named;
    std::vector<shared_ptr<RepresentationData>> others;
    for (const shared_ptr<RepresentationData>& each : shape.m_vec_representations) {
        if (!each) continue;
        if (each->m_representation_identifier == L"Body")
            named.push_back(each);
        else if (!no_bodies.contains(each->m_representation_identifier))
            others.push_back(each);
    }
    return named.empty() ? others : named;
}

class IfcReading {
public:
    IfcReading(std::string_view text, const ReadTask& task) : text_(text), task_(task) { tally_.most = task.most_triangles; }

    Model run() {
        const std::vector<StepProduct> products = products_in_step(text_);
        if (text_.find("ISO-10303-21;") != text_.npos && text_.rfind("END-ISO-10303-21;") == text_.npos)
            throw ReadRefusal("ends before the line END-ISO-10303-21;: a part of it is missing", "copy or export it again");
        if (products.empty())
            throw ReadRefusal("has no products with a place", "check that it is an IFC file in STEP form (ISO-10303-21)");
        load();
        set_frame();
        for (const StepProduct& product : products) read(product);
        report();
        if (model_.parts.empty() && model_.rooms.empty())
            throw ReadRefusal(
                "has " + counted(products.size(), "product", "products") + " and none with a shape that can be read",
                "export it again as IFC4 or IFC2X3, with bodies as faces (BRep)");
        return std::move(model_);
    }

private:
    struct Count {
        std::size_t in_file = 0, read = 0, without_shape = 0;
    };

    void load() {
        shared_ptr<BuildingModel> building(new BuildingModel());
        converter_ = std::make_unique<GeometryConverter>(building);
        converter_->setMessageCallBack(this, [](void* self, shared_ptr<StatusCallback::Message> message) {
            static_cast<IfcReading*>(self)->listen(*message);
        });
        const shared_ptr<GeometrySettings>& settings = converter_->getGeomSettings();
        settings->setNumVerticesPerCircle(circle_sides);
        settings->setHandleStyledItems(false);
        settings->setHandleLayerAssignments(false);
        ReaderSTEP reader;
        std::string content(text_);
        take_for_known_schema(content);
        reader.loadModelFromString(content, converter_->getBuildingModel());
        converter_->convertGeometry();
    }

    /// The library reads nothing of a schema later than IFC4. Most of what is in such files is the same.
    void take_for_known_schema(std::string& content) {
        const std::size_t begin = content.find("'", std::min(content.find("FILE_SCHEMA"), content.size()));
        const std::size_t end = begin == content.npos ? content.npos : content.find("'", begin + 1);
        if (end == content.npos || end - begin > 30) return;
        const std::string schema = content.substr(begin + 1, end - begin - 1);
        if (!schema.starts_with("IFC4") || schema == "IFC4") return;
        content.replace(begin + 1, schema.size(), "IFC4");
        model_.notes.push_back("the file is " + schema + ": read as IFC4, without what is new in it");
    }

    void listen(const StatusCallback::Message& message) {
        if (message.m_message_type != StatusCallback::MESSAGE_TYPE_WARNING &&
            message.m_message_type != StatusCallback::MESSAGE_TYPE_ERROR)
            return;
        if (message.m_message_text.starts_with(L"No length unit")) return;  // there is a note of our own for it
        if (complaints_++ == 0) first_complaint_ = utf8(message.m_message_text);
    }

    void set_frame() {
        bool says_unit = true;
        const shared_ptr<UnitConverter>& units = converter_->getBuildingModel()->getUnitConverter();
        units->setMessageTarget(nullptr);
        units->setMessageCallBack(&says_unit, [](void* says, shared_ptr<StatusCallback::Message>) {
            *static_cast<bool*>(says) = false;  // its only complaint about a length
        });
        const double factor = units->getLengthInMeterFactor();
        units->unsetMessageCallBack();
        if (task_.unit) {  // the library has scaled already, by what the file says
            frame_.unit = ratio_of(*task_.unit);
            frame_.unit.under *= factor;
        } else if (!says_unit) {
            model_.notes.emplace_back("the file names no unit: taken as meters; --unit mm, cm, in or ft says otherwise");
        }
        if (task_.up) frame_.up = *task_.up;
    }

    void read(const StepProduct& product) {
        Count& count = counts_[product.ifc_class];
        ++count.in_file;
        if (!product.has_shape) ++count.without_shape;
        const auto& shapes = converter_->getShapeInputData();
        if (product.number > std::numeric_limits<int>::max()) return;
        const auto found = shapes.find(static_cast<int>(product.number));
        if (found == shapes.end() || !found->second) return;
        const shared_ptr<IfcObjectDefinition> object = found->second->m_ifc_object_definition.lock();
        if (!object) return;
        MeshBuilder builder(tally_);
        for (const shared_ptr<RepresentationData>& body : bodies_of(*found->second)) {
            for (const shared_ptr<ItemShapeData>& item : body->m_vec_item_data) {
                if (item) add(*item, found->second->getTransform(), builder);
            }
        }
        if (builder.empty()) return;
        ++count.read;
        ModelPart part{.name = label(object->m_Name), .global_id = product.global_id, .mesh = builder.take()};
        turn_alike(part.mesh);  // the library mixes up the directions of faces with holes and of those with many corners
        part.ifc_class = spelling(product.ifc_class);
        part.id = id_of(part.ifc_class, part.name, part.global_id);
        if (const auto space = dynamic_pointer_cast<IfcSpace>(object)) {
            const std::string long_name = label(space->m_LongName);
            part.id = long_name.empty() || long_name == part.name ? part.name : part.name + '-' + long_name;
            if (!long_name.empty()) part.name = long_name;
            model_.rooms.push_back(std::move(part));
        } else {
            model_.parts.push_back(std::move(part));
        }
    }

    void add(const ItemShapeData& item, const carve::math::Matrix& to_file, MeshBuilder& into) {
        for (const auto* sets : {&item.m_meshsets, &item.m_meshsets_open}) {
            for (const shared_ptr<CarveMeshSet>& set : *sets) {
                if (!set) continue;
                for (const carve::mesh::Mesh<3>* mesh : set->meshes) {
                    for (const CarveFace* face : mesh->faces) add(*face, to_file, into);
                }
            }
        }
    }

    void add(const CarveFace& face, const carve::math::Matrix& to_file, MeshBuilder& into) {
        std::vector<Point> corners;
        const carve::mesh::Edge<3>* edge = face.edge;
        do {
            const vec3 at = to_file * edge->vert->v;
            corners.push_back(frame_.ours({at.x, at.y, at.z}));
            edge = edge->next;
        } while (edge != face.edge && corners.size() <= face.n_edges);
        if (corners.size() < 3) return;
        std::vector<carve::triangulate::tri_idx> triangles;
        if (corners.size() == 3) {
            triangles.emplace_back(0, 1, 2);
        } else {
            try {
                std::vector<vec2> flat;
                face.getProjectedVertices(flat);
                carve::triangulate::triangulate(flat, triangles);
                carve::triangulate::improve(flat, triangles);
            } catch (const carve::exception&) {
                ++broken_faces_;
                return;
            }
        }
        for (const carve::triangulate::tri_idx& t : triangles) into.add(corners.at(t.a), corners.at(t.b), corners.at(t.c));
    }

    const std::string& spelling(const std::string& ifc_class) {
        std::string& known = spellings_[ifc_class];
        if (known.empty()) known = spelled(ifc_class);
        return known;
    }

    void report() {
        for (const auto& [ifc_class, count] : counts_) {
            if (count.read < count.in_file) model_.lost.push_back({spelling(ifc_class), count.in_file, count.read});
            if (count.without_shape > 0)
                model_.notes.push_back(spelling(ifc_class) + ": " + std::to_string(count.without_shape) + " of " +
                                       std::to_string(count.in_file) + " without a shape of their own in the file");
        }
        if (complaints_ > 0)
            model_.notes.push_back("the importer complained " + counted(complaints_, "time", "times") + ", first of " +
                                   in_quotes(first_complaint_));
        if (broken_faces_ > 0) model_.notes.push_back(counted(broken_faces_, "face", "faces") + " left out: not flat polygons");
        if (tally_.collapsed > 0)
            model_.notes.push_back(counted(tally_.collapsed, "triangle", "triangles") +
                                   " with two corners in one place left out");
    }

    std::string_view text_;
    const ReadTask& task_;
    TriangleTally tally_;
    FileFrame frame_;
    std::size_t broken_faces_ = 0;
    std::size_t complaints_ = 0;
    std::string first_complaint_;
    Model model_;
    std::map<std::string, Count> counts_;
    std::map<std::string, std::string> spellings_;
    std::unique_ptr<GeometryConverter> converter_;
};

}  // namespace

Model read_ifc(std::string_view text, const ReadTask& task) {
    try {
        return IfcReading(text, task).run();
    } catch (const BuildingException& problem) {
        throw ReadRefusal(std::string("cannot be read as .ifc: ") + problem.what(), "export it again as IFC4 or IFC2X3");
    } catch (const carve::exception& problem) {
        throw ReadRefusal("cannot be read as .ifc: " + problem.str(), "export it again as IFC4 or IFC2X3");
    }
}

}  // namespace seamward
