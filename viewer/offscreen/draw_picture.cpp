// SPDX-License-Identifier: GPL-3.0-or-later
#include "offscreen/draw_picture.h"

#include <QBuffer>
#include <QFontDatabase>
#include <QGuiApplication>
#include <array>
#include <clocale>
#include <optional>

#include "base/diagnostics.h"
#include "exchange/write_whole_file.h"
#include "offscreen/own_screen.h"
#include "offscreen/painted_picture.h"
#include "offscreen/runtime_folder.h"

namespace seamward::viewer {

namespace {

/// Letters without a display: Qt's application object, where the program has none of its own.
class Letters {
public:
    Letters() {
        if (QCoreApplication::instance() == nullptr) {
            own_.emplace(count_, words_.data());
            std::setlocale(LC_NUMERIC, "C");  // Qt takes the user's
        }
        if (QFontDatabase().families().isEmpty()) throw BadPicture("no letters to write with: apt-get install fonts-dejavu-core");
    }

private:
    std::array<char, 9> name_{"seamward"};
    std::array<char, 10> option_{"-platform"};
    std::array<char, 10> value_{"offscreen"};
    std::array<char*, 4> words_{name_.data(), option_.data(), value_.data(), nullptr};
    int count_ = 3;
    std::optional<QGuiApplication> own_;
};

std::string quoted(const std::filesystem::path& file) { return '"' + file.string() + '"'; }

void check(const House& house, std::span<const DrawnPath> paths, const PictureRequest& request) {
    std::string ending = request.file.extension().string();
    for (char& letter : ending) letter = letter >= 'A' && letter <= 'Z' ? static_cast<char>(letter + ('a' - 'A')) : letter;
    if (ending != ".png") throw BadPicture(quoted(request.file) + ": only PNG pictures are made; give a name that ends in .png");
    if (request.width < PictureRequest::least_width || request.width > PictureRequest::most_width ||
        request.height < PictureRequest::least_height || request.height > PictureRequest::most_height) {
        throw BadPicture(std::to_string(request.width) + 'x' + std::to_string(request.height) +
                         ": pictures have 640x480 to 4096x4096 pixels");
    }
    if (!paths.empty() && (request.rank == 0 || request.rank > paths.size())) {
        throw BadPicture("there is no way " + std::to_string(request.rank) + ": there " +
                         (paths.size() == 1 ? "is only one way in" : "are " + std::to_string(paths.size()) + " ways in"));
    }
    if (request.closeup && request.closeup->value >= house.survey.gaps.size()) throw BadPicture("there is no such gap");
}

void save(const QImage& image, const std::filesystem::path& file) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    if (!image.save(&buffer, "PNG")) throw BadPicture(quoted(file) + ": the picture cannot be made into a PNG");
    try {
        write_whole_file(file, file.string(), {bytes.constData(), static_cast<std::size_t>(bytes.size())});
    } catch (const BadInput& fault) {
        throw BadPicture(fault.what());
    }
}

}  // namespace

void draw_picture(const House& house, const std::string& heading, std::span<const DrawnPath> paths,
                  const PictureRequest& request) {
    check(house, paths, request);
    std::optional<OwnScreen> screen;
    try {
        if (!has_drawable_screen()) screen.emplace(64, 64);  // drawn in memory: the screen itself stays empty
    } catch (const std::runtime_error& fault) {
        throw BadPicture(fault.what());
    }
    const RuntimeFolder runtime_folder;
    const Letters letters;
    save(painted_picture(house, heading, paths, request).image, request.file);
}

}  // namespace seamward::viewer
