// SPDX-License-Identifier: GPL-3.0-or-later
#include "tool/lots_command.h"

#include <charconv>

#include "base/text.h"
#include "tool/wrong_usage.h"

namespace seamward {

namespace {

constexpr std::uint64_t most_lots = 1'000'000;

std::uint64_t number_of(const std::string& option, const std::string& text, std::uint64_t least, std::uint64_t most) {
    std::uint64_t number = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (error != std::errc() || end != text.data() + text.size() || number < least || number > most)
        throw WrongUsage(option + ": " + in_quotes(text) + " is no whole number from " + std::to_string(least) + " to " +
                         std::to_string(most));
    return number;
}

}  // namespace

void run_lots(const LotsRequest& request, const Console& console, const RunContext& context) {
    MadeLots wanted;
    wanted.count = static_cast<std::uint32_t>(number_of("--count", request.count, 1, most_lots));
    wanted.seed = number_of("--seed", request.seed, 0, ~std::uint64_t{0});
    wanted.bad = static_cast<std::uint32_t>(number_of("--bad", request.bad, 0, wanted.count));
    make_lots(wanted, request.folder, context);
    console.out << wanted.count << " made-up " << (wanted.count == 1 ? "lot is" : "lots are") << " in "
                << printable(request.folder);
    if (wanted.bad > 0) console.out << ", " << wanted.bad << " of them faulty";
    console.out << "; their plans are in " << printable((std::filesystem::path(request.folder) / "plans").string()) << '\n';
}

}  // namespace seamward
