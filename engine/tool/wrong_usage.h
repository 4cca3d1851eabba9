// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <stdexcept>

namespace seamward {

/// What was asked for on the command line cannot be done: exit code 2.
class WrongUsage : public std::runtime_error {
public:
    using std::runtime_error::runtime_error;
};

}  // namespace seamward
