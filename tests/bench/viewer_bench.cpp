// SPDX-License-Identifier: GPL-3.0-or-later
// How fast the window is: a model from its file to the first picture, a closing that is ticked to the new ways in, and a picture
// of 10^6 triangles that turns. On a screen in memory (Xvfb), so that the frames are drawn by the processor, which each line
// names.
//
// The peers: Assimp reading the same file in this process, which makes no picture, or the solids of the demo without one; tracing
// and planning the changed job from nothing; a plain VTK scene with the same triangles in one actor.
#include <cstdio>

#include "tests/bench/bench.h"

#ifndef SEAMWARD_VIEWER_BENCH

namespace seamward::bench {

std::vector<Row> bench_viewer() {
    std::printf("the window is left out: this was built without the viewer\n");
    return {};
}

}  // namespace seamward::bench

#else

#include <assimp/scene.h>
#include <vtkActor.h>
#include <vtkCamera.h>
#include <vtkNew.h>
#include <vtkPolyDataMapper.h>
#include <vtkProperty.h>

#include <QApplication>
#include <QFile>
#include <QSurfaceFormat>
#include <QTemporaryDir>
#include <algorithm>
#include <array>
#include <assimp/Importer.hpp>
#include <cmath>
#include <numbers>
#include <optional>
#include <stdexcept>

#include "exchange/gltf.h"
#include "layers/colored_triangles.h"
#include "offscreen/own_screen.h"
#include "offscreen/runtime_folder.h"
#include "paths/trace.h"
#include "plan/plan.h"
#include "tests/bench/open_window.h"
#include "tests/support/plain_solids.h"

namespace seamward::bench {

namespace {

constexpr double apart = 3;           // meters between copies of a house
constexpr int frames = 12;            // of a turn that is timed
constexpr double turn = 0.05;         // radians from one to the next
constexpr double tick_wanted = 0.05;  // seconds
constexpr std::size_t tiny_parts = 50'000;

template <class... Values>
std::string text(const char* format, Values... values) {
    char line[300];
    std::snprintf(line, sizeof line, format, values...);
    return line;
}

/// The demo's solids so many times along x, as models of find_curve.cpp are made.
std::vector<Part> copies_of_demo(int copies) {
    const Job job = read_job(SEAMWARD_SOURCE_FOLDER "/scenarios/demo.yaml", RunContext(), Make::solids);
    double west = 1e300, east = -1e300;
    for (const Part& part : job.house.parts) {
        for (const Point& p : part.mesh.points) west = std::min(west, p.x), east = std::max(east, p.x);
    }
    std::vector<Part> parts;
    for (int i = 0; i < copies; ++i) {
        for (Part part : job.house.parts) {
            part.id = std::to_string(i) + '/' + part.id;
            part.bounds.assign(part.mesh.triangles.size(), {});
            for (Point& p : part.mesh.points) p.x += i * (east - west + apart);
            parts.push_back(std::move(part));
        }
    }
    return parts;
}

/// Blocks of 8 cm in a heap of 50 x 50 x 20.
std::vector<Part> tiny_blocks() {
    std::vector<Part> parts;
    for (std::size_t i = 0; i < tiny_parts; ++i) {
        const Point at{0.1 * static_cast<double>(i % 50), 0.1 * static_cast<double>(i / 50 % 50),
                       0.1 * static_cast<double>(i / 2500)};
        Part part{.id = "block-" + std::to_string(i), .name = {}, .material = "wood", .mesh = {}, .bounds = {}};
        part.mesh = test::box_mesh(at, at + Vector{0.08, 0.08, 0.08});
        part.bounds.resize(part.mesh.triangles.size());
        parts.push_back(std::move(part));
    }
    return parts;
}

std::size_t triangles_of(const std::vector<Part>& parts) {
    std::size_t sum = 0;
    for (const Part& part : parts) sum += part.mesh.triangles.size();
    return sum;
}

void write(const QString& path, const std::string& bytes) {
    QFile file(path);
    require(file.open(QIODevice::WriteOnly) && file.write(bytes.data(), static_cast<qint64>(bytes.size())) >= 0,
            "a file written");
}

/// A model as a file, and a job that is drawn on it.
struct ModelJob {
    QString model, job;
    std::size_t triangles = 0;

    ModelJob(const QTemporaryDir& folder, const QString& name, const std::vector<Part>& parts)
        : model(folder.filePath(name + ".glb")), job(folder.filePath(name + ".yaml")), triangles(triangles_of(parts)) {
        write(model, gltf_binary(parts, {}, name.toStdString()));
        write(job, "seamward: 1\nmodel: {file: " + name.toStdString() +
                       ".glb}\nspaces: [{id: yard, kind: outdoors}, {id: den, kind: living}]\n"
                       "gaps: [{id: slot, between: [yard, den], slot: {width: 20 mm, length: 1 m}, at: [1 m, 1 m, 0 m]}]\npests: "
                       "[house-mouse]\n");
    }
};

std::size_t faces_in(const aiScene& scene) {
    std::size_t faces = 0;
    for (unsigned i = 0; i < scene.mNumMeshes; ++i) faces += scene.mMeshes[i]->mNumFaces;
    return faces;
}

/// Opens a job some times; `peer` is what is said of the row's peer.
Row first_picture(const std::string& name, const QString& job, std::size_t triangles, const char* peer) {
    OpenWindow window;
    std::vector<double> held, taken_over;
    const auto ours = [&] {
        (void)window.open(job);
        held.push_back(window.held());
        taken_over.push_back(window.taken_over());
        require(window.scene.house().triangle_count() == triangles, "triangles in the picture");
    };
    Row row{name, median_seconds(ours)};
    std::ranges::sort(held);
    std::ranges::sort(taken_over);
    row.note = text("%zu triangles; peer: %s; the window's thread is held for %.0f ms, of which %.0f ms are not the first frame",
                    triangles, peer, 1e3 * held[held.size() / 2], 1e3 * taken_over[held.size() / 2]);
    return row;
}

Row first_picture(const std::string& name, const ModelJob& of) {
    Row row = first_picture(name, of.job, of.triangles, "Assimp reads the file, no picture");
    row.peer = median_seconds([file = of.model.toStdString(), &of] {
        Assimp::Importer importer;
        const aiScene* scene = importer.ReadFile(file, 0);
        require(scene != nullptr && faces_in(*scene) == of.triangles, "triangles that Assimp read");
    });
    return row;
}

Row first_picture_of_demo() {
    const std::string file = SEAMWARD_SOURCE_FOLDER "/scenarios/demo.yaml";
    std::vector<Part> parts;
    const auto peer = [&] { parts = read_job(file, RunContext(), Make::solids).house.parts; };
    peer();
    std::erase_if(parts, [](const Part& part) { return part.layer == Layer::ground; });
    Row row = first_picture("viewer-first-picture, demo", QString::fromStdString(file), triangles_of(parts),
                            "reads the job and builds the solids, no picture; wanted within 2 s");
    row.peer = median_seconds(peer);
    return row;
}

void require_same_ways(const Trace& a, const Trace& b) {
    require(a.paths.size() == b.paths.size() && !a.paths.empty(), "number of ways in");
    for (std::size_t i = 0; i < a.paths.size(); ++i) require(a.paths[i].path == b.paths[i].path, "ways in");
}

Row tick() {
    OpenWindow window;
    window.document.open(SEAMWARD_SOURCE_FOLDER "/scenarios/demo.yaml");
    OpenWindow::run_until([&] {
        return window.closings.has_plan() && window.document.solids() && !window.closings.outlook().animals.empty() &&
               !window.document.is_busy();
    });
    const GapIndex gap = window.closings.plan().plan.steps.front().gap;
    bool on = false, found = false;
    QObject::connect(&window.document, &JobDocument::ways_found, [&] { found = true; });
    const auto ours = [&] {
        on = !on;
        found = false;
        window.closings.tick(gap, on);
        OpenWindow::run_until([&] { return found; });
    };
    ours();
    const Job changed = window.document.job();
    PlanSettings against;
    against.against = changed.pests;
    Trace traced;
    const auto peer = [&] {
        traced = trace(changed.survey, {.pests = {}, .to = {}, .top = JobDocument::ways_wanted}, RunContext());
        (void)make_plan(changed, against, RunContext());
    };
    peer();
    require_same_ways(window.document.ways(), traced);
    return {"viewer-tick, demo", median_seconds(ours), median_seconds(peer),
            text("tick to the new ways in, wanted under %.0f ms; peer: trace and plan from nothing", 1e3 * tick_wanted)};
}

/// Share of the pixels in which two pictures differ.
double differing(const QImage& one, const QImage& other) {
    std::size_t count = 0;
    for (int y = 0; y < one.height(); ++y) {
        for (int x = 0; x < one.width(); ++x) count += one.pixel(x, y) != other.pixel(x, y) ? 1 : 0;
    }
    return static_cast<double>(count) / (one.width() * one.height());
}

/// The same triangles as one actor of one renderer.
vtkSmartPointer<vtkRenderer> plain_scene(const House& house, vtkRenderer& like) {
    ColoredTriangles all;
    for (const Part& part : house.parts) {
        for (const auto& [a, b, c] : part.mesh.triangles)
            all.add({part.mesh.points[a], part.mesh.points[b], part.mesh.points[c]}, Qt::white);
    }
    vtkNew<vtkPolyDataMapper> mapper;
    mapper->SetInputData(all.data());
    vtkNew<vtkActor> actor;
    actor->SetMapper(mapper);
    auto renderer = vtkSmartPointer<vtkRenderer>::New();
    renderer->SetBackground(like.GetBackground());
    renderer->AddActor(actor);
    return renderer;
}

/// Looks at a plain scene, which stands in the frame of the job, as from `camera` at a HouseScene.
void look(vtkRenderer& plain, const OrbitCamera& camera, const Point& origin) {
    const Point eye = camera.eye();
    vtkCamera* at = plain.GetActiveCamera();
    at->SetPosition(eye.x + origin.x, eye.y + origin.y, eye.z + origin.z);
    at->SetFocalPoint(camera.focus.x + origin.x, camera.focus.y + origin.y, camera.focus.z + origin.z);
    at->SetViewUp(0, 0, 1);
    at->SetViewAngle(camera.view_angle * 180 / std::numbers::pi);
    plain.ResetCameraClippingRange();
}

/// Share of the picture that the house covers.
double covered_by_house(HouseScene& scene, View& view, const OrbitCamera& camera) {
    std::array<QImage, 2> images;
    for (const Shown how : {Shown::hidden, Shown::whole}) {
        for (std::size_t i = 0; i < coat_count; ++i) scene.set_shown(static_cast<Coat>(i), how);
        scene.look(camera);
        view.draw();
        images.at(how == Shown::whole ? 1 : 0) = view.image();
    }
    return differing(images[0], images[1]);
}

double covered_by_triangles(View& view) {
    view.draw();
    const QImage all = view.image();
    QImage nothing = all;
    nothing.fill(all.pixelColor(0, 0));
    return differing(all, nothing);
}

/// Seconds of one frame of a turn that begins at `camera`.
template <class Look>
double seconds_of_frame(View& view, OrbitCamera camera, Look look) {
    return median_seconds([&] {
               for (int i = 0; i < frames; ++i) {
                   camera.azimuth += turn;
                   look(camera);
                   view.draw();
               }
           }) /
           frames;
}

Row turning(const ModelJob& of) {
    OpenWindow window;
    (void)window.open(of.job);
    HouseScene scene;
    require(scene.show_job(window.document), "a house to draw");
    scene.set_open(false);
    scene.set_fine(false);
    const OrbitCamera camera = scene.whole_house({}, static_cast<double>(wide) / high);
    const auto look_at_house = [&](const OrbitCamera& from) { scene.look(from); };
    const auto plain = plain_scene(*window.document.solids(), *scene.renderer());
    const auto look_at_plain = [&](const OrbitCamera& from) { look(*plain, from, scene.frame().origin); };
    Row row{text("viewer-frame, %.0e triangles turning", static_cast<double>(of.triangles))};
    double covered = 0;
    {
        View view(scene.renderer());
        covered = covered_by_house(scene, view, camera);
        row.ours = seconds_of_frame(view, camera, look_at_house);
        scene.set_open(true);
        row.note = text("drawn by %s, %d x %d; peer: VTK, one actor; %.3f s where near walls are faint", view.drawn_by().c_str(),
                        wide, high, seconds_of_frame(view, camera, look_at_house));
    }
    View view(plain);
    look_at_plain(camera);
    require(std::abs(covered_by_triangles(view) - covered) < 0.02, "the picture of the house and of its triangles");
    row.peer = seconds_of_frame(view, camera, look_at_plain);
    return row;
}

std::vector<Row> measure() {
    const QTemporaryDir folder;
    std::vector<Row> rows;
    rows.push_back(first_picture_of_demo());
    rows.push_back(first_picture("viewer-first-picture, 7e4 triangles", {folder, "one", copies_of_demo(1)}));
    const ModelJob large(folder, "large", copies_of_demo(14));
    rows.push_back(first_picture("viewer-first-picture, 1e6 triangles", large));
    rows.push_back(first_picture("viewer-first-picture, 5e4 parts", {folder, "tiny", tiny_blocks()}));
    rows.push_back(tick());
    rows.push_back(turning(large));
    return rows;
}

}  // namespace

std::vector<Row> bench_viewer() {
    std::optional<OwnScreen> screen;
    try {
        screen.emplace(wide + 200, high + 200);
    } catch (const std::runtime_error& fault) {
        std::printf("the window is left out: %s\n", fault.what());
        return {};
    }
    qputenv("QT_QPA_PLATFORM", "xcb");
    qunsetenv("WAYLAND_DISPLAY");
    const RuntimeFolder runtime_folder;
    const QTemporaryDir own;
    for (const char* name : {"XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_CACHE_HOME"})
        qputenv(name, QFile::encodeName(own.filePath(name)));
    QSurfaceFormat::setDefaultFormat(QVTKOpenGLNativeWidget::defaultFormat());
    int count = 1;
    std::string name = "seamward_bench";
    char* words[] = {name.data(), nullptr};
    const QApplication application(count, words);
    QApplication::setQuitOnLastWindowClosed(false);
    return measure();
}

}  // namespace seamward::bench

#endif
