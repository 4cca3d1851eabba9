// SPDX-License-Identifier: GPL-3.0-or-later
// The only place where RapidJSON reads. Its event parser runs iteratively (20,000 open brackets cost nothing) and
// numbers stay text, so that JSON and YAML files go through the same checks.
#include <rapidjson/error/en.h>
#include <rapidjson/reader.h>

#include "base/document_builder.h"
#include "base/text.h"

namespace seamward {

namespace {

/// Text in memory as RapidJSON reads it, with the place of the token that is being read. Line ends can stand
/// only between tokens, so that they are counted there and nowhere else.
class PlacedStream {
public:
    using Ch = char;

    explicit PlacedStream(std::string_view text)
        : begin_(text.data()), now_(begin_), counted_(begin_), end_(begin_ + text.size()) {}

    [[nodiscard]] Ch Peek() const { return now_ < end_ ? *now_ : '\0'; }
    Ch Take() { return now_ < end_ ? *now_++ : '\0'; }
    [[nodiscard]] std::size_t Tell() const { return static_cast<std::size_t>(now_ - begin_); }
    Ch* PutBegin() { return nullptr; }
    void Put(Ch) {}
    void Flush() {}
    std::size_t PutEnd(Ch*) { return 0; }

    void skip_whitespace() {
        while (now_ < end_ && (*now_ == ' ' || *now_ == '\n' || *now_ == '\r' || *now_ == '\t')) ++now_;
        count_up_to(now_);
    }
    [[nodiscard]] Place token() const { return place_; }
    /// The byte where the token begins that is being read.
    [[nodiscard]] std::size_t token_begin() const { return static_cast<std::size_t>(counted_ - begin_); }
    [[nodiscard]] bool at_end() const { return now_ == end_; }

    /// The place of a byte at or after the last token.
    [[nodiscard]] Place place_of(std::size_t offset) {
        count_up_to(begin_ + offset);
        return place_;
    }

private:
    void count_up_to(const char* here) {
        for (; counted_ < here; ++counted_) {
            if (*counted_ == '\n') {
                ++place_.line;
                place_.column = 1;
            } else if ((static_cast<unsigned char>(*counted_) & 0xC0U) != 0x80U) {
                ++place_.column;
            }
        }
    }

    const char* begin_;
    const char* now_;
    const char* counted_;
    const char* end_;
    Place place_{1, 1};
};

struct Handler {
    DocumentBuilder& builder;
    const PlacedStream& stream;
    std::size_t skipped;  ///< bytes before the text

    void stands(bool in_brackets) const {
        builder.stands({stream.token_begin() + skipped, stream.Tell() + skipped, in_brackets, false});
    }
    bool value(std::string_view text, Document::Kind kind) {
        // RapidJSON checks the bytes of the file, but lets half of a surrogate pair pass.
        if (!is_utf8(text))
            builder.fail(stream.token(), "JSON syntax: half of a surrogate pair", "write both halves, or the letter itself");
        stands(false);
        builder.scalar(stream.token(), text, kind);
        return true;
    }
    bool Null() { return value("null", Document::Kind::null); }
    bool Bool(bool b) { return value(b ? "true" : "false", Document::Kind::plain); }
    bool RawNumber(const char* text, rapidjson::SizeType size, bool) { return value({text, size}, Document::Kind::plain); }
    bool String(const char* text, rapidjson::SizeType size, bool) { return value({text, size}, Document::Kind::quoted); }
    bool Key(const char* text, rapidjson::SizeType size, bool) { return value({text, size}, Document::Kind::quoted); }
    // Numbers come as text; RapidJSON asks for these to exist.
    bool Int(int) { return false; }
    bool Uint(unsigned) { return false; }
    bool Int64(std::int64_t) { return false; }
    bool Uint64(std::uint64_t) { return false; }
    bool Double(double) { return false; }
    bool StartObject() {
        stands(true);
        builder.begin(stream.token(), Document::Kind::mapping);
        return true;
    }
    bool StartArray() {
        stands(true);
        builder.begin(stream.token(), Document::Kind::sequence);
        return true;
    }
    bool EndObject(rapidjson::SizeType) {
        builder.end(stream.Tell() + skipped + 1);  // the bracket is taken after the call
        return true;
    }
    bool EndArray(rapidjson::SizeType) {
        builder.end(stream.Tell() + skipped + 1);  // the bracket is taken after the call
        return true;
    }
};

}  // namespace

}  // namespace seamward

template <>
inline void rapidjson::SkipWhitespace(seamward::PlacedStream& stream) {
    stream.skip_whitespace();
}

namespace seamward {

Document parse_json(std::string_view text, const std::string& shown_as, Spans spans) {
    constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";
    const std::size_t skipped = text.starts_with(byte_order_mark) ? byte_order_mark.size() : 0;
    text.remove_prefix(skipped);
    DocumentBuilder builder(shown_as, spans);
    PlacedStream stream(text);
    Handler handler{builder, stream, skipped};
    rapidjson::Reader reader;
    constexpr unsigned flags =
        rapidjson::kParseIterativeFlag | rapidjson::kParseNumbersAsStringsFlag | rapidjson::kParseValidateEncodingFlag;
    const rapidjson::ParseResult result = reader.Parse<flags>(stream, handler);
    if (result.IsError() && result.Code() != rapidjson::kParseErrorDocumentEmpty) {
        std::string problem = rapidjson::GetParseError_En(result.Code());
        if (problem.ends_with('.')) problem.pop_back();
        builder.fail(stream.place_of(result.Offset()), "JSON syntax: " + problem,
                     "check the commas, quotes and brackets just before this place");
    }
    if (!stream.at_end()) builder.fail(stream.place_of(stream.Tell()), "JSON syntax: a zero byte in the text", "remove it");
    return builder.finish();
}

}  // namespace seamward
