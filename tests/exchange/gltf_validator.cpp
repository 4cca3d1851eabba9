// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/exchange/gltf_validator.h"

#include "tests/support/run_program.h"

namespace seamward::test {

Validation validate_glb(const std::vector<std::filesystem::path>& files) {
    constexpr int no_validator = 77;
    std::string command = shell_word(SEAMWARD_VALIDATOR_SOURCE "/check") + ' ' + shell_word(SEAMWARD_VALIDATOR_BUILD);
    for (const std::filesystem::path& file : files) command += ' ' + shell_word(file.string());
    const Ran ran = run_shell(command);
    return {.ran = ran.exit_code != no_validator, .valid = ran.exit_code == 0, .words = ran.out + ran.err};
}

}  // namespace seamward::test
