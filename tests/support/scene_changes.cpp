// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/scene_changes.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <random>
#include <utility>

namespace seamward::test {
namespace {

using Triangle = std::array<std::uint32_t, 3>;

double between(std::mt19937& engine, double low, double high) {
    return low + (high - low) * (static_cast<double>(engine()) / 4294967295.0);
}

template <class T>
void shuffle(std::vector<T>& things, std::mt19937& engine) {
    for (std::size_t i = things.size(); i > 1; --i) std::swap(things[i - 1], things[engine() % i]);
}

std::uint32_t add_point(TriangleMesh& mesh, const Point& p) {
    mesh.points.push_back(p);
    return static_cast<std::uint32_t>(mesh.points.size() - 1);
}

Point on_way(const Point& a, const Point& b, double share) { return a + (b - a) * share; }

TriangleMesh quartered(const TriangleMesh& mesh) {
    TriangleMesh fine{mesh.points, {}};
    std::map<std::pair<std::uint32_t, std::uint32_t>, std::uint32_t> middles;
    const auto middle = [&](std::uint32_t a, std::uint32_t b) {
        const auto [found, added] = middles.try_emplace(std::minmax(a, b), 0);
        if (added) found->second = add_point(fine, on_way(mesh.points[std::min(a, b)], mesh.points[std::max(a, b)], 0.5));
        return found->second;
    };
    for (const auto& [a, b, c] : mesh.triangles) {
        const std::uint32_t ab = middle(a, b), bc = middle(b, c), ca = middle(c, a);
        for (const Triangle& t : {Triangle{a, ab, ca}, {ab, b, bc}, {ca, bc, c}, {ab, bc, ca}}) fine.triangles.push_back(t);
    }
    return fine;
}

void split_inside(TriangleMesh& mesh, std::size_t at, std::mt19937& engine) {
    const auto [a, b, c] = mesh.triangles[at];
    const double s = between(engine, 0.2, 0.8), t = between(engine, 0.2, 0.8);
    const Point inner = on_way(mesh.points[a], on_way(mesh.points[b], mesh.points[c], s), t);
    const std::uint32_t p = add_point(mesh, inner);
    mesh.triangles[at] = {a, b, p};
    mesh.triangles.push_back({b, c, p});
    mesh.triangles.push_back({c, a, p});
}

/// Splits an edge in all triangles that have it. Looks through all of them.
void split_edge(TriangleMesh& mesh, std::size_t at, std::mt19937& engine) {
    const std::size_t k = engine() % 3;
    const std::uint32_t a = mesh.triangles[at][k], b = mesh.triangles[at][(k + 1) % 3];
    const std::uint32_t p = add_point(mesh, on_way(mesh.points[a], mesh.points[b], between(engine, 0.2, 0.8)));
    const std::size_t count = mesh.triangles.size();
    for (std::size_t i = 0; i < count; ++i) {
        for (std::size_t j = 0; j < 3; ++j) {
            const Triangle t = mesh.triangles[i];
            const std::uint32_t from = t[j], to = t[(j + 1) % 3], far = t[(j + 2) % 3];
            if (std::minmax(from, to) != std::minmax(a, b)) continue;
            mesh.triangles[i] = {from, p, far};
            mesh.triangles.push_back({p, to, far});
            break;
        }
    }
}

template <class Change>
Scene changed(Scene scene, const std::string& how, Change change) {
    scene.name += "-" + how;
    for (ModelPart& part : scene.parts) change(part.mesh);
    return scene;
}

}  // namespace

Frame turned_frame(Vector axis, double angle, const Point& origin) {
    axis = axis * (1 / length(axis));
    const double c = std::cos(angle), s = std::sin(angle);
    const auto turned = [&](Vector v) { return v * c + cross(axis, v) * s + axis * (dot(axis, v) * (1 - c)); };
    return {origin, turned({1, 0, 0}), turned({0, 1, 0}), turned({0, 0, 1})};
}

Scene transformed(const Scene& scene, const Frame& frame, double scale) {
    Scene moved = scene;
    const auto move = [&](Point& p) {
        p = frame.at(p.x, p.y, p.z);
        p = {p.x * scale, p.y * scale, p.z * scale};
    };
    moved.name += "-moved";
    moved.smallest *= scale;
    moved.widest *= scale;
    for (ModelPart& part : moved.parts) std::for_each(part.mesh.points.begin(), part.mesh.points.end(), move);
    for (auto* spaces : {&moved.spaces, &moved.thin_spaces}) {
        for (ExpectedSpace& space : *spaces) move(space.inside);
    }
    for (auto* gaps : {&moved.gaps, &moved.gaps_with_thin, &moved.shut}) {
        for (ExpectedGap& gap : *gaps) {
            gap.width *= scale;
            gap.length *= scale;
            for (Point* p : {&gap.near, &gap.from, &gap.to}) move(*p);
            gap.window = {};
        }
    }
    return moved;
}

Scene refined(const Scene& scene, int k) {
    return changed(scene, "refined-" + std::to_string(k), [k](TriangleMesh& mesh) {
        for (int i = 0; i < k; ++i) mesh = quartered(mesh);
    });
}

Scene retessellated(const Scene& scene, double share, unsigned seed) {
    std::mt19937 engine(seed);
    return changed(scene, "retessellated", [&](TriangleMesh& mesh) {
        const auto times = static_cast<std::size_t>(share * static_cast<double>(mesh.triangles.size()));
        for (std::size_t i = 0; i < times; ++i) {
            const std::size_t at = engine() % mesh.triangles.size();
            engine() % 2 == 0 ? split_inside(mesh, at, engine) : split_edge(mesh, at, engine);
        }
    });
}

Scene with_noise(const Scene& scene, double most, unsigned seed) {
    std::mt19937 engine(seed);
    return changed(scene, "noise", [&](TriangleMesh& mesh) {
        for (Point& p : mesh.points) {
            p = p + Vector{between(engine, -most, most), between(engine, -most, most), between(engine, -most, most)};
        }
    });
}

Scene with_flipped_parts(const Scene& scene) {
    bool flip = false;
    return changed(scene, "flipped-parts", [&](TriangleMesh& mesh) {
        flip = !flip;
        if (!flip) return;
        for (Triangle& t : mesh.triangles) std::swap(t[1], t[2]);
    });
}

Scene with_flipped_triangles(const Scene& scene, unsigned seed) {
    std::mt19937 engine(seed);
    return changed(scene, "flipped-triangles", [&](TriangleMesh& mesh) {
        for (Triangle& t : mesh.triangles) {
            if (engine() % 3 == 0) std::swap(t[1], t[2]);
        }
    });
}

Scene with_twin_parts(const Scene& scene) {
    Scene more = scene;
    more.name += "-twins";
    for (std::size_t i = 0; i < scene.parts.size(); i += 3) {
        more.parts.push_back(scene.parts[i]);
        more.parts.back().id += "-again";
    }
    return more;
}

Scene with_doubled_triangles(const Scene& scene, unsigned seed) {
    std::mt19937 engine(seed);
    return changed(scene, "doubled-triangles", [&](TriangleMesh& mesh) {
        const std::size_t count = mesh.triangles.size();
        for (std::size_t i = 0; i < count; ++i) {
            if (engine() % 3 != 0) continue;
            const auto [a, b, c] = mesh.triangles[i];
            mesh.triangles.push_back(engine() % 2 == 0 ? Triangle{b, c, a} : Triangle{b, a, c});
        }
    });
}

Scene as_soup(const Scene& scene, unsigned seed) {
    std::mt19937 engine(seed);
    return changed(scene, "soup", [&](TriangleMesh& mesh) {
        TriangleMesh soup;
        shuffle(mesh.triangles, engine);
        for (const Triangle& triangle : mesh.triangles) {
            Triangle own{};
            for (std::size_t i = 0; i < 3; ++i) own[i] = add_point(soup, mesh.points[triangle[i]]);
            soup.triangles.push_back(own);
        }
        mesh = std::move(soup);
    });
}

Scene with_shuffled_parts(const Scene& scene, unsigned seed) {
    std::mt19937 engine(seed);
    Scene other = scene;
    other.name += "-shuffled";
    shuffle(other.parts, engine);
    return other;
}

Scene as_one_part(const Scene& scene) {
    Scene one = scene;
    one.name += "-one-part";
    std::vector<TriangleMesh> meshes;
    for (const ModelPart& part : scene.parts) meshes.push_back(part.mesh);
    one.parts = {ModelPart{.id = "all", .name = "all", .mesh = joined(meshes)}};
    return one;
}

Scene as_open_faces(const Scene& scene) {
    Scene open = scene;
    open.name += "-open-faces";
    open.open_parts = true;
    open.parts.clear();
    for (const ModelPart& part : scene.parts) {
        std::map<int, TriangleMesh> faces;
        for (const auto& [a, b, c] : part.mesh.triangles) {
            const std::vector<Point>& points = part.mesh.points;
            const Vector n = cross(points[b] - points[a], points[c] - points[a]);
            const double most = std::max({std::abs(n.x), std::abs(n.y), std::abs(n.z)});
            const int axis = most == std::abs(n.x) ? 0 : most == std::abs(n.y) ? 1 : 2;
            const bool up = (axis == 0 ? n.x : axis == 1 ? n.y : n.z) > 0;
            TriangleMesh& face = faces[2 * axis + (up ? 1 : 0)];
            face.points = points;
            face.triangles.push_back({a, b, c});
        }
        for (const auto& [number, face] : faces) {
            open.parts.push_back(
                {.id = part.id + "-face-" + std::to_string(number), .name = part.name, .mesh = merged_points(face)});
        }
    }
    return open;
}

}  // namespace seamward::test
