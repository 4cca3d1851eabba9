// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <stdexcept>
#include <string>
#include <utility>

namespace seamward {

/// Thrown within seamward-reader: why a file cannot be used, and how to mend it. It becomes the answer.
class ReadRefusal : public std::runtime_error {
public:
    explicit ReadRefusal(const std::string& what, std::string mend) : std::runtime_error(what), mend_(std::move(mend)) {}
    [[nodiscard]] const std::string& mend() const { return mend_; }

private:
    std::string mend_;
};

}  // namespace seamward
