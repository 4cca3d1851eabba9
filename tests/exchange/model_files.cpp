// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/exchange/model_files.h"

#include <assimp/scene.h>

#include <assimp/Exporter.hpp>
#include <cstdint>
#include <memory>
#include <sstream>
#include <stdexcept>

#include "tests/exchange/sample_parts.h"

namespace seamward::test {

namespace {

std::unique_ptr<aiScene> box_scene() {
    const TriangleMesh box_mesh = box(box_low, box_high);
    auto mesh = std::make_unique<aiMesh>();
    mesh->mName = "box";
    mesh->mPrimitiveTypes = aiPrimitiveType_TRIANGLE;
    mesh->mNumVertices = static_cast<unsigned>(box_mesh.points.size());
    mesh->mVertices = new aiVector3D[mesh->mNumVertices];
    for (unsigned i = 0; i < mesh->mNumVertices; ++i) {
        const Point& at = box_mesh.points[i];
        mesh->mVertices[i] = {static_cast<float>(at.x), static_cast<float>(at.y), static_cast<float>(at.z)};
    }
    mesh->mNumFaces = static_cast<unsigned>(box_mesh.triangles.size());
    mesh->mFaces = new aiFace[mesh->mNumFaces];
    for (unsigned f = 0; f < mesh->mNumFaces; ++f) {
        mesh->mFaces[f].mNumIndices = 3;
        mesh->mFaces[f].mIndices = new unsigned[3];
        for (unsigned i = 0; i < 3; ++i) mesh->mFaces[f].mIndices[i] = box_mesh.triangles[f].at(i);
    }
    auto scene = std::make_unique<aiScene>();
    scene->mNumMeshes = 1;
    scene->mMeshes = new aiMesh* [1] { mesh.release() };
    scene->mNumMaterials = 1;
    scene->mMaterials = new aiMaterial* [1] { new aiMaterial };
    scene->mRootNode = new aiNode("world");
    auto* node = new aiNode("box");
    node->mNumMeshes = 1;
    node->mMeshes = new unsigned[1]{0};
    scene->mRootNode->addChildren(1, &node);
    return scene;
}

template <class Number>
void put(std::string& bytes, Number number) {
    bytes.append(reinterpret_cast<const char*>(&number), sizeof number);
}

std::string base64(const std::string& bytes) {
    constexpr std::string_view letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
    std::string text;
    for (std::size_t i = 0; i < bytes.size(); i += 3) {
        std::uint32_t three = 0;
        for (std::size_t k = 0; k < 3; ++k)
            three = (three << 8U) | (i + k < bytes.size() ? static_cast<unsigned char>(bytes[i + k]) : 0U);
        for (unsigned k = 0; k < 4; ++k) text += i + k > bytes.size() ? '=' : letters[(three >> (18U - 6U * k)) & 63U];
    }
    return text;
}

}  // namespace

std::string exported_box(const std::string& format) {
    Assimp::Exporter exporter;
    const std::unique_ptr<aiScene> scene = box_scene();
    const aiExportDataBlob* blob = exporter.ExportToBlob(scene.get(), format);
    if (blob == nullptr) throw std::runtime_error(exporter.GetErrorString());
    return {static_cast<const char*>(blob->data), blob->size};
}

std::string with(std::string text, const std::string& part, const std::string& by) {
    std::size_t at = text.find(part);
    if (at == std::string::npos) throw std::out_of_range("no " + part);
    for (; at != std::string::npos; at = text.find(part, at + by.size())) text.replace(at, part.size(), by);
    return text;
}

std::string obj_lines(const TriangleMesh& mesh, std::size_t first) {
    std::ostringstream text;
    text.precision(17);
    for (const Point& point : mesh.points) text << "v " << point.x << ' ' << point.y << ' ' << point.z << '\n';
    for (const auto& [a, b, c] : mesh.triangles) text << "f " << first + a << ' ' << first + b << ' ' << first + c << '\n';
    return text.str();
}

std::string dxf_box(int insunits) {
    std::ostringstream text;
    text << "0\nSECTION\n2\nHEADER\n9\n$ACADVER\n1\nAC1009\n";
    if (insunits > 0) text << "9\n$INSUNITS\n70\n" << insunits << '\n';
    text << "0\nENDSEC\n0\nSECTION\n2\nENTITIES\n";
    const TriangleMesh mesh = box(box_low, box_high);
    for (const auto& corners : mesh.triangles) {
        text << "0\n3DFACE\n8\nbox\n";
        for (int i = 0; i < 4; ++i) {
            const Point& at = mesh.points[corners.at(static_cast<std::size_t>(i < 3 ? i : 2))];
            text << 10 + i << '\n' << at.x << '\n' << 20 + i << '\n' << at.y << '\n' << 30 + i << '\n' << at.z << '\n';
        }
    }
    text << "0\nENDSEC\n0\nEOF\n";
    return text.str();
}

std::string gltf_numbers() {
    const TriangleMesh mesh = box(box_low, box_high);
    std::string bytes;
    for (const Point& point : mesh.points) {
        for (const double at : {point.x, point.y, point.z}) put(bytes, static_cast<float>(at));
    }
    for (const auto& corners : mesh.triangles) {
        for (const std::uint32_t corner : corners) put(bytes, static_cast<std::uint16_t>(corner));
    }
    return bytes;
}

std::string gltf_box(const std::string& nodes, const std::string& buffer) {
    const std::string uri = buffer.empty() ? "data:application/octet-stream;base64," + base64(gltf_numbers()) : buffer;
    return R"({"asset":{"version":"2.0"},"scene":0,"scenes":[{"nodes":[0]}],"nodes":[)" + nodes +
           R"(],"meshes":[{"primitives":[{"attributes":{"POSITION":0},"indices":1}]}],"buffers":[{"byteLength":168,"uri":")" +
           uri +
           R"("}],"bufferViews":[{"buffer":0,"byteLength":96},{"buffer":0,"byteOffset":96,"byteLength":72}],"accessors":[)"
           R"({"bufferView":0,"componentType":5126,"count":8,"type":"VEC3","min":[1,2,3],"max":[5,4,9]},)"
           R"({"bufferView":1,"componentType":5123,"count":36,"type":"SCALAR"}]})";
}

std::string ifc_rooms() {
    return R"(ISO-10303-21;
HEADER;
FILE_DESCRIPTION(('ViewDefinition [ReferenceView]'),'2;1');
FILE_NAME('rooms.ifc','2026-01-01T00:00:00',('nobody'),('nobody'),'by hand','by hand','');
FILE_SCHEMA(('IFC4'));
ENDSEC;
DATA;
#1=IFCPROJECT('0000000000000000000001',$,'Project',$,$,$,$,(#10),#5);
#5=IFCUNITASSIGNMENT((#6,#7));
#6=IFCSIUNIT(*,.LENGTHUNIT.,.MILLI.,.METRE.);
#7=IFCSIUNIT(*,.PLANEANGLEUNIT.,$,.RADIAN.);
#10=IFCGEOMETRICREPRESENTATIONCONTEXT($,'Model',3,1.E-05,#11,$);
#11=IFCAXIS2PLACEMENT3D(#12,$,$);
#12=IFCCARTESIANPOINT((0.,0.,0.));
#13=IFCDIRECTION((0.,0.,1.));
#14=IFCDIRECTION((0.,1.,0.));
#15=IFCCARTESIANPOINT((0.,0.));
#16=IFCAXIS2PLACEMENT2D(#15,$);
/* #20=IFCWALL('00000000000000comment',$,'no wall',$,$,#21,#30,$,$); */
#20=IFCLOCALPLACEMENT($,#21);
#21=IFCAXIS2PLACEMENT3D(#22,$,$);
#22=IFCCARTESIANPOINT((1000.,0.,0.));
#30=IFCRECTANGLEPROFILEDEF(.AREA.,$,#31,4000.,200.);
#31=IFCAXIS2PLACEMENT2D(#32,$);
#32=IFCCARTESIANPOINT((2000.,100.));
#33=IFCEXTRUDEDAREASOLID(#30,#11,#13,3000.);
#34=IFCSHAPEREPRESENTATION(#10,'Body','SweptSolid',(#33));
#35=IFCPRODUCTDEFINITIONSHAPE($,$,(#34));
#36=IFCWALL('0000000000000000000036',$,'Stucco; #1=IFCWALL(''quoted'')',$,$,#20,#35,$,$);
#40=IFCLOCALPLACEMENT(#20,#41);
#41=IFCAXIS2PLACEMENT3D(#42,$,$);
#42=IFCCARTESIANPOINT((1500.,-100.,1000.));
#43=IFCRECTANGLEPROFILEDEF(.AREA.,$,#44,1000.,400.);
#44=IFCAXIS2PLACEMENT2D(#45,$);
#45=IFCCARTESIANPOINT((500.,200.));
#46=IFCEXTRUDEDAREASOLID(#43,#11,#13,1000.);
#47=IFCSHAPEREPRESENTATION(#10,'Body','SweptSolid',(#46));
#48=IFCPRODUCTDEFINITIONSHAPE($,$,(#47));
#49=IFCOPENINGELEMENT('0000000000000000000049',$,'Opening',$,$,#40,#48,$,.OPENING.);
#50=IFCRELVOIDSELEMENT('0000000000000000000050',$,$,$,#36,#49);
#60=IFCRECTANGLEPROFILEDEF(.AREA.,$,#16,3000.,2000.);
#61=IFCEXTRUDEDAREASOLID(#60,#11,#13,2500.);
#62=IFCSHAPEREPRESENTATION(#10,'Body','SweptSolid',(#61));
#63=IFCPRODUCTDEFINITIONSHAPE($,$,(#62));
#64=IFCSPACE('0000000000000000000064',$,'101',$,$,#20,#63,'K\X2\00FC\X0\che',.ELEMENT.,.INTERNAL.,$);
#70=IFCCIRCLEPROFILEDEF(.AREA.,$,#16,50.);
#71=IFCEXTRUDEDAREASOLID(#70,#11,#13,1000.);
#72=IFCSHAPEREPRESENTATION(#10,'Body','SweptSolid',(#71));
#73=IFCPRODUCTDEFINITIONSHAPE($,$,(#72));
#74=IFCCOLUMN('0000000000000000000074',$,'Family:Pipe:4711',$,$,#20,#73,$,$);
#80=IFCROOF('0000000000000000000080',$,'Roof',$,$,#20,$,$,$);
#90=IFCSHAPEREPRESENTATION(#10,'Body','SweptSolid',(#999));
#91=IFCPRODUCTDEFINITIONSHAPE($,$,(#90));
#92=IFCDOOR('0000000000000000000092',$,'Door',$,$,#20,#91,$,$,$,$,$,$);
ENDSEC;
END-ISO-10303-21;
)";
}

std::vector<ModelFile> one_of_each_kind() {
    std::vector<ModelFile> files;
    for (const auto& [name, format] :
         {std::pair("dae", "collada"), std::pair("fbx", "fbxa"), std::pair("3ds", "3ds"), std::pair("ply", "ply"),
          std::pair("stl", "stlb"), std::pair("glb", "glb2"), std::pair("obj", "obj")})
        files.push_back({std::string("box.") + name, exported_box(format)});
    files.push_back({"box.gltf", gltf_box(R"({"mesh":0,"name":"box"})")});
    files.push_back({"box.dxf", dxf_box(4)});
    files.push_back({"rooms.ifc", ifc_rooms()});
    return files;
}

}  // namespace seamward::test
