// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "catalog/duties.h"
#include "provisions/judge.h"
#include "report/page_parts.h"

namespace seamward {

namespace {

std::size_t count(const Audit& audit, Verdict verdict) {
    return static_cast<std::size_t>(std::count_if(audit.results.begin(), audit.results.end(),
                                                  [&](const ProvisionResult& result) { return result.verdict == verdict; }));
}

/// `International Residential Code, R703.7.2.1, edition not known*`
Message where_it_stands(const ProvisionResult& result) {
    const Provision& provision = result.provision;
    const Message text =
        message("{}, {}, edition: {}", {as_named(provision.document), as_named(provision.section), as_named(provision.edition)});
    const std::string cited = result.source.english();
    return starred(cited) == cited ? text : message("{}*", {text});
}

void failed(PageWriter& page, const Audit& audit) {
    std::vector<std::vector<Message>> rows;
    for (const ProvisionResult& result : audit.results) {
        if (result.verdict != Verdict::fail) continue;
        std::vector<Message> places;
        for (const Checked& one : result.checked) {
            if (one.verdict == Verdict::fail)
                places.push_back(message("{}: {}", {one.subject, value_text(result.provision, *one.measured)}));
        }
        rows.push_back({result.provision.name, joined_message(places, "; "), limit_text(result.provision), result.provision.mend,
                        where_it_stands(result)});
    }
    if (rows.empty()) return;
    page.heading(3, "Not kept to");
    page.table("Rules that are not kept to", {"Rule", "Where, and what was measured", "Due", "To put it right", "It stands in"},
               rows, "rule-table");
}

void unknown(PageWriter& page, const Audit& audit) {
    std::vector<std::vector<Message>> rows;
    for (const ProvisionResult& result : audit.results) {
        if (result.verdict == Verdict::unknown) rows.push_back({result.provision.name, result.why, where_it_stands(result)});
    }
    if (rows.empty()) return;
    page.heading(3, "Not known");
    page.paragraph("Nothing that is listed here has passed.");
    page.table("Rules of which nothing is known", {"Rule", "What is missing", "It stands in"}, rows, "rule-table");
}

void named(PageWriter& page, const Audit& audit, Verdict verdict, const Message& title) {
    std::vector<Message> names;
    for (const ProvisionResult& result : audit.results) {
        if (result.verdict == verdict) names.emplace_back(result.provision.name);
    }
    if (names.empty()) return;
    page.heading(3, title);
    page.paragraph(message("{}.", {joined_message(names, "; ")}));
}

}  // namespace

void provisions_part(PageWriter& page) {
    if (!page.facts.audit) return;
    const Audit& audit = *page.facts.audit;
    page.begin_section("provisions", "What codes and the trade ask");
    const auto number = [&](Verdict verdict) { return as_it_stands(count(audit, verdict)); };
    page.paragraph(message("{} rules: {} are not kept to, of {} nothing is known, {} are kept to, {} do not apply.",
                           {as_it_stands(audit.results.size()), number(Verdict::fail), number(Verdict::unknown),
                            number(Verdict::pass), number(Verdict::not_applicable)}),
                   "lead");
    page.paragraph(audit.caution);
    failed(page, audit);
    unknown(page, audit);
    named(page, audit, Verdict::pass, "Kept to");
    named(page, audit, Verdict::not_applicable, "Does not apply");
    page.paragraph(star_note, "source");
    page.end_section();
}

}  // namespace seamward
