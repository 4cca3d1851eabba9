// SPDX-License-Identifier: GPL-3.0-or-later
#include "sweep/byte_strings.h"

#include <bit>
#include <stdexcept>

namespace seamward {

ByteWriter& ByteWriter::number(std::uint64_t value) {
    for (int shift = 0; shift < 64; shift += 8) bytes_ += static_cast<char>(value >> shift);
    return *this;
}

ByteWriter& ByteWriter::real(double value) { return number(std::bit_cast<std::uint64_t>(value)); }

ByteWriter& ByteWriter::text(std::string_view value) {
    number(value.size());
    bytes_ += value;
    return *this;
}

std::uint64_t ByteReader::number() {
    if (rest_.size() < 8) throw std::invalid_argument("the bytes end too soon");
    std::uint64_t value = 0;
    for (std::size_t i = 0; i < 8; ++i) value |= std::uint64_t{static_cast<unsigned char>(rest_[i])} << (8 * i);
    rest_.remove_prefix(8);
    return value;
}

std::uint64_t ByteReader::number_below(std::uint64_t limit) {
    const std::uint64_t value = number();
    if (value >= limit) throw std::invalid_argument("a number is out of range");
    return value;
}

std::size_t ByteReader::count() {
    const std::uint64_t value = number();
    if (value > rest_.size()) throw std::invalid_argument("the bytes end too soon");
    return value;
}

double ByteReader::real() { return std::bit_cast<double>(number()); }

std::string ByteReader::text() {
    const std::uint64_t size = number();
    if (size > rest_.size()) throw std::invalid_argument("the bytes end too soon");
    std::string value(rest_.substr(0, size));
    rest_.remove_prefix(size);
    return value;
}

void ByteReader::require_end() const {
    if (!rest_.empty()) throw std::invalid_argument("there are more bytes than a row has");
}

}  // namespace seamward
