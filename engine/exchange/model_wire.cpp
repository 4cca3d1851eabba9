// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/model_wire.h"

#include <cmath>
#include <cstdint>
#include <cstring>
#include <limits>
#include <stdexcept>
#include <type_traits>

#include "base/text.h"

namespace seamward {

namespace {

constexpr std::uint64_t model_mark = 0x314C444F4D574D53U, refusal_mark = 0x3146455257444D53U;
constexpr double most_meters = 1e8;
/// A triangle of a part with at least one: its corners, and three points of its own at most.
constexpr std::size_t most_triangle_bytes = 3 * sizeof(std::uint32_t) + 3 * sizeof(Point);
constexpr std::size_t slack_bytes = 256U << 20U;  // names and notes

static_assert(std::is_trivially_copyable_v<Point> && sizeof(Point) == 3 * sizeof(double));

class Writer {
public:
    void make_room(std::size_t more) { bytes.reserve(bytes.size() + more); }
    void number(std::uint64_t value) { raw(&value, sizeof value); }
    void text(const std::string& text) {
        std::size_t size = std::min(text.size(), most_text_bytes);
        while (size < text.size() && size > 0 && (static_cast<unsigned char>(text[size]) & 0xC0U) == 0x80U) --size;
        number(size);
        raw(text.data(), size);
    }
    void parts(const std::vector<ModelPart>& parts) {
        number(parts.size());
        for (const ModelPart& part : parts) {
            for (const std::string* each : {&part.id, &part.name, &part.ifc_class, &part.global_id}) text(*each);
            number(part.mesh.points.size());
            number(part.mesh.triangles.size());
            raw(part.mesh.points.data(), part.mesh.points.size() * sizeof(Point));
            raw(part.mesh.triangles.data(), part.mesh.triangles.size() * sizeof part.mesh.triangles[0]);
        }
    }
    std::string bytes;

private:
    void raw(const void* data, std::size_t size) { bytes.append(static_cast<const char*>(data), size); }
};

/// Of what is large in parts.
std::size_t bytes_of(const std::vector<ModelPart>& parts) {
    constexpr std::size_t names = 256;  // about
    std::size_t sum = 0;
    for (const ModelPart& part : parts)
        sum += names + part.mesh.points.size() * sizeof(Point) + part.mesh.triangles.size() * sizeof part.mesh.triangles[0];
    return sum;
}

class Reader {
public:
    Reader(std::string_view bytes, std::size_t most_triangles) : rest_(bytes), most_triangles_(most_triangles) {}

    std::uint64_t number() {
        std::uint64_t value = 0;
        raw(&value, sizeof value);
        return value;
    }
    std::string text() {
        const std::uint64_t size = number();
        require(size <= most_text_bytes && size <= rest_.size());
        std::string text = printable(rest_.substr(0, size));
        rest_.remove_prefix(size);
        return text;
    }
    std::size_t count(std::size_t most) {
        const std::uint64_t count = number();
        require(count <= most && count <= rest_.size());  // each takes a byte at least
        return static_cast<std::size_t>(count);
    }
    std::vector<ModelPart> parts() {
        std::vector<ModelPart> parts(count(most_model_parts));
        std::size_t triangles = 0;
        for (ModelPart& part : parts) {
            for (std::string* each : {&part.id, &part.name, &part.ifc_class, &part.global_id}) *each = text();
            const std::uint64_t point_count = number();
            const std::uint64_t triangle_count = number();
            require(triangle_count > 0 && triangle_count <= most_triangles_ - triangles && point_count <= 3 * triangle_count);
            triangles += triangle_count;
            take(part.mesh.points, point_count);
            take(part.mesh.triangles, triangle_count);
            check(part.mesh);
        }
        return parts;
    }
    void require_end() const { require(rest_.empty()); }

private:
    static void require(bool sound) {
        if (!sound) throw std::invalid_argument("an answer that makes no sense");
    }
    static void check(const TriangleMesh& mesh) {
        for (const Point& point : mesh.points) {
            for (const double at : {point.x, point.y, point.z}) require(std::abs(at) <= most_meters);  // also no NaN
        }
        for (const auto& corners : mesh.triangles) {
            for (const std::uint32_t corner : corners) require(corner < mesh.points.size());
        }
    }
    template <class Item>
    void take(std::vector<Item>& into, std::uint64_t count) {
        require(count <= rest_.size() / sizeof(Item));
        into.resize(count);
        raw(into.data(), count * sizeof(Item));
    }
    void raw(void* data, std::size_t size) {
        require(size <= rest_.size());
        if (size > 0) std::memcpy(data, rest_.data(), size);
        rest_.remove_prefix(size);
    }

    std::string_view rest_;
    std::size_t most_triangles_;
};

}  // namespace

std::string wire_bytes(const ReaderAnswer& answer) {
    Writer writer;
    writer.number(answer.model ? model_mark : refusal_mark);
    if (!answer.model) {
        writer.text(answer.what);
        writer.text(answer.mend);
        return std::move(writer.bytes);
    }
    writer.make_room(bytes_of(answer.model->parts) + bytes_of(answer.model->rooms));
    writer.parts(answer.model->parts);
    writer.parts(answer.model->rooms);
    writer.number(answer.model->lost.size());
    for (const LostProducts& lost : answer.model->lost) {
        writer.text(lost.ifc_class);
        writer.number(lost.in_file);
        writer.number(lost.read);
    }
    writer.number(answer.model->notes.size());
    for (const std::string& note : answer.model->notes) writer.text(note);
    return std::move(writer.bytes);
}

std::size_t most_wire_bytes(std::size_t most_triangles) {
    const std::size_t most = (std::numeric_limits<std::size_t>::max() - slack_bytes) / (2 * most_triangle_bytes);
    return slack_bytes + 2 * most_triangle_bytes * std::min(most_triangles, most);
}

ReaderAnswer answer_from_wire(std::string_view bytes, std::size_t most_triangles) {
    Reader reader(bytes, most_triangles);
    ReaderAnswer answer;
    const std::uint64_t mark = reader.number();
    if (mark == refusal_mark) {
        answer.what = reader.text();
        answer.mend = reader.text();
    } else if (mark == model_mark) {
        Model& model = answer.model.emplace();
        model.parts = reader.parts();
        model.rooms = reader.parts();
        model.lost.resize(reader.count(most_model_parts));
        for (LostProducts& lost : model.lost) {
            lost.ifc_class = reader.text();
            lost.in_file = reader.number();
            lost.read = reader.number();
        }
        model.notes.resize(reader.count(most_model_parts));
        for (std::string& note : model.notes) note = reader.text();
    } else {
        throw std::invalid_argument("not an answer");
    }
    reader.require_end();
    return answer;
}

}  // namespace seamward
