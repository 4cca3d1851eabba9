// SPDX-License-Identifier: GPL-3.0-or-later
#include "offscreen/blend_layers.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "layers/palette.h"
#include "layers/rows.h"

namespace seamward::viewer {

namespace {

constexpr std::size_t most_layers = 12;
constexpr float crease = 0.4F;         ///< pixels that a face bends away within a pixel, to count as an edge
constexpr float jump = 16;             ///< pixels of depth from one part to the one behind, to count as an outline
constexpr float doubt = 0.3F;          ///< share of a face's slope by which depths may be off: much where it is seen edge-on
constexpr float crease_share = 0.72F;  ///< strength of an edge inside of an outline
constexpr float lens_behind = 0.3F;    ///< meters behind the way where nothing is faded any more
constexpr float way_shows = 0.55F;     ///< share of the way's color that comes through anything

struct Color {
    float r = 0, g = 0, b = 0;
};

Color mixed(const Color& a, const Color& b, float share) {
    return {a.r + (b.r - a.r) * share, a.g + (b.g - a.g) * share, a.b + (b.b - a.b) * share};
}

Color color_of(const DrawnLayer& layer, std::size_t sample) {
    const unsigned char* const rgba = layer.colors->GetPointer(static_cast<vtkIdType>(4 * sample));
    return {static_cast<float>(rgba[0]), static_cast<float>(rgba[1]), static_cast<float>(rgba[2])};
}

Color color_of(const QColor& color) {
    return {static_cast<float>(color.red()), static_cast<float>(color.green()), static_cast<float>(color.blue())};
}

const Color edge_ink{0x5e, 0x4d, 0x3a};

/// One sample of a layer.
struct Sample {
    float depth = 1;
    Color color;
    float opacity = 0;
};

class Blender {
public:
    Blender(std::span<const BlendLayer> layers, const DrawnLayer& way, const Lens& lens, const Sight& sight, int fine)
        : layers_(layers.first(std::min(layers.size(), most_layers))),
          way_(way),
          lens_(lens),
          sight_(sight),
          fine_(fine),
          width_(sight.width() * fine),
          height_(sight.height() * fine) {
        const double span = sight.far_plane() - sight.near_plane();
        bend_at_far_ = static_cast<float>(sight.pixel(1) / fine / span);
        far_ = static_cast<float>(sight.far_plane());
        span_ = static_cast<float>(span);
    }

    [[nodiscard]] QRgb pixel(int x, int y) const {
        Color sum;
        for (int j = 0; j < fine_; ++j) {
            for (int i = 0; i < fine_; ++i) {
                const Color color = sample(x, y, x * fine_ + i, height_ - 1 - (y * fine_ + j));
                sum = {sum.r + color.r, sum.g + color.g, sum.b + color.b};
            }
        }
        const float share = 1.0F / static_cast<float>(fine_ * fine_);
        const auto level = [&](float value) { return static_cast<int>(std::lround(std::clamp(value * share, 0.0F, 255.0F))); };
        return qRgb(level(sum.r), level(sum.g), level(sum.b));
    }

private:
    /// Color of a sample: column, row from below, of the picture's pixel (x, y).
    [[nodiscard]] Color sample(int x, int y, int column, int row) const {
        const std::size_t pixel = at(x, y, sight_.width());
        const std::size_t here = at(column, row, width_);
        std::array<Sample, most_layers> samples;
        std::size_t count = 0;
        for (const BlendLayer& layer : layers_) {
            if (layer.drawn.empty() || layer.drawn.depth()[here] >= 1) continue;
            const Sample one = seen(layer, pixel, here, column, row);
            std::size_t to = count++;
            for (; to > 0 && samples[to - 1].depth > one.depth; --to) samples[to] = samples[to - 1];
            samples[to] = one;
        }
        const float way_depth = way_.empty() ? 1.0F : way_.depth()[here];
        Color color;
        float left = 1;
        float before_way = way_depth < 1 ? 0.0F : 1.0F;  // what of the way's color was seen
        const auto add = [&](const Color& more, float opacity) {
            color = {color.r + more.r * left * opacity, color.g + more.g * left * opacity, color.b + more.b * left * opacity};
            left *= 1 - opacity;
        };
        for (std::size_t i = 0; i < count && left > 0.002F; ++i) {
            if (before_way == 0 && way_depth < samples[i].depth) {
                before_way = left;
                add(color_of(way_, here), 1);
                break;
            }
            add(samples[i].color, samples[i].opacity);
        }
        if (way_depth < 1 && before_way == 0 && left > 0.002F) {
            before_way = left;
            add(color_of(way_, here), 1);
        }
        add(paper(y), 1);
        if (way_depth < 1 && before_way < way_shows) {
            const float more = (way_shows - before_way) / (1 - before_way);
            color = mixed(color, color_of(way_, here), more);
        }
        return color;
    }

    [[nodiscard]] Sample seen(const BlendLayer& layer, std::size_t pixel, std::size_t here, int column, int row) const {
        Sample one{layer.drawn.depth()[here], color_of(layer.drawn, here), layer.opacity};
        if (!layer.light.empty()) {
            const float light = layer.light[pixel];
            one.color = {one.color.r * light, one.color.g * (0.04F + 0.96F * light), one.color.b * (0.10F + 0.90F * light)};
        }
        const float edge = edge_at(layer.drawn.depth(), here, column, row);
        one.opacity = std::max(one.opacity, layer.edges * edge);
        one.color = mixed(one.color, edge_ink, edge * 0.7F);
        if (!layer.cover.empty()) one.opacity *= layer.cover[pixel];
        if (!lens_.weight.empty() && lens_.weight[pixel] > 0) {
            const auto before = lens_.away[pixel] - static_cast<float>(sight_.away(static_cast<double>(one.depth)));
            const float share = std::clamp((before + lens_behind) / lens_behind, 0.0F, 1.0F);
            one.opacity *= 1 - lens_.weight[pixel] * share * (1 - layer.least);
        }
        return one;
    }

    /// How much a sample lies on an edge or an outline, 0 to 1: there depth is not linear over the picture.
    [[nodiscard]] float edge_at(const float* depths, std::size_t here, int column, int row) const {
        if (column == 0 || row == 0 || column + 1 == width_ || row + 1 == height_) return 0;
        const float depth = depths[here];
        const float left = depths[here - 1];
        const float right = depths[here + 1];
        const float below = depths[here - static_cast<std::size_t>(width_)];
        const float above = depths[here + static_cast<std::size_t>(width_)];
        const float across = left + right - 2 * depth;
        const float upward = below + above - 2 * depth;
        const float bend = std::abs(across) > std::abs(upward) ? across : upward;
        const float unit = bend_at_far_ * (far_ - depth * span_);  // a pixel toward the far plane, in depth
        const float slope = std::max(std::abs(right - left), std::abs(above - below)) / 2;
        const float size = (std::abs(bend) - doubt * slope) / unit;
        if (size > jump) return bend > 0 ? 1.0F : 0.0F;  // what is before it has the outline
        return crease_share * std::clamp((size - crease) / crease, 0.0F, 1.0F);
    }

    [[nodiscard]] Color paper(int y) const {
        const float share = static_cast<float>(y) / static_cast<float>(sight_.height());
        return mixed(color_of(palette::paper_high), color_of(palette::paper_low), share);
    }

    [[nodiscard]] static std::size_t at(int x, int y, int width) {
        return static_cast<std::size_t>(y) * static_cast<std::size_t>(width) + static_cast<std::size_t>(x);
    }

    std::span<const BlendLayer> layers_;
    const DrawnLayer& way_;
    const Lens& lens_;
    const Sight& sight_;
    int fine_, width_, height_;
    float bend_at_far_, far_, span_;
};

}  // namespace

Lens lens_along(std::span<const Point> line, double reach, const Sight& sight) {
    Lens lens;
    const int width = sight.width();
    const int height = sight.height();
    lens.weight.assign(static_cast<std::size_t>(width) * static_cast<std::size_t>(height), 0);
    lens.away.assign(lens.weight.size(), 0);
    std::vector<float> sums(lens.weight.size(), 0);
    const auto add = [&](const Point& at) {
        const auto shown = sight.camera().shown_at(at, width, height);
        if (!shown) return;
        const auto away = static_cast<float>(sight.away(at));
        for (int y = std::max(0, static_cast<int>(shown->y - reach)); y < std::min<double>(height, shown->y + reach); ++y) {
            for (int x = std::max(0, static_cast<int>(shown->x - reach)); x < std::min<double>(width, shown->x + reach); ++x) {
                const double off_x = (x + 0.5 - shown->x) / reach;
                const double off_y = (y + 0.5 - shown->y) / reach;
                const double rest = 1 - off_x * off_x - off_y * off_y;
                if (rest <= 0) continue;
                const auto weight = static_cast<float>(rest * rest);
                const std::size_t pixel =
                    static_cast<std::size_t>(y) * static_cast<std::size_t>(width) + static_cast<std::size_t>(x);
                const float part = weight * weight * weight;  // the nearest part of the way counts by far the most
                lens.weight[pixel] = std::max(lens.weight[pixel], weight);
                lens.away[pixel] += part * away;
                sums[pixel] += part;
            }
        }
    };
    for (std::size_t i = 0; i < line.size(); ++i) {
        add(line[i]);
        if (i + 1 == line.size()) break;
        const Vector step = line[i + 1] - line[i];
        const double pixel = sight.pixel(std::max(sight.away(line[i]), sight.near_plane()));
        const int pieces = std::clamp(static_cast<int>(length(step) / pixel / (reach / 8)), 1, 400);
        for (int piece = 1; piece < pieces; ++piece) add(line[i] + step * (static_cast<double>(piece) / pieces));
    }
    for (std::size_t i = 0; i < sums.size(); ++i) {
        if (sums[i] > 0) lens.away[i] /= sums[i];
    }
    return lens;
}

QImage blended(std::span<const BlendLayer> layers, const DrawnLayer& way, const Lens& lens, const Sight& sight, int fine) {
    const Blender blender(layers, way, lens, sight, fine);
    QImage image(sight.width(), sight.height(), QImage::Format_RGB32);
    uchar* const bits = image.bits();
    const auto stride = image.bytesPerLine();
    for_rows(image.height(), [&](int y) {
        auto* line = reinterpret_cast<QRgb*>(bits + static_cast<std::ptrdiff_t>(y) * stride);
        for (int x = 0; x < image.width(); ++x) line[x] = blender.pixel(x, y);
    });
    return image;
}

}  // namespace seamward::viewer
