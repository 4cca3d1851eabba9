// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/json_writer.h"

#include <rapidjson/prettywriter.h>
#include <rapidjson/stringbuffer.h>

namespace seamward {

struct JsonWriter::Impl {
    rapidjson::StringBuffer buffer;
    rapidjson::PrettyWriter<rapidjson::StringBuffer> writer{buffer};
};

JsonWriter::JsonWriter() : impl_(std::make_unique<Impl>()) {
    impl_->writer.SetIndent(' ', 2);
    impl_->writer.SetFormatOptions(rapidjson::kFormatSingleLineArray);
}

JsonWriter::~JsonWriter() = default;

JsonWriter& JsonWriter::begin_object() {
    impl_->writer.StartObject();
    return *this;
}

JsonWriter& JsonWriter::end_object() {
    impl_->writer.EndObject();
    return *this;
}

JsonWriter& JsonWriter::begin_array() {
    impl_->writer.StartArray();
    return *this;
}

JsonWriter& JsonWriter::end_array() {
    impl_->writer.EndArray();
    return *this;
}

JsonWriter& JsonWriter::key(std::string_view name) {
    impl_->writer.Key(name.data(), static_cast<rapidjson::SizeType>(name.size()));
    return *this;
}

JsonWriter& JsonWriter::value(std::string_view text) {
    impl_->writer.String(text.data(), static_cast<rapidjson::SizeType>(text.size()));
    return *this;
}

JsonWriter& JsonWriter::value(double number) {
    impl_->writer.Double(number);
    return *this;
}

JsonWriter& JsonWriter::value(std::int64_t number) {
    impl_->writer.Int64(number);
    return *this;
}

JsonWriter& JsonWriter::value(bool truth) {
    impl_->writer.Bool(truth);
    return *this;
}

JsonWriter& JsonWriter::null() {
    impl_->writer.Null();
    return *this;
}

std::string JsonWriter::text() const { return std::string(impl_->buffer.GetString(), impl_->buffer.GetSize()) + '\n'; }

}  // namespace seamward
