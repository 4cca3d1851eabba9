// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/exchange/assimp_reading.h"

#include <assimp/scene.h>

#include <array>
#include <assimp/Importer.hpp>
#include <cstdint>
#include <map>
#include <stdexcept>
#include <utility>

namespace seamward::test {

namespace {

class Collector {
public:
    explicit Collector(const aiScene& scene) : scene_(scene) {}

    void visit(const aiNode& node, const aiMatrix4x4& above) {
        const aiMatrix4x4 to_file = above * node.mTransformation;
        if (node.mNumMeshes > 0) {
            ReadNode read{.name = node.mName.C_Str(), .above = node.mParent != nullptr ? node.mParent->mName.C_Str() : ""};
            std::map<std::array<double, 3>, std::uint32_t> known;
            for (unsigned i = 0; i < node.mNumMeshes; ++i) {
                const aiMesh& mesh = *scene_.mMeshes[node.mMeshes[i]];
                read.materials.emplace_back(scene_.mMaterials[mesh.mMaterialIndex]->GetName().C_Str());
                add(mesh, to_file, known, read.mesh);
            }
            nodes.push_back(std::move(read));
        }
        for (unsigned i = 0; i < node.mNumChildren; ++i) visit(*node.mChildren[i], to_file);
    }

    std::vector<ReadNode> nodes;

private:
    static void add(const aiMesh& mesh, const aiMatrix4x4& to_file, std::map<std::array<double, 3>, std::uint32_t>& known,
                    TriangleMesh& into) {
        for (unsigned f = 0; f < mesh.mNumFaces; ++f) {
            if (mesh.mFaces[f].mNumIndices != 3) throw std::runtime_error("a face that is no triangle");
            std::array<std::uint32_t, 3> corners{};
            for (unsigned i = 0; i < 3; ++i) {
                const aiVector3D at = to_file * mesh.mVertices[mesh.mFaces[f].mIndices[i]];
                const auto next = static_cast<std::uint32_t>(into.points.size());
                const auto [entry, fresh] = known.try_emplace({double{at.x}, double{at.y}, double{at.z}}, next);
                if (fresh) into.points.push_back({double{at.x}, double{at.y}, double{at.z}});
                corners.at(i) = entry->second;
            }
            into.triangles.push_back(corners);
        }
    }

    const aiScene& scene_;
};

}  // namespace

std::vector<ReadNode> read_with_assimp(const std::filesystem::path& path) {
    Assimp::Importer importer;
    const aiScene* scene = importer.ReadFile(path.string(), 0);
    if (scene == nullptr || scene->mRootNode == nullptr) throw std::runtime_error(importer.GetErrorString());
    Collector collector(*scene);
    collector.visit(*scene->mRootNode, aiMatrix4x4());
    return std::move(collector.nodes);
}

TriangleMesh z_up(TriangleMesh mesh) {
    for (Point& point : mesh.points) point = {point.x, -point.z, point.y};
    return mesh;
}

}  // namespace seamward::test
