// SPDX-License-Identifier: GPL-3.0-or-later
#include "teach/plain_page.h"

#include "report/html.h"
#include "report/page_assets.h"

namespace seamward {

std::string plain_page(const Translator& say, const std::string& title, const std::string& content) {
    Html html;
    html.markup("<!doctype html>\n");
    html.begin("html", {{"lang", language_code(say.language())}});
    html.begin("head");
    html.single("meta", {{"charset", "utf-8"}});
    // Nothing is loaded from anywhere, and nothing runs.
    html.single("meta", {{"http-equiv", "Content-Security-Policy"},
                         {"content", "default-src 'none'; style-src '" + std::string(page_style().digest) + "' '" +
                                         std::string(letter_style().digest) + "'; base-uri 'none'; form-action 'none'"}});
    html.single("meta", {{"name", "viewport"}, {"content", "width=device-width, initial-scale=1"}});
    html.single("meta", {{"name", "referrer"}, {"content", "no-referrer"}});
    html.element("title", title);
    html.begin("style").markup(page_style().text).end();
    html.begin("style").markup(letter_style().text).end();
    html.end();
    html.begin("body");
    html.element("a", say("Skip to the content"), {{"class", "skip"}, {"href", "#content"}});
    html.begin("header", {{"class", "banner"}}).element("h1", title).end();
    html.begin("main", {{"id", "content"}, {"tabindex", "-1"}}).markup(content).end();
    html.begin("footer");
    html.element("p", say("This is for training. Local code and licensed practice decide what may be closed, and with what."));
    html.end().end().end();
    return html.written();
}

}  // namespace seamward
