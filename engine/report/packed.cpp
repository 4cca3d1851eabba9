// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/packed.h"

#include <zlib.h>

#include <cstdint>
#include <limits>
#include <new>
#include <stdexcept>

namespace seamward {

std::string gzipped(std::string_view bytes) {
    if (bytes.size() > std::numeric_limits<uInt>::max() / 2) throw std::length_error("too much to pack into a page");
    constexpr int gzip = 16;  // added to the window's bits
    z_stream stream{};
    if (deflateInit2(&stream, Z_BEST_COMPRESSION, Z_DEFLATED, MAX_WBITS + gzip, MAX_MEM_LEVEL, Z_DEFAULT_STRATEGY) != Z_OK)
        throw std::bad_alloc();
    std::string in(bytes), out(deflateBound(&stream, static_cast<uLong>(bytes.size())), '\0');
    stream.next_in = reinterpret_cast<Bytef*>(in.data());
    stream.avail_in = static_cast<uInt>(in.size());
    stream.next_out = reinterpret_cast<Bytef*>(out.data());
    stream.avail_out = static_cast<uInt>(out.size());
    const int ended = deflate(&stream, Z_FINISH);
    out.resize(stream.total_out);
    deflateEnd(&stream);
    if (ended != Z_STREAM_END) throw std::logic_error("zlib needed more room than it said");
    return out;
}

std::string base64(std::string_view bytes) {
    constexpr std::string_view digits = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
    std::string text;
    text.reserve((bytes.size() + 2) / 3 * 4);
    for (std::size_t i = 0; i < bytes.size(); i += 3) {
        std::uint32_t three = 0;
        for (std::size_t k = 0; k < 3; ++k)
            three = three << 8U | (i + k < bytes.size() ? static_cast<unsigned char>(bytes[i + k]) : 0U);
        for (std::size_t k = 0; k < 4; ++k) text += i + k > bytes.size() ? '=' : digits[three >> (18 - 6 * k) & 63U];
    }
    return text;
}

}  // namespace seamward
