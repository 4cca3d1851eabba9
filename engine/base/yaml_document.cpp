// SPDX-License-Identifier: GPL-3.0-or-later
// The only user of libyaml. Its event parser is iterative and leaves anchors to us, so that neither nesting nor
// aliases can blow up; docs/dependencies.md has the measurements that chose it.
#include <yaml.h>

#include <array>
#include <memory>
#include <utility>

#include "base/document_builder.h"

namespace seamward {

namespace {

Place place_of(const yaml_mark_t& mark) {
    return {static_cast<std::uint32_t>(mark.line + 1), static_cast<std::uint32_t>(mark.column + 1)};
}

std::string_view view(const yaml_char_t* text) {
    return text == nullptr ? std::string_view() : reinterpret_cast<const char*>(text);
}

bool means_null(std::string_view text) {
    return text.empty() || text == "~" || text == "null" || text == "Null" || text == "NULL";
}

/// What usually stands behind a message of the parser, said for people who do not know YAML.
std::string mend_of(std::string_view problem) {
    constexpr std::array<std::pair<std::string_view, std::string_view>, 7> mends{{
        {"tab", "indent with spaces, not tabs"},
        {"cannot start any token", "indent with spaces, not tabs; a value that begins with @, ` or % stands in quotes"},
        {"mapping values are not allowed",
         "a text that holds colons stands in quotes, a dash has a space after it, and the indentation of neighbors is equal"},
        {"found unexpected ':'", "put a space after the colon"},
        {"'-' indicator", "begin each item with a dash and a space, indented like the items around it"},
        {"',' or", "a comma is missing or one of the brackets is not closed just before, or a value needs quotes"},
        {"end of stream", "a closing quote or bracket is missing"},
    }};
    for (const auto& [part, mend] : mends) {
        if (problem.find(part) != std::string_view::npos) return std::string(mend);
    }
    return "check the indentation, colons, brackets and quotes just before this place";
}

class Parser {
public:
    explicit Parser(std::string_view text) : text_(text) {
        if (yaml_parser_initialize(&parser_) == 0) throw std::bad_alloc();
        yaml_parser_set_input_string(&parser_, reinterpret_cast<const unsigned char*>(text.data()), text.size());
    }
    ~Parser() { yaml_parser_delete(&parser_); }
    Parser(const Parser&) = delete;
    Parser& operator=(const Parser&) = delete;

    using Event = std::unique_ptr<yaml_event_t, decltype(&yaml_event_delete)>;

    /// The next event into `storage`; the caller's pointer frees what is in it.
    Event next(yaml_event_t& storage, const DocumentBuilder& builder) {
        if (yaml_parser_parse(&parser_, &storage) == 0) fail(builder);
        return {&storage, &yaml_event_delete};
    }

private:
    [[noreturn]] void fail(const DocumentBuilder& builder) const {
        if (parser_.error == YAML_MEMORY_ERROR) throw std::bad_alloc();
        const std::string problem = parser_.problem != nullptr ? parser_.problem : "malformed";
        if (parser_.error == YAML_READER_ERROR) {
            const bool control = problem.find("control") != std::string::npos;
            builder.fail(place_of_byte(parser_.problem_offset),
                         control ? "the file holds a control character" : "the file is not UTF-8 text (" + problem + ")",
                         control ? "remove it" : "save it as UTF-8");
        }
        std::string what = "YAML syntax: " + problem;
        if (parser_.context != nullptr) {
            what += std::string(" (") + parser_.context + " that begins on line " +
                    std::to_string(parser_.context_mark.line + 1) + ')';
        }
        builder.fail(place_of(parser_.problem_mark), what, mend_of(problem));
    }

    /// The reader decodes ahead of the parser, so that its faults are found again by their byte.
    [[nodiscard]] Place place_of_byte(std::size_t offset) const {
        Place place{1, 1};
        for (const char c : text_.substr(0, offset)) {
            if (c == '\n')
                place = {place.line + 1, 1};
            else if ((static_cast<unsigned char>(c) & 0xC0U) != 0x80U)
                ++place.column;
        }
        return place;
    }

    std::string_view text_;
    yaml_parser_t parser_{};
};

/// Finds bytes by the parser's marks, which count characters and leave a byte order mark out.
class ByteOffsets {
public:
    ByteOffsets(std::string_view text, Spans spans) : kept_(spans == Spans::kept), text_(text) {
        if (!kept_) return;
        constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";
        for (std::size_t i = text.starts_with(byte_order_mark) ? byte_order_mark.size() : 0; i < text.size(); ++i) {
            if ((static_cast<unsigned char>(text[i]) & 0xC0U) != 0x80U) starts_.push_back(i);
        }
    }

    [[nodiscard]] Span span(const yaml_event_t& event) const {
        if (!kept_) return {};
        Span span{at(event.start_mark), at(event.end_mark)};
        if (event.type == YAML_SCALAR_EVENT) {
            const auto& scalar = event.data.scalar;
            span.anchored = scalar.anchor != nullptr || scalar.tag != nullptr;
            // A block of text ends where the next thing begins.
            constexpr std::string_view white = " \t\r\n";
            while (span.end > span.begin && white.find(text_[span.end - 1]) != std::string_view::npos) --span.end;
        } else if (event.type == YAML_SEQUENCE_START_EVENT) {
            const auto& list = event.data.sequence_start;
            span.in_brackets = list.style == YAML_FLOW_SEQUENCE_STYLE;
            span.anchored = list.anchor != nullptr || list.tag != nullptr;
        } else if (event.type == YAML_MAPPING_START_EVENT) {
            const auto& mapping = event.data.mapping_start;
            span.in_brackets = mapping.style == YAML_FLOW_MAPPING_STYLE;
            span.anchored = mapping.anchor != nullptr || mapping.tag != nullptr;
        }
        if (!span.in_brackets && (event.type == YAML_SEQUENCE_START_EVENT || event.type == YAML_MAPPING_START_EVENT))
            span.end = span.begin;
        return span;
    }

    [[nodiscard]] std::size_t end(const yaml_event_t& event) const { return kept_ ? at(event.end_mark) : 0; }

private:
    [[nodiscard]] std::size_t at(const yaml_mark_t& mark) const {
        return mark.index < starts_.size() ? starts_[mark.index] : text_.size();
    }

    bool kept_;
    std::string_view text_;
    std::vector<std::size_t> starts_;
};

}  // namespace

Document parse_yaml(std::string_view text, const std::string& shown_as, Spans spans) {
    DocumentBuilder builder(shown_as, spans);
    Parser parser(text);
    const ByteOffsets offsets(text, spans);
    for (bool done = false; !done;) {
        yaml_event_t event{};
        const Parser::Event owner = parser.next(event, builder);
        const Place place = place_of(event.start_mark);
        builder.stands(offsets.span(event));
        switch (event.type) {
            case YAML_SCALAR_EVENT: {
                const auto& scalar = event.data.scalar;
                const std::string_view value(reinterpret_cast<const char*>(scalar.value), scalar.length);
                const bool plain = scalar.style == YAML_PLAIN_SCALAR_STYLE && view(scalar.tag).empty();
                const auto kind = !plain              ? Document::Kind::quoted
                                  : means_null(value) ? Document::Kind::null
                                                      : Document::Kind::plain;
                builder.scalar(place, value, kind, view(scalar.anchor));
                break;
            }
            case YAML_SEQUENCE_START_EVENT:
                builder.begin(place, Document::Kind::sequence, view(event.data.sequence_start.anchor));
                break;
            case YAML_MAPPING_START_EVENT:
                builder.begin(place, Document::Kind::mapping, view(event.data.mapping_start.anchor));
                break;
            case YAML_SEQUENCE_END_EVENT:
            case YAML_MAPPING_END_EVENT: builder.end(offsets.end(event)); break;
            case YAML_ALIAS_EVENT: builder.alias(place, view(event.data.alias.anchor)); break;
            case YAML_STREAM_END_EVENT: done = true; break;
            default: break;
        }
    }
    return builder.finish();
}

}  // namespace seamward
