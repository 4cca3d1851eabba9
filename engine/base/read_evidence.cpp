// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/read_evidence.h"

#include <array>

namespace seamward {

namespace {

constexpr std::array<std::string_view, 2> evidence_keys{"how", "plus_minus"};
constexpr std::array<std::string_view, 3> how_words{"measured", "modeled", "assumed"};
constexpr std::array<std::string_view, 3> closing_keys{"cost", "with", "never"};

}  // namespace

Evidence read_evidence(const Record& record, Diagnostics& diagnostics) {
    Evidence read;
    if (!record.has("evidence")) return read;
    const Record evidence(record["evidence"], evidence_keys, "evidence", diagnostics);
    const std::optional<std::size_t> how = evidence.word("how", how_words);
    if (how) read.how = static_cast<Evidence::How>(*how + 1);  // the first is `unstated`
    read.plus_minus = evidence.length("plus_minus").value_or(0);
    return read;
}

Closing read_closing(const Record& record, Words treatments, Diagnostics& diagnostics) {
    Closing read;
    if (!record.has("closing")) return read;
    const Record closing(record["closing"], closing_keys, "closing", diagnostics);
    read.cost = closing.money("cost");
    read.never = closing.text("never").value_or("");
    if (!closing.usable()) return read;
    if (const auto with = closing.word("with", treatments)) read.with = treatments[*with];
    if (closing.has("with") && !closing.has("cost"))
        closing.report(closing["with"].place(), "with says what a cost is for, and there is no cost",
                       "add cost: $..., or remove it");
    if (closing.has("never")) (void)closing.required_line("never");
    if (closing.has("cost") != closing.has("never")) return read;
    record.report(
        closing.place(),
        "closing holds either a cost or the reason why never, not " + std::string(closing.has("cost") ? "both" : "neither"),
        "write {cost: $8.00} or {never: \"why\"}");
    return read;
}

}  // namespace seamward
