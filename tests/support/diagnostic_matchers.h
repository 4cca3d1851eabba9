// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>

#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "base/diagnostics.h"

namespace seamward::test {

/// The faults that `work` throws as BadInput; none when it throws nothing.
inline std::vector<Diagnostic> faults_of(const std::function<void()>& work) {
    try {
        work();
    } catch (const BadInput& bad) {
        return bad.diagnostics();
    }
    return {};
}

/// The faults that a collection holds, in file order.
inline std::vector<Diagnostic> faults_in(Diagnostics& diagnostics) {
    return faults_of([&] { diagnostics.throw_if_any(); });
}

/// One fault a line, for messages of tests.
inline std::string listing(const std::vector<Diagnostic>& faults) {
    std::string text = faults.empty() ? "(no faults)" : "";
    for (const Diagnostic& fault : faults) text += "\n  " + to_text(fault);
    return text;
}

/// Whether one of the faults stands at that place, says `what` and shows `mend` (both as parts of the text).
inline testing::AssertionResult has_fault(const std::vector<Diagnostic>& faults, Place place, std::string_view what,
                                          std::string_view mend) {
    for (const Diagnostic& fault : faults) {
        if (fault.place.line != place.line || fault.place.column != place.column) continue;
        if (fault.what.find(what) != std::string::npos && fault.mend.find(mend) != std::string::npos)
            return testing::AssertionSuccess();
    }
    return testing::AssertionFailure() << "expected at " << place.line << ':' << place.column << ": \"" << what << "\" with \""
                                       << mend << "\", found:" << listing(faults);
}

/// The same where it is the only fault.
inline testing::AssertionResult only_fault(const std::vector<Diagnostic>& faults, Place place, std::string_view what,
                                           std::string_view mend) {
    if (faults.size() != 1)
        return testing::AssertionFailure() << "expected one fault (" << what << "), found:" << listing(faults);
    return has_fault(faults, place, what, mend);
}

}  // namespace seamward::test
