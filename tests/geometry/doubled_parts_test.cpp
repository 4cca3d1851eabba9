// SPDX-License-Identifier: GPL-3.0-or-later
#include "geometry/doubled_parts.h"

#include <gtest/gtest.h>

#include <random>

#include "tests/support/plain_solids.h"

namespace seamward::test {
namespace {

TriangleMesh rearranged(const TriangleMesh& mesh, std::mt19937& random) {
    TriangleMesh out = as_soup(mesh);
    std::shuffle(out.triangles.begin(), out.triangles.end(), random);
    for (Triangle& t : out.triangles) std::rotate(t.begin(), t.begin() + random() % 3, t.end());
    return random() % 2 == 0 ? turned_over(out) : out;
}

TEST(DoubledParts, AreFoundWhateverTheirOrder) {
    std::mt19937 random(3);
    const TriangleMesh box = Placement(random, 10).of(box_mesh({0, 0, 0}, {1, 2, 3})), pipe = prism_mesh(24, 0.05, 0, 2);
    TriangleMesh shifted = pipe;
    for (Point& p : shifted.points) p.z += 3e-5;
    const std::vector<TriangleMesh> parts{box,     pipe, with_noise(rearranged(box, random), random, 2e-6),
                                          {},      {},   with_noise(rearranged(pipe, random), random, 2e-6),
                                          shifted, box,  turned_over(shifted)};
    std::vector<std::pair<std::size_t, std::size_t>> found;
    for (const DoubledPart& d : find_doubled_parts(parts)) found.emplace_back(d.part, d.same_as);
    const std::vector<std::pair<std::size_t, std::size_t>> expected{{2, 0}, {5, 1}, {7, 0}, {8, 6}};
    EXPECT_EQ(found, expected);
}

TEST(DoubledParts, AreNotThoseThatOnlyShareTheirPoints) {
    TriangleMesh box = box_mesh({0, 0, 0}, {1, 1, 1}), other = box;
    other.triangles[0] = {0, 2, 1};
    other.triangles[1] = {2, 3, 1};  // the other diagonal
    TriangleMesh part_of_it = box;
    part_of_it.triangles.pop_back();
    EXPECT_TRUE(find_doubled_parts(std::vector<TriangleMesh>{box, other, part_of_it}).empty());
}

TEST(DoubledParts, DoNotDriftAlongARow) {
    std::vector<TriangleMesh> row;
    for (int i = 0; i < 10; ++i) row.push_back(box_mesh({0, 0, 6e-6 * i}, {1, 1, 1 + 6e-6 * i}));
    const std::vector<DoubledPart> found = find_doubled_parts(row);
    ASSERT_EQ(found.size(), 5U);
    for (std::size_t i = 0; i < 5; ++i) {
        EXPECT_EQ(found[i].part, 2 * i + 1);
        EXPECT_EQ(found[i].same_as, 2 * i);
    }
}

}  // namespace
}  // namespace seamward::test
