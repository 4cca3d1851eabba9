// SPDX-License-Identifier: GPL-3.0-or-later
#include "offscreen/draw_picture.h"

#include <QFontDatabase>
#include <QGuiApplication>
#include <QSaveFile>
#include <array>
#include <clocale>
#include <optional>

#include "offscreen/own_screen.h"
#include "offscreen/painted_picture.h"

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

/// Writes beside the file first and then takes its place, so that a picture is there whole or not at all.
void save(const QImage& image, const std::filesystem::path& file) {
    QSaveFile out(QString::fromLocal8Bit(file.string().c_str()));
    const bool opened = out.open(QIODevice::WriteOnly);
    const bool saved = opened && image.save(&out, "PNG") && out.commit();
    if (!saved) throw BadPicture(quoted(file) + ": cannot be written: " + out.errorString().toStdString());
}

}  // namespace

void draw_picture(const House& house, const std::string& heading, std::span<const DrawnPath> paths, const PictureRequest& request) {
    check(house, paths, request);
    std::optional<OwnScreen> screen;
    try {
        if (!has_drawable_screen()) screen.emplace(64, 64);  // drawn in memory: the screen itself stays empty
    } catch (const std::runtime_error& fault) {
        throw BadPicture(fault.what());
    }
    const Letters letters;
    save(painted_picture(house, heading, paths, request).image, request.file);
}

}  // namespace seamward::viewer
