// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <map>

#include "base/phrases.h"
#include "base/text.h"
#include "catalog/duties.h"
#include "provisions/judge.h"
#include "tool/audit_command.h"

namespace seamward {

namespace {

class AuditTable {
public:
    AuditTable(const Audited& audited, const Console& console) : audited_(audited), audit_(audited.audit), console_(console) {}

    void print() const {
        console_.out << console_.bold("Audit: " + audit_.heading) << '\n';
        print_paragraph("", summary(), console_);
        print_paragraph("", audit_.caution.english(), console_);
        for (const std::string& note : audited_.notes) print_paragraph("note: ", printable(note), console_);
        if (audited_.before) print_changes();
        print_failed();
        print_ways();
        print_unknown();
        print_rest(Verdict::pass, "Passed");
        print_rest(Verdict::not_applicable, "Does not apply");
        if (starred_) print_paragraph("", star_note, console_);
    }

private:
    [[nodiscard]] std::size_t count(Verdict verdict) const {
        return static_cast<std::size_t>(std::count_if(audit_.results.begin(), audit_.results.end(),
                                                      [&](const ProvisionResult& r) { return r.verdict == verdict; }));
    }

    [[nodiscard]] std::string summary() const {
        return counted(audit_.results.size(), "rule", "rules") + ": " + std::to_string(count(Verdict::fail)) + " failed, " +
               std::to_string(count(Verdict::unknown)) + " not known, " + std::to_string(count(Verdict::pass)) + " passed, " +
               std::to_string(count(Verdict::not_applicable)) + (count(Verdict::not_applicable) == 1 ? " does" : " do") +
               " not apply. Ways in: " + (audit_.ways.empty() ? "none found" : std::to_string(audit_.ways.size())) +
               (audit_.more_ways ? " are listed, and there are more." : ".");
    }

    void heading(const std::string& text) const { console_.out << '\n' << console_.bold(text) << '\n'; }

    std::string source(const ProvisionResult& result) const {
        const Provision& provision = result.provision;
        const std::string cited = result.source.english();
        const std::string marked = starred(cited);
        starred_ = starred_ || marked != cited;
        return provision.document + (provision.section == "not known" ? "" : ", " + provision.section) + ", edition " +
               provision.edition + (marked != cited ? "*" : "");
    }

    static std::string due(const Provision& provision) {
        const std::string limit = limit_text(provision).english();
        if (provision.unit == Unit::answer) return ", and should be " + limit;
        return (provision.at_most == std::optional<double>(0) ? ", allowed: " : ", due: ") + limit;
    }

    /// Where a gap leads, for names that stand more than once.
    std::string into(const Checked& one) const {
        if (!one.gap) return {};
        const Survey& survey = audited_.job.survey;
        const auto [first, second] = survey[*one.gap].between;
        const Space& inner = survey[survey[first].kind == SpaceKind::outdoors ? second : first];
        return " (" + printable(inner.label()) + ")";
    }

    void print_failed() const {
        if (count(Verdict::fail) == 0) return;
        heading("Failed");
        for (const ProvisionResult& result : audit_.results) {
            if (result.verdict != Verdict::fail) continue;
            print_paragraph(result.provision.id + ": ", result.provision.text + " (" + source(result) + ")", console_);
            std::size_t unknown = 0;
            std::vector<const Checked*> failed;
            std::map<std::string, int> named;
            for (const Checked& one : result.checked) {
                unknown += one.verdict == Verdict::unknown ? 1 : 0;
                if (one.verdict != Verdict::fail) continue;
                failed.push_back(&one);
                ++named[one.subject.english()];
            }
            if (failed.size() > most_failed) {  // the worst of them
                std::stable_sort(failed.begin(), failed.end(), [&](const Checked* a, const Checked* b) {
                    return past_limit(result.provision, *a->measured) > past_limit(result.provision, *b->measured);
                });
            }
            for (std::size_t i = 0; i < std::min(failed.size(), most_failed); ++i) {
                const Checked& one = *failed[i];
                const std::string subject = one.subject.english();
                print_paragraph("    ",
                                subject + (named[subject] > 1 ? into(one) : "") + ": " +
                                    value_text(result.provision, *one.measured).english() + due(result.provision) +
                                    (one.remark.empty() ? "" : " (" + one.remark.english() + ")"),
                                console_);
            }
            if (failed.size() > most_failed)
                print_paragraph("    ",
                                std::to_string(failed.size() - most_failed) + " more fail; --json and --bcf have them all.",
                                console_);
            if (unknown > 0) print_paragraph("    ", counted(unknown, "more is", "more are") + " not known.", console_);
            print_paragraph("    to put it right: ", result.provision.mend + ".", console_);
        }
    }

    void print_ways() const {
        if (audit_.ways.empty()) return;
        heading("Ways in that are open");
        std::size_t number = 0;
        for (const Finding& finding : audit_.findings) {
            if (finding.rule != way_in) continue;
            ++number;
            if (number > most_ways) break;
            print_paragraph(std::to_string(number) + ". ", finding.title.english() + ". " + finding.text.parts.front().english(),
                            console_);
        }
        if (audit_.ways.size() > most_ways)
            print_paragraph("", std::to_string(audit_.ways.size() - most_ways) + " more; --json and --bcf have them all.",
                            console_);
    }

    void print_unknown() const {
        if (count(Verdict::unknown) == 0) return;
        heading("Not known: nothing here has passed");
        std::map<std::string, std::vector<std::string>> by_reason;
        std::vector<std::string> order;
        for (const ProvisionResult& result : audit_.results) {
            if (result.verdict != Verdict::unknown) continue;
            const std::string why = result.why.english();
            if (by_reason[why].empty()) order.push_back(why);
            by_reason[why].push_back(result.provision.id);
        }
        for (const std::string& why : order)
            print_paragraph("- ", joined(by_reason[why], ", ") + ": " + why + (why.ends_with('?') ? "" : "."), console_);
    }

    void print_rest(Verdict verdict, const std::string& title) const {
        std::vector<std::string> ids;
        for (const ProvisionResult& result : audit_.results) {
            if (result.verdict == verdict) ids.push_back(result.provision.id);
        }
        if (ids.empty()) return;
        heading(title);
        print_paragraph("", joined(ids, ", ") + ".", console_);
    }

    void print_keys(const std::string& lead, const std::vector<std::size_t>& findings, const Audit& of) const {
        std::size_t ways = 0;
        for (const std::size_t i : findings) {
            const Finding& finding = of.findings[i];
            if (finding.rule == way_in && ++ways > most_changed_ways) continue;
            print_paragraph(lead, finding.title.english(), console_);
        }
        if (ways > most_changed_ways)
            print_paragraph(lead, counted(ways - most_changed_ways, "more way in", "more ways in") + "; --json has them all",
                            console_);
    }

    void print_changes() const {
        const AuditChanges& changes = audited_.changes;
        heading("Since " + audited_.before->heading);
        print_paragraph("",
                        std::to_string(changes.fixed.size()) + " fixed, " + std::to_string(changes.appeared.size()) + " new, " +
                            std::to_string(changes.unchanged.size()) + " unchanged, " +
                            std::to_string(changes.unknown_now.size()) + " no longer known, " +
                            std::to_string(changes.unknown_before.size()) + " not known before.",
                        console_);
        print_keys("fixed: ", changes.fixed, *audited_.before);
        print_keys("new: ", changes.appeared, audit_);
        print_keys("no longer known: ", changes.unknown_now, *audited_.before);
        print_keys("not known before: ", changes.unknown_before, audit_);
    }

    static constexpr std::size_t most_ways = 10, most_changed_ways = 4, most_failed = 12;  ///< on a screen

    const Audited& audited_;
    const Audit& audit_;
    const Console& console_;
    mutable bool starred_ = false;
};

}  // namespace

void print_audit_table(const Audited& audited, const Console& console) { AuditTable(audited, console).print(); }

}  // namespace seamward
