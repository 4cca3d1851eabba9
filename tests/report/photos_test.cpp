// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/photos.h"

#include <gtest/gtest.h>

#include <cstdint>
#include <string>

#include "base/diagnostics.h"
#include "tests/support/scratch_folder.h"

namespace seamward {
namespace {

/// A white JPEG image of 32 x 16 pixels, made by another library.
std::string white_jpeg() {
    constexpr std::string_view hex =
        "ffd8ffe000104a46494600010100000100010000ffdb0043001b12141714111b1716171e1c1b2028422b28252528513a3d3042605565645f555d5b6a"
        "78"
        "99816a7190735b5d85b586909ea3abadab6780bcc9baa6c799a8aba4ffc0000b080010002001011100ffc40015000101000000000000000000000000"
        "00"
        "000006ffc40014100100000000000000000000000000000000ffda0008010100003f00a60001ffd9";
    std::string bytes;
    for (std::size_t i = 0; i < hex.size(); i += 2)
        bytes += static_cast<char>(std::stoi(std::string(hex.substr(i, 2)), nullptr, 16));
    return bytes;
}

void add_two(std::string& to, unsigned value) {
    to += static_cast<char>(value >> 8U);
    to += static_cast<char>(value & 0xFFU);
}
void add_four(std::string& to, unsigned value) {
    add_two(to, value >> 16U);
    add_two(to, value & 0xFFFFU);
}

/// The image with an Exif block (CIPA DC-008, Exif 2.32): held so, and a place in words.
std::string with_exif(const std::string& jpeg, unsigned orientation, const std::string& place) {
    std::string tiff("MM\0*", 4);
    add_four(tiff, 8);  // the first directory
    add_two(tiff, 2);
    add_two(tiff, 0x010E);  // a description
    add_two(tiff, 2);
    add_four(tiff, static_cast<unsigned>(place.size()) + 1);
    add_four(tiff, 8 + 2 + 2 * 12 + 4);
    add_two(tiff, 0x0112);  // how it was held
    add_two(tiff, 3);
    add_four(tiff, 1);
    add_two(tiff, orientation);
    add_two(tiff, 0);
    add_four(tiff, 0);
    tiff += place + '\0';
    std::string block("Exif\0\0", 6);
    block += tiff;
    std::string head("\xff\xe1", 2);
    add_two(head, static_cast<unsigned>(block.size()) + 2);
    return jpeg.substr(0, 2) + head + block + jpeg.substr(2);
}

TEST(Photos, AreTurnedUprightAndLoseWhereTheyWereTaken) {
    const test::ScratchFolder folder;
    const std::string place = "N 33 12 W 111 30";
    const auto file = folder.write("held sideways.jpg", with_exif(white_jpeg(), 6, place));
    const ReportPhoto photo = scaled_photo(file, "photo", 1000);
    EXPECT_EQ(photo.width, 16U);
    EXPECT_EQ(photo.height, 32U);
    EXPECT_TRUE(photo.jpeg.starts_with("\xff\xd8\xff"));
    EXPECT_EQ(photo.jpeg.find("Exif"), std::string::npos);
    EXPECT_EQ(photo.jpeg.find(place), std::string::npos);
}

TEST(Photos, AreScaledToTheLongerSideAndNeverUp) {
    const test::ScratchFolder folder;
    const auto file = folder.write("a.jpg", white_jpeg());
    const ReportPhoto small = scaled_photo(file, "photo", 8);
    EXPECT_EQ(small.width, 8U);
    EXPECT_EQ(small.height, 4U);
    const ReportPhoto same = scaled_photo(file, "photo", 1000);
    EXPECT_EQ(same.width, 32U);
    EXPECT_EQ(same.height, 16U);
}

TEST(Photos, OfAnotherKindOrDamagedAreRefusedByName) {
    const test::ScratchFolder folder;
    // What an image library would take for a drawing, a list of files, or a script.
    for (const std::string_view text :
         {"<svg xmlns='http://www.w3.org/2000/svg'/>", "push graphic-context", "%!PS", "GIF89a", ""}) {
        const auto file = folder.write("b.jpg", text);
        try {
            (void)scaled_photo(file, "b.jpg", 1000);
            ADD_FAILURE() << text;
        } catch (const BadInput& bad) {
            EXPECT_EQ(bad.diagnostics().front().file, "b.jpg");
            EXPECT_NE(bad.diagnostics().front().mend.find("JPEG or PNG"), std::string::npos);
        }
    }
    const std::string whole = white_jpeg();
    EXPECT_THROW((void)scaled_photo(folder.write("c.jpg", whole.substr(0, 40)), "c.jpg", 1000), BadInput);
    EXPECT_THROW((void)scaled_photo(folder.path() / "nowhere.jpg", "nowhere.jpg", 1000), BadInput);
}

TEST(Photos, LargerThanAnyCameraAreRefusedBeforeTheyTakeMemory) {
    const test::ScratchFolder folder;
    std::string huge = white_jpeg();
    const std::size_t frame = huge.find("\xff\xc0");
    ASSERT_NE(frame, std::string::npos);
    huge.replace(frame + 5, 4, "\xff\xf0\xff\xf0");  // 65,520 rows and columns
    EXPECT_THROW((void)scaled_photo(folder.write("d.jpg", huge), "d.jpg", 1000), BadInput);
}

TEST(Photos, OfAJobStandBesideItsFile) {
    const test::ScratchFolder folder;
    folder.write("photos/one.jpg", white_jpeg());
    const std::string text =
        "seamward: 1\n"
        "spaces: [{id: yard, kind: outdoors}, {id: hall, kind: living}]\n"
        "gaps:\n"
        "  - {id: a, between: [yard, hall], hole: {diameter: 5 mm}, photo: photos/one.jpg}\n"
        "  - {id: b, between: [yard, hall], hole: {diameter: 5 mm}, photo: photos/two.jpg}\n"
        "  - {id: c, between: [yard, hall], hole: {diameter: 5 mm}}\n";
    const Job job = parse_job(text, folder.path() / "job.yaml");
    const ReportPhotos photos = read_photos(job, folder.path(), RunContext());
    ASSERT_EQ(photos.shown.size(), 1U);
    EXPECT_EQ(photos.shown.front().gap, GapIndex{0});
    ASSERT_EQ(photos.unreadable.size(), 1U);
    EXPECT_EQ(photos.unreadable.front(), GapIndex{1});
    EXPECT_NE(photos.of(GapIndex{0}), nullptr);
    EXPECT_EQ(photos.of(GapIndex{2}), nullptr);
}

}  // namespace
}  // namespace seamward
