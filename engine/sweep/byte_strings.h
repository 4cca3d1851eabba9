// SPDX-License-Identifier: GPL-3.0-or-later
// Values as bytes between processes of one build.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

namespace seamward {

class ByteWriter {
public:
    ByteWriter& number(std::uint64_t value);
    ByteWriter& real(double value);
    ByteWriter& text(std::string_view value);
    [[nodiscard]] const std::string& bytes() const { return bytes_; }

private:
    std::string bytes_;
};

/// Reads what a ByteWriter wrote, in the same order. Throws std::invalid_argument when that is not what is there.
class ByteReader {
public:
    explicit ByteReader(std::string_view bytes) : rest_(bytes) {}
    [[nodiscard]] std::uint64_t number();
    [[nodiscard]] std::uint64_t number_below(std::uint64_t limit);
    /// How many things follow; never more than there are bytes.
    [[nodiscard]] std::size_t count();
    [[nodiscard]] double real();
    [[nodiscard]] std::string text();
    [[nodiscard]] bool at_end() const { return rest_.empty(); }
    void require_end() const;

private:
    std::string_view rest_;
};

}  // namespace seamward
