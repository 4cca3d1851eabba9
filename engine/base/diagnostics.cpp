// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/diagnostics.h"

#include <algorithm>

#include "base/text.h"

namespace seamward {

namespace {

std::string all_lines(const std::vector<Diagnostic>& diagnostics) {
    std::string text;
    for (const Diagnostic& diagnostic : diagnostics) {
        if (!text.empty()) text += '\n';
        text += to_text(diagnostic);
    }
    return text;
}

}  // namespace

std::string to_text(const Diagnostic& diagnostic) {
    std::string text = printable(diagnostic.file);
    if (diagnostic.place.line > 0) {
        text += ':' + std::to_string(diagnostic.place.line) + ':' + std::to_string(diagnostic.place.column);
    }
    text += ": error: " + printable(diagnostic.what);
    if (!diagnostic.mend.empty()) text += "; " + printable(diagnostic.mend);
    return text;
}

BadInput::BadInput(std::vector<Diagnostic> diagnostics)
    : std::runtime_error(all_lines(diagnostics)), diagnostics_(std::move(diagnostics)) {}

void Diagnostics::add(Place place, std::string what, std::string mend) {
    if (list_.size() >= most_listed) {
        ++unlisted_;
        return;
    }
    list_.push_back({file_, place, std::move(what), std::move(mend)});
}

void Diagnostics::throw_if_any() {
    if (list_.empty()) return;
    std::stable_sort(list_.begin(), list_.end(), [](const Diagnostic& a, const Diagnostic& b) {
        return std::pair(a.place.line, a.place.column) < std::pair(b.place.line, b.place.column);
    });
    if (unlisted_ > 0) {
        list_.push_back({file_, {}, "and " + std::to_string(unlisted_) + " more faults of this file", "mend these first"});
    }
    throw BadInput(std::move(list_));
}

}  // namespace seamward
