// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <stdexcept>
#include <string>
#include <vector>

namespace seamward {

/// A place in a text file; line and column count from 1, columns in characters. Line 0: the file as a whole.
struct Place {
    std::uint32_t line = 0;
    std::uint32_t column = 0;
};

/// One thing wrong with an input: where, what, and how to mend it.
struct Diagnostic {
    std::string file;
    Place place;
    std::string what;
    std::string mend;  ///< empty when the mending is plain from `what`
};

/// `file:line:column: error: what; mend`
[[nodiscard]] std::string to_text(const Diagnostic& diagnostic);

/// An input that cannot be used. Carries all that was found wrong, in file order; the message lists it.
class BadInput : public std::runtime_error {
public:
    explicit BadInput(std::vector<Diagnostic> diagnostics);
    [[nodiscard]] const std::vector<Diagnostic>& diagnostics() const { return diagnostics_; }

private:
    std::vector<Diagnostic> diagnostics_;
};

/// Collects what is wrong with one file, so that all of it is reported at once.
class Diagnostics {
public:
    /// Beyond this many, faults are counted and no longer listed.
    static constexpr std::size_t most_listed = 10'000;

    explicit Diagnostics(std::string file) : file_(std::move(file)) {}

    void add(Place place, std::string what, std::string mend = "");
    [[nodiscard]] bool empty() const { return list_.empty(); }
    [[nodiscard]] const std::string& file() const { return file_; }

    /// Throws BadInput, sorted by place, when anything was added.
    void throw_if_any();

private:
    std::string file_;
    std::vector<Diagnostic> list_;
    std::size_t unlisted_ = 0;
};

}  // namespace seamward
