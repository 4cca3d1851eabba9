// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/exchange/binary_fbx.h"

#include <functional>
#include <string_view>
#include <utility>
#include <vector>

namespace seamward::test {

namespace {

template <class Number>
void put(std::string& bytes, Number number) {
    bytes.append(reinterpret_cast<const char*>(&number), sizeof number);
}

/// Properties of a node, in the order of the calls.
struct Properties {
    std::string bytes;
    std::uint32_t count = 0;

    Properties& text(std::string_view value) {
        put(begin('S'), static_cast<std::uint32_t>(value.size()));
        bytes += value;
        return *this;
    }
    Properties& word(std::int32_t value) { return put(begin('I'), value), *this; }
    Properties& id(std::int64_t value) { return put(begin('L'), value), *this; }
    Properties& number(double value) { return put(begin('D'), value), *this; }
    template <class Number>
    Properties& list(char kind, const std::vector<Number>& values) {
        put(begin(kind), static_cast<std::uint32_t>(values.size()));
        put(bytes, std::uint32_t{0});  // not compressed
        put(bytes, static_cast<std::uint32_t>(values.size() * sizeof(Number)));
        for (const Number value : values) put(bytes, value);
        return *this;
    }

private:
    std::string& begin(char kind) {
        ++count;
        return bytes += kind;
    }
};

class Writer {
public:
    explicit Writer(std::uint32_t version) : wide_(version >= 7500) {}

    void write(const std::string& name, const Properties& properties, const std::function<void()>& write_children = {}) {
        const std::size_t begin = bytes.size();
        for (const std::size_t word : {std::size_t{0}, std::size_t{properties.count}, properties.bytes.size()}) put_offset(word);
        bytes += static_cast<char>(name.size());
        bytes += name + properties.bytes;
        if (write_children) {
            write_children();
            write_end();
        }
        // Where it ends is known only now.
        std::string whole;
        std::swap(whole, bytes);
        put_offset(whole.size());
        bytes = whole.replace(begin, bytes.size(), bytes);
    }
    void write_end() { bytes.append(wide_ ? 25 : 13, '\0'); }

    std::string bytes;

private:
    void put_offset(std::size_t offset) {
        if (wide_)
            put(bytes, static_cast<std::uint64_t>(offset));
        else
            put(bytes, static_cast<std::uint32_t>(offset));
    }

    bool wide_;
};

Properties setting(std::string_view name, std::string_view type) { return Properties().text(name).text(type).text("").text(""); }

}  // namespace

std::string binary_fbx(const TriangleMesh& mesh, std::uint32_t version) {
    std::vector<double> points;
    for (const Point& point : mesh.points) points.insert(points.end(), {point.x, point.y, point.z});
    std::vector<std::int32_t> corners;
    for (const auto& [a, b, c] : mesh.triangles) {
        for (const std::uint32_t corner : {a, b, ~c}) corners.push_back(static_cast<std::int32_t>(corner));
    }
    const std::string_view kind_of_name("\0\1", 2);  // stands between a name and its kind
    const std::string geometry = "shape" + std::string(kind_of_name) + "Geometry";
    const std::string model = "a wall" + std::string(kind_of_name) + "Model";
    Writer writer(version);
    writer.bytes = std::string("Kaydara FBX Binary  \0\x1a\0", 23);
    put(writer.bytes, version);
    const Properties none;
    writer.write("FBXHeaderExtension", none,
                 [&] { writer.write("FBXVersion", Properties().word(static_cast<std::int32_t>(version))); });
    writer.write("GlobalSettings", none, [&] {
        writer.write("Version", Properties().word(1000));
        writer.write("Properties70", none, [&] {
            writer.write("P", setting("UpAxis", "int").word(2));
            writer.write("P", setting("UnitScaleFactor", "double").number(100));
        });
    });
    writer.write("Objects", none, [&] {
        writer.write("Geometry", Properties().id(10).text(geometry).text("Mesh"), [&] {
            writer.write("Vertices", Properties().list('d', points));
            writer.write("PolygonVertexIndex", Properties().list('i', corners));
        });
        writer.write("Model", Properties().id(20).text(model).text("Mesh"), [&] {
            writer.write("Version", Properties().word(232));
            writer.write("Properties70", none, [&] {
                writer.write("P", setting("Lcl Translation", "Lcl Translation").number(10).number(0).number(0));
            });
        });
    });
    writer.write("Connections", none, [&] {
        writer.write("C", Properties().text("OO").id(20).id(0));
        writer.write("C", Properties().text("OO").id(10).id(20));
    });
    writer.write_end();
    return writer.bytes + std::string(160, '\0');
}

}  // namespace seamward::test
