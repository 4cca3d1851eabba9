// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>

#include "document/closings_document.h"

namespace seamward::viewer {

/// What the window says of closings, in plain text unless it says HTML; names come from files and are escaped there.

/// "$1,250.00"
[[nodiscard]] QString money_words(Money money);

/// "6 h 27 min"
[[nodiscard]] QString time_words(double minutes);

/// "sealant bead"
[[nodiscard]] QString treatment_words(const std::string& id);

/// "outside, from a ladder, set 3 times": where one stands for that step and those after it.
[[nodiscard]] QString stand_words(const ClosingsPlan& plan, const OfferedClosing& offer);

/// "3/16 in (4.76 mm), up to 13/64 in (5.06 mm), 4 pieces": how wide a gap counts.
[[nodiscard]] QString counted_words(const ClosingsPlan& plan, GapIndex gap);

/// "sealant bead, $7.00, 5 min, as planned"
[[nodiscard]] QString option_words(const OfferedClosing& offer, std::size_t option);

/// What is done at a gap with one of its options: cautions first, steps, material, what else is not allowed and why. HTML.
[[nodiscard]] QString closing_html(const ClosingsPlan& plan, const OfferedClosing& offer, std::size_t option);

/// What the stars of sources mean, see starred().
[[nodiscard]] QString star_words();

/// "shut out", "gets in by 23/64 in (9.03 mm)", "perhaps gets in by ..."
[[nodiscard]] QString outlook_words(const AnimalOutlook& animal);

/// About as long as outlook_words() can be, so that room is kept for it.
[[nodiscard]] QString longest_outlook_words(bool maybe);

/// The way that is left to it, gap by gap, and what of it is ticked and does not hold it.
[[nodiscard]] QString outlook_way_words(const ClosingsPlan& plan, const AnimalOutlook& animal);

/// "from yard by: garage door, sweep under the door; into hall"
[[nodiscard]] QString path_words(const Survey& survey, const EntryPath& path);

/// How wide the widest way is that what is ticked leaves, and what the same would cost at the least.
[[nodiscard]] QString price_words(const ClosingsDocument& closings);

/// About as long as any that price_words() can say of a plan, so that room is kept for it.
[[nodiscard]] QStringList possible_price_words(const ClosingsDocument& closings);

/// What a budget bought, what is left to pay and what stays open.
[[nodiscard]] QString budget_words(const ClosingsDocument& closings, Money budget, const BudgetResult& result);

}  // namespace seamward::viewer
