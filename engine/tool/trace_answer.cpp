// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/measure_text.h"
#include "paths/remarks.h"
#include "tool/trace_command.h"

namespace seamward {

void write_paths(const Job& job, const Trace& trace, JsonWriter& json) {
    json.key("paths").begin_array();
    std::int64_t rank = 0;
    for (const RankedPath& ranked : trace.paths) {
        json.begin_object().key("rank").value(++rank);
        json.key("from").value(job.survey[ranked.path.from()].id).key("to").value(job.survey[ranked.path.to()].id);
        json.key("pinch_mm").value(answer_millimeters(ranked.pinch)).key("pinch_gap").value(job.survey[ranked.pinch_gap].id);
        if (ranked.maybe) json.key("maybe").value(true);
        json.key("gaps").begin_array();
        for (const GapIndex gap : ranked.path.gaps) json.value(job.survey[gap].id);
        json.end_array().key("spaces").begin_array();
        for (const SpaceIndex space : ranked.path.spaces) json.value(job.survey[space].id);
        json.end_array().key("open_to").begin_array();
        for (const std::size_t pest : open_to(job.survey, ranked.path, job.pests)) json.value(job.pests[pest].id);
        json.end_array().end_object();
    }
    json.end_array();
}

std::string trace_answer(const Job& job, const TraceSettings& settings, const Trace& trace) {
    JsonWriter json;
    json.begin_object();
    write_paths(job, trace, json);
    json.key("rooms").begin_array();
    const auto rooms_open = rooms_open_to(job.survey, settings.to, trace.rooms, job.pests);
    for (std::size_t i = 0; i < trace.rooms.size(); ++i) {
        const RoomPinch& room = trace.rooms[i];
        json.begin_object().key("space").value(job.survey[room.space].id).key("pinch_mm");
        if (room.pinch)
            json.value(answer_millimeters(*room.pinch));
        else
            json.null();
        if (room.maybe) json.key("maybe").value(true);
        json.key("open_to").begin_array();
        for (const std::size_t pest : rooms_open[i]) json.value(job.pests[pest].id);
        json.end_array().end_object();
    }
    json.end_array().key("notes").begin_array();
    for (const Message& remark : remarks_on(job, settings)) json.value(remark.english());
    if (const auto widths = remark_on_widths(job.survey, trace)) json.value(widths->english());
    json.end_array().end_object();
    return json.text();
}

}  // namespace seamward
