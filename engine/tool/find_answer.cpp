// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>

#include "base/json_writer.h"
#include "base/measure_text.h"
#include "base/text.h"
#include "job_file/found_survey.h"
#include "paths/remarks.h"
#include "tool/find_command.h"
#include "tool/trace_command.h"

namespace seamward {

namespace {

constexpr std::array<const char*, 5> kind_words{"outdoors", "cavity", "attached", "living", "harborage"};

class FindAnswer {
public:
    explicit FindAnswer(const FindOutcome& finding) : finding_(finding), found_(finding.found) {}

    std::string text() {
        json_.begin_object();
        write_list("spaces", found_.spaces, [&](const FoundSpace& space) { write(space); });
        write_list("gaps", found_.gaps, [&](const FoundGap& gap) { write(gap); });
        write_list("joints", found_.joints, [&](const FoundJoint& joint) { write(joint); });
        write_list("pockets", found_.pockets, [&](const FoundPocket& pocket) { write(pocket); });
        write_paths(finding_.job, finding_.trace, json_);
        write_list("parts", found_.parts, [&](const FoundPart& part) { write(part); });
        json_.key("size_m").begin_array();
        for (const double side : {found_.size.x, found_.size.y, found_.size.z}) json_.value(to_nanometers(side));
        json_.end_array();
        write_list("lost", finding_.lost, [&](const LostProducts& lost) { write(lost); });
        json_.key("notes").begin_array();
        for (const std::string& note : finding_.notes) json_.value(printable(note));
        for (const Message& remark : remarks_on(finding_.job, {})) json_.value(remark.english());
        json_.end_array().end_object();
        return json_.text();
    }

private:
    template <class Things, class Write>
    void write_list(std::string_view key, const Things& things, const Write& write_one) {
        json_.key(key).begin_array();
        for (const auto& thing : things) {
            json_.begin_object();
            write_one(thing);
            json_.end_object();
        }
        json_.end_array();
    }

    void write_count(std::string_view key, std::size_t count) { json_.key(key).value(static_cast<std::int64_t>(count)); }

    void write_text(std::string_view key, const std::string& text) {
        json_.key(key);
        if (text.empty())
            json_.null();
        else
            json_.value(printable(text));
    }

    void write(const Point& point) {
        json_.begin_array();
        for (const double value : {point.x, point.y, point.z}) json_.value(to_nanometers(value));
        json_.end_array();
    }

    void write(const FoundSpace& space) {
        json_.key("id").value(space.id).key("kind").value(kind_words.at(static_cast<std::size_t>(space.kind)));
        json_.key("volume_m3");
        if (space.volume)
            json_.value(std::round(*space.volume * 1e9) / 1e9);
        else
            json_.null();
        json_.key("at");
        write(space.at);
        if (space.labels.empty()) return;
        json_.key("labels").begin_array();
        for (const std::string& label : space.labels) json_.value(one_line(label));
        json_.end_array();
    }

    void write_between(const std::array<std::size_t, 2>& between) {
        json_.key("between").begin_array();
        for (const std::size_t space : between) json_.value(found_.spaces[space].id);
        json_.end_array();
    }

    void write_parts(const std::array<std::size_t, 2>& parts) {
        json_.key("parts").begin_array();
        for (const std::size_t part : parts) json_.value(found_.parts[part].id);
        json_.end_array();
    }

    void write_points(std::string_view key, const std::vector<Point>& points) {
        json_.key(key).begin_array();
        for (const Point& point : points) write(point);
        json_.end_array();
    }

    void write(const FoundJoint& joint) {
        json_.key("id").value(joint.id).key("name").value(one_line(joint.name));
        write_between(joint.between);
        json_.key("length_m").value(to_nanometers(joint.length)).key("depth_mm").value(answer_millimeters(joint.depth));
        json_.key("at");
        write(joint.at);
        write_parts(joint.parts);
        write_points("through", joint.through);
        write_points("along", joint.along);
    }

    void write(const FoundPocket& pocket) {
        json_.key("id").value(pocket.id).key("space");
        if (pocket.space)
            json_.value(found_.spaces[*pocket.space].id);
        else
            json_.null();
        json_.key("width_mm").value(answer_millimeters(pocket.width)).key("depth_mm");
        if (pocket.space)
            json_.value(answer_millimeters(pocket.depth));
        else
            json_.null();
        json_.key("volume_m3").value(std::round(pocket.volume * 1e9) / 1e9).key("at");
        write(pocket.at);
        write_parts(pocket.parts);
    }

    void write(const FoundGap& gap) {
        json_.key("id").value(gap.id).key("name").value(one_line(gap.name));
        write_between(gap.between);
        json_.key("shape").value(shape_word(gap.shape)).key("width_mm").value(answer_millimeters(gap.width));
        json_.key("width_bounds_mm").begin_array();
        for (const double bound : {gap.width, gap.at_most}) json_.value(answer_millimeters(bound));
        json_.end_array().key("length_m").value(to_nanometers(gap.length));
        json_.key("depth_mm").value(answer_millimeters(gap.depth));
        if (gap.openings > 1) write_count("openings", gap.openings);
        json_.key("at");
        write(gap.at);
        write_parts(gap.parts);
        write_points("through", gap.through);
    }

    void write(const FoundPart& part) {
        json_.key("id").value(part.id);
        write_text("name", part.name);
        write_text("class", part.ifc_class);
        write_text("global_id", part.global_id);
        const PartFaults& faults = part.faults;
        json_.key("closed").value(faults.closed).key("open_edges_m").value(to_nanometers(faults.open_edges));
        write_count("crowded_edges", faults.crowded_edges);
        write_count("degenerate", faults.degenerate);
        write_count("doubled", faults.doubled);
        write_count("flipped", faults.flipped);
        json_.key("inside_out").value(faults.inside_out);
        write_count("shells", faults.shells);
        if (part.same_as) json_.key("same_as").value(found_.parts[*part.same_as].id);
    }

    void write(const LostProducts& lost) {
        json_.key("class").value(printable(lost.ifc_class));
        write_count("in_file", lost.in_file);
        write_count("read", lost.read);
    }

    const FindOutcome& finding_;
    const Found& found_;
    JsonWriter json_;
};

}  // namespace

std::string find_answer(const FindOutcome& finding) { return FindAnswer(finding).text(); }

}  // namespace seamward
