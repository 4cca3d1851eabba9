// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <map>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace seamward {

/// The model's file, and those that it names, as memory. All are opened before the process locks itself in; none after.
class SourceFiles {
public:
    /// Maps the model's file. Throws ReadRefusal when the system does not let it.
    SourceFiles(int model, std::uint64_t most_bytes);

    /// For glTF: finds the files that the text names with "uri" and opens those that lie in the model's folder or in folders
    /// of it. A name with "..", a link on the way, an address of a network, a path from the root: not opened. Pictures are not
    /// needed and left out.
    void open_named(int folder);

    /// Memory of our own: changes do not reach the file.
    [[nodiscard]] std::span<char> model() { return model_; }
    [[nodiscard]] std::string_view text() const { return {model_.data(), model_.size()}; }
    /// One of the files named, by its name in the text or with its %-escapes decoded; nullptr when it is not there.
    [[nodiscard]] const std::string_view* named(const std::string& name) const;
    /// Files that were named and not opened.
    [[nodiscard]] const std::vector<std::string>& refused() const { return refused_; }

private:
    void open_one(int folder, const std::string& uri);

    std::span<char> model_;
    std::uint64_t most_bytes_;
    std::map<std::string, std::string_view> named_;
    std::vector<std::string> refused_;
};

/// `%20` as a space; what is no escape stays.
[[nodiscard]] std::string percent_decoded(std::string_view text);

}  // namespace seamward
