// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <string>
#include <vector>

namespace seamward::test {

/// An XML schema as libxml2 understands it.
class Schema {
public:
    /// One of tests/provisions/bcf-2.1/.
    explicit Schema(const std::string& name);
    /// The text of a schema that may refer to those. Throws std::runtime_error where it is none.
    static Schema from_text(const std::string& text);

    /// What a document has against it; empty: it is valid.
    [[nodiscard]] std::vector<std::string> faults(const std::string& xml) const;

private:
    struct Held;
    explicit Schema(std::shared_ptr<Held> held) : held_(std::move(held)) {}
    std::shared_ptr<Held> held_;
};

}  // namespace seamward::test
