// SPDX-License-Identifier: GPL-3.0-or-later
// The drawn sections of the lesson: not to scale, layers drawn wide enough to be told apart. Coordinates are those of the view
// box, x to the right and y down.
#include <array>
#include <string>
#include <vector>

#include "catalog/shipped.h"
#include "report/html.h"
#include "teach/lesson.h"

namespace seamward {

namespace {

constexpr const char* ink = "#1d272b";
constexpr const char* concrete = "#c9c5bb";
constexpr const char* earth = "#b9a58a";
constexpr const char* wood = "#d9b98a";
constexpr const char* plaster = "#e8dcc8";
constexpr const char* board = "#f4f2ee";
constexpr const char* wool = "#f6d7d9";
constexpr const char* metal = "#5d6b75";
constexpr const char* brick = "#b8664f";
constexpr const char* tile = "#a9552f";
constexpr const char* water = "#1f6fb4";
constexpr const char* animals = "#b8470a";
constexpr const char* number_fill = "#0b4f9e";

/// A balloon and what it points at.
struct Label {
    const char* part;
    int x, y, to_x, to_y;
};

class Sketch {
public:
    Sketch(int width, int height, std::string title) : title_(std::move(title)) {
        html_.begin("svg", {{"xmlns", "http://www.w3.org/2000/svg"},
                            {"viewBox", "0 0 " + std::to_string(width) + ' ' + std::to_string(height)},
                            {"width", std::to_string(width)},
                            {"height", std::to_string(height)},
                            {"role", "group"},
                            {"aria-label", title_},
                            {"font-family", "system-ui, DejaVu Sans, sans-serif"}});
        html_.single(
            "rect",
            {{"x", "0"}, {"y", "0"}, {"width", std::to_string(width)}, {"height", std::to_string(height)}, {"fill", "#fff"}});
    }

    void box(int x, int y, int width, int height, const char* fill) {
        html_.single("rect", {{"x", std::to_string(x)},
                              {"y", std::to_string(y)},
                              {"width", std::to_string(width)},
                              {"height", std::to_string(height)},
                              {"fill", fill},
                              {"stroke", ink},
                              {"stroke-width", "1.5"}});
    }
    void shape(const std::string& points, const char* fill) {
        html_.single("polygon", {{"points", points}, {"fill", fill}, {"stroke", ink}, {"stroke-width", "1.5"}});
    }
    void line(const std::string& points, const char* color, const char* width, const char* dashes = "none") {
        html_.single("polyline", {{"points", points},
                                  {"fill", "none"},
                                  {"stroke", color},
                                  {"stroke-width", width},
                                  {"stroke-dasharray", dashes},
                                  {"stroke-linejoin", "round"}});
    }
    /// A line with a tip at its end.
    void arrow(const std::string& points, const std::string& tip, const char* color) {
        line(points, color, "4", "9 5");
        html_.single("polygon", {{"points", tip}, {"fill", color}});
    }
    void dot(int x, int y, const char* radius, const char* fill) {
        html_.single("circle",
                     {{"cx", std::to_string(x)}, {"cy", std::to_string(y)}, {"r", radius}, {"fill", fill}, {"stroke", ink}});
    }
    void word(int x, int y, const std::string& text, const char* color = ink) {
        html_.element("text", text, {{"x", std::to_string(x)}, {"y", std::to_string(y)}, {"font-size", "20"}, {"fill", color}});
    }
    /// Wavy lines that stand for insulation.
    void fleece(int x, int y, int width, int height) {
        box(x, y, width, height, wool);
        for (int row = y + 12; row < y + height - 4; row += 18) {
            std::string points;
            for (int at = x + 4, up = 0; at <= x + width - 4; at += 12, up = 1 - up)
                points += std::to_string(at) + ',' + std::to_string(row + 8 * up) + ' ';
            line(points, "#c98a90", "1.5");
        }
    }

    LessonDrawing finish(const std::vector<Label>& labels, const Translator& say) {
        LessonDrawing drawing;
        const std::vector<EnvelopePart>& rows = shipped_envelope().rows;
        for (const Label& label : labels) {
            for (std::size_t i = 0; i < rows.size(); ++i) {
                if (rows[i].part == label.part) balloon(label, i + 1, rows[i].id, say(as_named(rows[i].name)));
            }
            drawing.parts.emplace_back(label.part);
        }
        html_.end();
        drawing.title = title_;
        drawing.svg = html_.written();
        return drawing;
    }

private:
    void balloon(const Label& label, std::size_t number, const std::string& id, const std::string& name) {
        line(std::to_string(label.x) + ',' + std::to_string(label.y) + ' ' + std::to_string(label.to_x) + ',' +
                 std::to_string(label.to_y),
             number_fill, "2");
        dot(label.to_x, label.to_y, "4", number_fill);
        html_.begin("a", {{"href", "#part-" + id}, {"aria-label", std::to_string(number) + ": " + name}});
        dot(label.x, label.y, "19", number_fill);
        html_.element("text", std::to_string(number),
                      {{"x", std::to_string(label.x)},
                       {"y", std::to_string(label.y + 7)},
                       {"font-size", "21"},
                       {"font-weight", "700"},
                       {"text-anchor", "middle"},
                       {"fill", "#fff"}});
        html_.end();
    }

    std::string title_;
    Html html_;
};

/// What both drawings say of their arrows.
void legend(Sketch& sketch, int x, int y, const Translator& say) {
    sketch.arrow(std::to_string(x) + ',' + std::to_string(y) + ' ' + std::to_string(x + 50) + ',' + std::to_string(y),
                 std::to_string(x + 62) + ',' + std::to_string(y) + ' ' + std::to_string(x + 48) + ',' + std::to_string(y - 8) +
                     ' ' + std::to_string(x + 48) + ',' + std::to_string(y + 8),
                 water);
    sketch.word(x + 72, y + 7, say("water leaves"), water);
    sketch.arrow(std::to_string(x) + ',' + std::to_string(y + 30) + ' ' + std::to_string(x + 50) + ',' + std::to_string(y + 30),
                 std::to_string(x + 62) + ',' + std::to_string(y + 30) + ' ' + std::to_string(x + 48) + ',' +
                     std::to_string(y + 22) + ' ' + std::to_string(x + 48) + ',' + std::to_string(y + 38),
                 animals);
    sketch.word(x + 72, y + 37, say("animals come"), animals);
}

/// Layers from outside in, above and below the window.
void draw_wall(Sketch& sketch) {
    for (const auto& [top, height] : {std::pair{230, 140}, std::pair{560, 112}}) {
        sketch.box(214, top, 38, height, plaster);
        sketch.line("256," + std::to_string(top) + " 256," + std::to_string(top + height), water, "5");
        sketch.box(260, top, 22, height, wood);
        if (top == 230)
            sketch.fleece(282, top, 100, height);
        else
            sketch.box(282, top, 100, height, "#fff");  // the cavity as it is
        sketch.box(382, top, 20, height, board);
    }
    sketch.box(260, 660, 22, 44, wood);
    sketch.box(382, 660, 20, 40, board);
    sketch.box(282, 672, 100, 32, wood);  // bottom plate
    sketch.box(282, 340, 100, 30, wood);  // header
    sketch.box(282, 560, 100, 24, wood);  // sill
    // Window: frame, glass and flashing.
    sketch.box(246, 370, 64, 22, board);
    sketch.box(246, 538, 64, 22, board);
    sketch.line("276,392 276,538", water, "3");
    sketch.line("290,392 290,538", water, "3");
    sketch.line("257,318 257,352 206,362 202,372", metal, "6");
    // Weep screed: flange behind the stucco, nose below it.
    sketch.line("257,590 257,672 208,684 208,692 254,696", metal, "6");
    for (const int x : {222, 238}) sketch.dot(x, 693, "4", "#fff");
}

void draw_eave(Sketch& sketch) {
    sketch.box(282, 206, 100, 24, wood);
    sketch.box(282, 182, 100, 24, wood);
    sketch.box(382, 214, 338, 18, board);
    sketch.fleece(392, 168, 328, 46);
    sketch.shape("92,176 720,16 720,46 92,206", wood);
    sketch.shape("84,164 720,2 720,16 84,178", "#8a7a66");
    for (int i = 0; i < 9; ++i) {
        const int x = 84 + i * 70, y = 164 - (i * 70 * 162) / 636;
        sketch.line(std::to_string(x) + ',' + std::to_string(y) + ' ' + std::to_string(x + 34) + ',' + std::to_string(y - 20) +
                        ' ' + std::to_string(x + 70) + ',' + std::to_string(y - 18),
                    tile, "9");
    }
    sketch.box(78, 172, 16, 62, wood);
    sketch.box(94, 222, 120, 10, wood);
    sketch.line("132,227 176,227", "#fff", "10");
    sketch.line("132,227 176,227", ink, "8", "3 4");
}

LessonDrawing wall_section(const Translator& say) {
    Sketch sketch(720, 900, say("A stucco wall from the ground to the roof, cut through"));
    sketch.shape("0,792 226,780 262,780 262,900 0,900", earth);
    sketch.shape("262,704 720,704 720,750 440,750 440,900 262,900", concrete);
    draw_wall(sketch);
    draw_eave(sketch);
    // Water runs down behind the stucco and out; animals come in under the screed and go up.
    sketch.arrow("249,420 249,670 232,700", "224,720 222,700 240,704", water);
    sketch.arrow("150,740 246,702 272,700 330,650 330,470", "330,450 321,472 339,472", animals);
    sketch.arrow("154,300 154,226 240,190 300,150", "320,140 298,142 306,158", animals);
    sketch.word(24, 640, say("outside"));
    sketch.word(560, 470, say("room"));
    sketch.word(540, 130, say("attic"));
    legend(sketch, 480, 800, say);
    return sketch.finish({{"ground", 60, 840, 120, 800},
                          {"foundation", 540, 725, 480, 725},
                          {"plate", 470, 650, 360, 688},
                          {"screed", 120, 660, 208, 688},
                          {"barrier", 120, 560, 256, 600},
                          {"flashing", 130, 432, 205, 366},
                          {"stucco", 130, 374, 220, 330},
                          {"sheathing", 120, 496, 266, 570},
                          {"cavity", 480, 590, 350, 620},
                          {"insulation", 480, 280, 340, 290},
                          {"drywall", 480, 340, 392, 310},
                          {"topplate", 470, 130, 366, 196},
                          {"soffit", 164, 300, 200, 228},
                          {"fascia", 36, 250, 82, 216},
                          {"eavevent", 84, 316, 146, 230},
                          {"roof", 300, 50, 330, 104},
                          {"attic", 660, 90, 650, 140},
                          {"window", 420, 460, 300, 460}},
                         say);
}

LessonDrawing house_section(const Translator& say) {
    Sketch sketch(720, 640, say("A house with a crawl space and a garage, cut through"));
    sketch.shape("0,560 720,560 720,640 0,640", earth);
    // Roof over everything, with siding in the gable and a vent pipe.
    sketch.shape("40,216 300,70 700,216 680,226 300,88 60,226", tile);
    // Crawl space side: brick on a stem wall, floor on joists.
    sketch.box(96, 470, 34, 120, concrete);
    sketch.box(70, 230, 22, 270, brick);
    for (int y = 250; y < 500; y += 20) sketch.line("70," + std::to_string(y) + " 92," + std::to_string(y), "#fff", "1.5");
    sketch.box(98, 230, 28, 240, wood);
    sketch.box(98, 456, 340, 14, wood);
    sketch.box(98, 470, 340, 26, "#f0e2c8");
    sketch.box(104, 512, 18, 26, "#fff");
    sketch.line("104,525 122,525", ink, "24", "2 3");
    sketch.box(98, 218, 580, 12, board);
    // Wall between house and garage, garage slab, garage door, siding.
    sketch.box(420, 230, 28, 360, wood);
    sketch.box(412, 230, 8, 226, board);
    sketch.box(448, 230, 8, 320, board);
    sketch.box(448, 550, 252, 20, concrete);
    sketch.box(652, 250, 12, 286, board);
    sketch.line("658,536 658,548", metal, "4");
    for (int y = 96; y < 214; y += 18) {
        const int reach = (y - 76) * 2;
        sketch.line(
            std::to_string(300 - reach) + ',' + std::to_string(y) + ' ' + std::to_string(300 + reach) + ',' + std::to_string(y),
            "#c9cdd1", "2");
    }
    // Register in the ceiling, vent pipe, exhaust duct, combustion air into the closet of the heater.
    sketch.box(200, 196, 70, 20, metal);
    sketch.box(212, 216, 46, 16, "#fff");
    sketch.line("236,196 236,160 300,160", metal, "10");
    sketch.box(348, 40, 14, 416, "#eceff1");
    sketch.box(70, 300, 120, 22, metal);
    sketch.line("62,296 50,330", metal, "6");
    sketch.box(560, 380, 60, 170, "#eceff1");
    sketch.line("664,300 700,300", ink, "18", "3 4");
    sketch.word(580, 470, say("heater"));
    sketch.word(220, 380, say("room"));
    sketch.word(190, 540, say("crawl space"));
    sketch.word(480, 340, say("garage"));
    sketch.word(420, 190, say("attic"));
    sketch.arrow("30,540 90,526 160,520 300,500", "318,496 298,492 302,508", animals);
    sketch.arrow("700,556 640,544 500,530", "480,524 502,520 500,538", animals);
    sketch.arrow("82,260 82,470 60,496", "48,508 54,488 68,500", water);
    sketch.arrow("355,64 355,30", "355,12 347,32 363,32", water);
    legend(sketch, 30, 40, say);
    return sketch.finish({{"crawl", 40, 590, 112, 530},
                          {"brick", 30, 380, 76, 400},
                          {"siding", 300, 130, 268, 132},
                          {"register", 160, 270, 226, 224},
                          {"ventpipe", 420, 90, 362, 110},
                          {"exhaust", 160, 350, 120, 312},
                          {"airopening", 694, 270, 682, 298},
                          {"door", 610, 600, 658, 546},
                          {"garage", 500, 400, 434, 420}},
                         say);
}

}  // namespace

std::vector<LessonDrawing> lesson_drawings(const Translator& say) { return {wall_section(say), house_section(say)}; }

}  // namespace seamward
