// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "report/page_writer.h"

namespace seamward {

// Parts of pages for who lives in the house. Each is a section, or nothing where there is nothing to tell.

/// Rooms by their widest way in, and which animals get there.
void rooms_part(PageWriter& page);
/// `ol#ways`: each way in as a sentence, with its smallest gap and what shuts it.
void ways_part(PageWriter& page);
/// What was not measured, and what else to look at before trusting the rest.
void doubts_part(PageWriter& page);

/// What can be ordered, what each option keeps out and what it costs.
void options_part(PageWriter& page);
/// `ol#closings`: the plan's steps.
void closings_part(PageWriter& page);
/// Boxes to tick and lines to sign on.
void approval_part(PageWriter& page);

/// Openings that nothing closes, by reason, and wrong closings to open again.
void stays_open_part(PageWriter& page);
/// Animals that live in the house: none is shut in.
/// Of gaps that the plan leaves as they are: the others' photos stand at their closings.
void photos_part(PageWriter& page);
void animals_inside_part(PageWriter& page);

/// What is to be settled before the work begins.
void before_part(PageWriter& page);
/// What the work does not promise, and what the price does not cover.
void promises_part(PageWriter& page);
/// When to look at closings again.
void upkeep_part(PageWriter& page);
void warranty_part(PageWriter& page);
/// For who lives there.
void cautions_part(PageWriter& page);
/// By a licensed person, when the work is done.
void checks_part(PageWriter& page);
/// Provisions of codes and rules of the trade that the house was held against; nothing where it was not.
void provisions_part(PageWriter& page);
/// What the sizes of animals rest on.
void sources_part(PageWriter& page);

/// "Before: 7/32 in (5.6 mm). Afterwards: shut.": the width of a step's gap, and what is left of it.
[[nodiscard]] Message widths_of(const PageWriter& page, const PlanStep& step);
/// What can hurt somebody at a step, all of it.
void step_cautions(PageWriter& page, const PlanStep& step);
/// `<li id="closing-N" data-gap>` of a step, and its title; the caller ends it.
void begin_closing(PageWriter& page, std::size_t number);

}  // namespace seamward
