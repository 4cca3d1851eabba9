// SPDX-License-Identifier: GPL-3.0-or-later
// What the program that reads 3D files answers, as bytes on a pipe. Both ends are always of one build: no promise to others.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

#include "exchange/model.h"

namespace seamward {

/// A model, or why there is none.
struct ReaderAnswer {
    std::optional<Model> model;
    std::string what;
    std::string mend;
};

/// No text of an answer is longer; the writer cuts.
constexpr std::size_t most_text_bytes = 1000;

/// No model has more parts and rooms, classes that lost something, or notes.
constexpr std::size_t most_model_parts = 1'000'000;

[[nodiscard]] std::string wire_bytes(const ReaderAnswer& answer);

/// The most bytes that an answer of so many triangles can have.
[[nodiscard]] std::size_t most_wire_bytes(std::size_t most_triangles);

/// The answer that the bytes hold. They come from a program that read a file made by strangers, so all is checked: counts
/// against the bytes that are there, indices, numbers (finite, below 10^8 m), `most_triangles` for parts and rooms each.
/// Texts are made printable. Throws std::invalid_argument.
[[nodiscard]] ReaderAnswer answer_from_wire(std::string_view bytes, std::size_t most_triangles);

}  // namespace seamward
