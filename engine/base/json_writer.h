// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <memory>
#include <string>
#include <string_view>

namespace seamward {

/// Writes one JSON document piece by piece; punctuation and escapes are taken care of. Numbers are written with
/// as many digits as their double needs. One value a line within arrays of records keeps answers readable.
class JsonWriter {
public:
    JsonWriter();
    ~JsonWriter();
    JsonWriter(const JsonWriter&) = delete;
    JsonWriter& operator=(const JsonWriter&) = delete;

    JsonWriter& begin_object();
    JsonWriter& end_object();
    JsonWriter& begin_array();
    JsonWriter& end_array();
    JsonWriter& key(std::string_view name);
    JsonWriter& value(std::string_view text);
    JsonWriter& value(const char* text) { return value(std::string_view(text)); }
    JsonWriter& value(double number);  ///< must be finite
    JsonWriter& value(std::int64_t number);
    JsonWriter& value(bool truth);
    JsonWriter& null();

    /// The finished document with a line end after it.
    [[nodiscard]] std::string text() const;

private:
    struct Impl;
    std::unique_ptr<Impl> impl_;
};

}  // namespace seamward
