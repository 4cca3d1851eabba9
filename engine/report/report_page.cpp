// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/report_page.h"

#include "base/text.h"
#include "report/page_assets.h"
#include "report/page_data.h"
#include "report/page_writer.h"
#include "report/pages.h"
#include "report/sheet_form.h"

namespace seamward {

namespace {

constexpr std::size_t least_chapters = 3;  ///< that are worth a table of contents

Message title_of(Audience audience) {
    switch (audience) {
        case Audience::homeowner: return "How pests get into this house, and how to keep them out";
        case Audience::crew: return "Work sheet for the crew";
        case Audience::builder: return "Gaps by construction detail";
        case Audience::diy: return "What you can close yourself";
        case Audience::survey: break;
    }
    return "Survey sheet";
}

class Page {
public:
    explicit Page(const ReportFacts& facts)
        : page_(facts),
          audience_(facts.settings.audience),
          paper_(facts.settings.paper == Paper::a4 ? a4_style() : letter_style()),
          script_(audience_ == Audience::survey ? sheet_script() : house_script()) {}

    std::string write() {
        body();  // first: the table of contents and the scripts depend on what stands there
        const std::string& body = page_.html.written();
        const bool has_script = needs_script(body);
        html_.markup("<!doctype html>\n");
        html_.begin("html", {{"lang", language_code(page_.say.language())}});
        head();
        html_.begin("body", {{"class", audience_id(audience_)}});
        html_.element("a", page_.say("Skip to the content"), {{"class", "skip"}, {"href", "#content"}});
        banner();
        contents();
        html_.begin("main", {{"id", "content"}, {"tabindex", "-1"}}).markup(body).end();
        footer();
        if (has_script) {
            html_.begin("script", {{"type", "application/json"}, {"id", "report-data"}})
                .markup(audience_ == Audience::survey ? sheet_data(page_) : page_data(page_))
                .end();
            html_.begin("script").markup(script_.text).end();
        }
        html_.end().end();
        return html_.written();
    }

    [[nodiscard]] const Translator& words() const { return page_.say; }

private:
    /// Texts are escaped, so that such a tag is one of the program's.
    [[nodiscard]] bool needs_script(const std::string& body) const {
        if (page_.facts.settings.printed) return false;
        if (audience_ == Audience::survey) return !page_.facts.job_file.json.empty();
        return body.find("<figure id=\"house\"") != std::string::npos || body.find("<figure id=\"ladder\"") != std::string::npos;
    }

    /// Nothing is loaded from anywhere, and only what this program wrote runs.
    [[nodiscard]] std::string policy() const {
        const auto quoted = [](const PageAsset& asset) { return "'" + std::string(asset.digest) + "'"; };
        return "default-src 'none'; script-src " + quoted(script_) + "; style-src " + quoted(page_style()) + ' ' +
               quoted(paper_) + "; img-src data:; base-uri 'none'; form-action 'none'";
    }

    void head() {
        html_.begin("head");
        html_.single("meta", {{"charset", "utf-8"}});
        html_.single("meta", {{"http-equiv", "Content-Security-Policy"}, {"content", policy()}});
        html_.single("meta", {{"name", "viewport"}, {"content", "width=device-width, initial-scale=1"}});
        html_.single("meta", {{"name", "referrer"}, {"content", "no-referrer"}});
        html_.element("title", page_.say(title_of(audience_)) + ": " + page_.facts.heading);
        html_.begin("style").markup(page_style().text).end();
        html_.begin("style").markup(paper_.text).end();
        html_.end();
    }

    void row(const Message& term, const Message& text) {
        html_.begin("div");
        html_.element("dt", page_.say(term)).element("dd", page_.say(text));
        html_.end();
    }

    /// A day as the job has it, or whatever stands there.
    [[nodiscard]] Message surveyed() const {
        const Parsed<Date> day = parse_date(page_.job().surveyed);
        return day ? page_.date_part(*day) : as_it_stands(page_.job().surveyed);
    }

    void banner() {
        const Job& job = page_.job();
        html_.begin("header", {{"class", "banner"}});
        html_.element("p", page_.facts.heading, {{"class", "job"}});
        html_.element("h1", page_.say(title_of(audience_)));
        html_.begin("dl");
        if (!job.address.empty()) row("Address", as_it_stands(job.address));
        if (!job.surveyed.empty()) row("Surveyed", surveyed());
        if (!job.surveyor.empty()) row("Surveyed by", as_it_stands(job.surveyor));
        row("Day of this page", page_.date_part(page_.facts.settings.planning.date));
        html_.end().end();
    }

    void contents() {
        if (page_.contents().size() < least_chapters) return;
        html_.begin("nav", {{"class", "contents"}, {"aria-label", page_.say("What stands here")}});
        html_.begin("details");
        html_.element("summary", page_.say("What stands here"));
        html_.begin("ol");
        for (const PageWriter::Chapter& chapter : page_.contents()) {
            html_.begin("li");
            html_.element("a", page_.say(chapter.title), {{"href", '#' + chapter.id}});
            html_.end();
        }
        html_.end().end().end();
    }

    void footer() {
        html_.begin("footer");
        html_.element("p", page_.say("This is for planning. Local code and licensed practice decide what may be closed, and with "
                                     "what. Never close what a house "
                                     "needs open, and never shut an animal in."));
        html_.end();
    }

    void body() {
        switch (audience_) {
            case Audience::homeowner: homeowner_page(page_); break;
            case Audience::crew: crew_page(page_); break;
            case Audience::builder: builder_page(page_); break;
            case Audience::diy: diy_page(page_); break;
            case Audience::survey: survey_sheet(page_); break;
        }
    }

    PageWriter page_;
    Html html_;
    Audience audience_;
    PageAsset paper_, script_;
};

}  // namespace

std::string report_page(const ReportFacts& facts, std::set<std::string, std::less<>>* missing) {
    Page page(facts);
    std::string written = page.write();
    if (missing != nullptr) missing->insert(page.words().missing().begin(), page.words().missing().end());
    return written;
}

}  // namespace seamward
