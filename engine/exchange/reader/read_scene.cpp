// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/reader/read_scene.h"

#include <assimp/MemoryIOWrapper.h>
#include <assimp/config.h>
#include <assimp/importerdesc.h>
#include <assimp/postprocess.h>
#include <assimp/scene.h>

#include <array>
#include <assimp/Importer.hpp>
#include <charconv>
#include <exception>
#include <map>
#include <new>
#include <set>
#include <utility>

#include "base/phrases.h"
#include "base/text.h"
#include "exchange/reader/mesh_builder.h"
#include "exchange/reader/refusal.h"
#include "exchange/reader/scene_hints.h"

namespace seamward {

namespace {

/// A file that is one mesh of more pieces than this stays one part: they are loose triangles then.
constexpr std::size_t most_pieces = 10'000;
const std::string model_name = "model.";

/// Gives Assimp the files that are in memory, and no others.
class MemoryFiles : public Assimp::IOSystem {
public:
    MemoryFiles(const SourceFiles& files, std::string name, std::string_view model)
        : files_(files), name_(std::move(name)), model_(model) {}

    bool Exists(const char* file) const override { return find(file) != nullptr; }
    char getOsSeparator() const override { return '/'; }
    Assimp::IOStream* Open(const char* file, const char* mode) override {
        const std::string_view* content = mode[0] == 'r' ? find(file) : nullptr;
        if (content == nullptr) return nullptr;
        return new Assimp::MemoryIOStream(reinterpret_cast<const std::uint8_t*>(content->data()), content->size());
    }
    void Close(Assimp::IOStream* stream) override { delete stream; }

private:
    [[nodiscard]] const std::string_view* find(std::string_view file) const {
        while (file.starts_with("./")) file.remove_prefix(2);
        return file == name_ ? &model_ : files_.named(std::string(file));
    }

    const SourceFiles& files_;
    std::string name_;
    std::string_view model_;
};

/// A transform in doubles: the three rows that matter.
struct Transform {
    std::array<std::array<double, 4>, 3> rows{{{1, 0, 0, 0}, {0, 1, 0, 0}, {0, 0, 1, 0}}};

    explicit Transform() = default;
    explicit Transform(const aiMatrix4x4& matrix) {
        for (unsigned i = 0; i < 3; ++i) {
            for (unsigned j = 0; j < 4; ++j) rows.at(i).at(j) = double{matrix[i][j]};
        }
    }
    [[nodiscard]] Transform then_below(const Transform& inner) const {
        Transform both;
        for (std::size_t i = 0; i < 3; ++i) {
            for (std::size_t j = 0; j < 4; ++j) {
                double sum = j == 3 ? rows.at(i)[3] : 0;
                for (std::size_t k = 0; k < 3; ++k) sum += rows.at(i).at(k) * inner.rows.at(k).at(j);
                both.rows.at(i).at(j) = sum;
            }
        }
        return both;
    }
    [[nodiscard]] Point operator()(const aiVector3D& at) const {
        const auto row = [&](const std::array<double, 4>& r) {
            return r[0] * double{at.x} + r[1] * double{at.y} + r[2] * double{at.z} + r[3];
        };
        return {row(rows[0]), row(rows[1]), row(rows[2])};
    }
    [[nodiscard]] bool mirrors() const {
        const auto& [a, b, c] = rows;
        return a[0] * (b[1] * c[2] - b[2] * c[1]) - a[1] * (b[0] * c[2] - b[2] * c[0]) + a[2] * (b[0] * c[1] - b[1] * c[0]) < 0;
    }
};

/// Walks the nodes of a scene.
class Collector {
public:
    Collector(const aiScene& scene, const ReadTask& task, const FileFrame& frame, bool turned, const PlainObj& obj)
        : scene_(scene), frame_(frame), turned_(turned), obj_(obj), is_obj_(task.kind == "obj") {
        tally.most = task.most_triangles;
    }

    void visit(const aiNode& node, const Transform& above) {
        const Transform to_file = above.then_below(Transform(node.mTransformation));
        if (node.mNumMeshes > 0) {
            const std::string name = name_of(node);
            MeshBuilder& builder = builder_for(name);
            for (unsigned i = 0; i < node.mNumMeshes; ++i) add(*scene_.mMeshes[node.mMeshes[i]], to_file, builder);
        }
        for (unsigned i = 0; i < node.mNumChildren; ++i) visit(*node.mChildren[i], to_file);
    }

    [[nodiscard]] std::vector<ModelPart> parts() {
        std::vector<ModelPart> parts;
        for (auto& [name, builder] : builders_) {
            if (!builder.empty()) parts.push_back({.name = name, .mesh = builder.take()});
        }
        return parts;
    }

    TriangleTally tally;
    std::size_t lines_and_points = 0;

private:
    /// What Assimp makes up for nodes and meshes without a name is no name.
    static bool is_made_up(const std::string& name) {
        return name.empty() || name.starts_with('<') || name.starts_with("nodes[") || name.starts_with("meshes[") ||
               name == "defaultobject" || name == "AssimpScene" || name == "ROOT";
    }

    [[nodiscard]] std::string name_of(const aiNode& node) const {
        const std::string name = node.mName.C_Str();
        if (is_obj_) {
            std::size_t number = obj_.names.size();
            if (name.starts_with('n')) std::from_chars(name.data() + 1, name.data() + name.size(), number);
            return number < obj_.names.size() ? obj_.names[number] : "";
        }
        if (!is_made_up(name)) return name;
        const std::string mesh = scene_.mMeshes[node.mMeshes[0]]->mName.C_Str();
        return is_made_up(mesh) ? "" : mesh;
    }

    /// A node of its own each; only in OBJ files equal names mean the same object.
    MeshBuilder& builder_for(const std::string& name) {
        if (is_obj_) {
            const auto [found, fresh] = by_name_.try_emplace(name, builders_.size());
            if (!fresh) return builders_[found->second].second;
        }
        builders_.emplace_back(name, MeshBuilder(tally));
        return builders_.back().second;
    }

    void add(const aiMesh& mesh, const Transform& to_file, MeshBuilder& into) {
        const bool mirrored = to_file.mirrors();
        constexpr std::uint32_t unknown = UINT32_MAX;
        std::vector<std::uint32_t> known(mesh.mNumVertices, unknown);
        for (unsigned f = 0; f < mesh.mNumFaces; ++f) {
            const aiFace& face = mesh.mFaces[f];
            if (face.mNumIndices != 3) {
                ++lines_and_points;
                continue;
            }
            std::array<std::uint32_t, 3> corners{};
            for (unsigned i = 0; i < 3; ++i) {
                const unsigned vertex = face.mIndices[mirrored ? (3 - i) % 3 : i];
                if (vertex >= mesh.mNumVertices) throw ReadRefusal("has triangles without points", "export it again");
                if (known[vertex] == unknown) {
                    const Point at = to_file(mesh.mVertices[vertex]);
                    known[vertex] = into.index_of(frame_.ours(turned_ ? Point{at.x, -at.z, at.y} : at));
                }
                corners.at(i) = known[vertex];
            }
            into.add(corners);
        }
    }

    const aiScene& scene_;
    const FileFrame& frame_;
    bool turned_;  ///< Assimp turned the file's z up to y up
    const PlainObj& obj_;
    bool is_obj_;
    std::vector<std::pair<std::string, MeshBuilder>> builders_;
    std::map<std::string, std::size_t> by_name_;
};

/// Only importers for this kind of file: the others need not see it.
void leave_importers_for(const std::string& kind, Assimp::Importer& importer) {
    std::vector<Assimp::BaseImporter*> others;
    for (std::size_t i = 0; i < importer.GetImporterCount(); ++i) {
        const aiImporterDesc* about = importer.GetImporterInfo(i);
        const std::string extensions = ' ' + std::string(about != nullptr ? about->mFileExtensions : "") + ' ';
        if (extensions.find(' ' + kind + ' ') == extensions.npos) others.push_back(importer.GetImporter(i));
    }
    for (Assimp::BaseImporter* other : others) importer.UnregisterLoader(other);
}

const aiScene& imported(Assimp::Importer& importer, const SourceFiles& files, const ReadTask& task, std::string_view model) {
    leave_importers_for(task.kind, importer);
    importer.SetIOHandler(new MemoryFiles(files, model_name + task.kind, model));
    importer.SetPropertyBool(AI_CONFIG_IMPORT_FBX_READ_TEXTURES, false);
    importer.SetPropertyBool(AI_CONFIG_IMPORT_FBX_READ_ANIMATIONS, false);
    const aiScene* scene = importer.ReadFile(model_name + task.kind, aiProcess_ValidateDataStructure | aiProcess_Triangulate);
    if (scene != nullptr && scene->mRootNode != nullptr) return *scene;
    if (importer.GetException()) {
        try {
            std::rethrow_exception(importer.GetException());
        } catch (const std::bad_alloc&) {
            throw;
        } catch (const std::exception&) {}
    }
    if (!files.refused().empty())
        throw ReadRefusal("needs the file " + in_quotes(printable(files.refused().front())) + ", which is not in its folder",
                          "put it there, or export the model as .glb");
    throw ReadRefusal("cannot be read as ." + task.kind + ": " + in_quotes(printable(importer.GetErrorString())),
                      "export it again, or as another kind of file");
}

/// FBX says its unit in centimeters and the number of its upright axis.
SceneHints fbx_hints(const aiScene& scene) {
    SceneHints hints;
    if (scene.mMetaData == nullptr) return hints;
    double centimeters = 0;
    float short_centimeters = 0;
    if (scene.mMetaData->Get("UnitScaleFactor", short_centimeters)) centimeters = double{short_centimeters};
    (void)scene.mMetaData->Get("UnitScaleFactor", centimeters);
    if (centimeters > 0) hints.unit = {centimeters, 100};
    for (const ModelUnit unit : {ModelUnit::m, ModelUnit::mm, ModelUnit::in, ModelUnit::ft}) {
        const UnitRatio ratio = ratio_of(unit);
        if (std::abs(centimeters * ratio.under - 100 * ratio.over) <= 1e-6 * 100 * ratio.over) hints.unit = ratio;
    }
    std::int32_t axis = -1;
    if (scene.mMetaData->Get("UpAxis", axis) && axis >= 0 && axis <= 2) hints.up = static_cast<UpAxis>(axis);
    return hints;
}

FileFrame frame_of(const SceneHints& hints, const ReadTask& task, std::vector<std::string>& notes) {
    FileFrame frame{hints.unit.value_or(UnitRatio{}), hints.up.value_or(UpAxis::y)};
    if (task.unit)
        frame.unit = ratio_of(*task.unit);
    else if (!hints.unit)
        notes.emplace_back("the file names no unit: taken as meters; --unit mm, cm, in or ft says otherwise");
    if (task.up)
        frame.up = *task.up;
    else if (!hints.up)
        notes.emplace_back("the file does not say which way is up: taken as y; --up z or x says otherwise");
    return frame;
}

void take_apart(std::vector<ModelPart>& parts) {
    if (parts.size() != 1) return;
    std::vector<TriangleMesh> pieces = pieces_of(std::move(parts[0].mesh), most_pieces);
    const std::string name = parts[0].name;
    parts.clear();
    for (TriangleMesh& mesh : pieces)
        parts.push_back(
            {.id = pieces.size() == 1 ? "" : "part-" + std::to_string(parts.size() + 1), .name = name, .mesh = std::move(mesh)});
}

}  // namespace

Model read_scene(SourceFiles& files, const ReadTask& task) {
    SceneHints hints;
    PlainObj obj;
    std::string_view model = files.text();
    if (task.kind == "gltf" || task.kind == "glb") hints = {UnitRatio{}, UpAxis::y};
    if (task.kind == "3ds") hints.up = UpAxis::z;
    if (task.kind == "dxf") hints = dxf_hints(model);
    if (task.kind == "ply") check_ply_header(model);
    if (task.kind == "dae") hints = take_collada_hints(files.model());
    if (task.kind == "obj") {
        obj = plain_obj(model);
        hints = obj.hints;
        model = obj.text;
    }
    // Never freed: the program ends soon, and to take a large scene apart takes as long as to read it.
    Assimp::Importer& importer = *new Assimp::Importer;
    const aiScene& scene = imported(importer, files, task, model);
    if (task.kind == "fbx") hints = fbx_hints(scene);

    Model read;
    const FileFrame frame = frame_of(hints, task, read.notes);
    Collector collector(scene, task, frame, task.kind == "3ds" || task.kind == "dxf", obj);
    collector.visit(*scene.mRootNode, Transform());
    read.parts = collector.parts();
    take_apart(read.parts);
    if (collector.lines_and_points > 0)
        read.notes.push_back(counted(collector.lines_and_points, "line or point is", "lines and points are") + " left out");
    if (collector.tally.collapsed > 0)
        read.notes.push_back(counted(collector.tally.collapsed, "triangle", "triangles") +
                             " with two corners in one place left out");
    return read;
}

}  // namespace seamward
