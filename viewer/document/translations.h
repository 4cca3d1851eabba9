// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <string>

#include "base/message.h"
#include "document/preferences.h"

namespace seamward::viewer {

/// Makes the program speak that language from now on: all windows get QEvent::LanguageChange. English is what the sources say,
/// with its plurals. Of the window's thread; an application object must be there.
void speak(Preferences::Language language);

/// "en" or "es": what is spoken now.
[[nodiscard]] QString spoken();

/// What the engine says (a reason, a caution, a remark), in the language spoken.
[[nodiscard]] QString spoken_text(const Message& message);

/// The name of a gap or a space in the language spoken, as far as the program made it; one that the job gives stays as it is.
template <class Named>
[[nodiscard]] QString spoken_name(const Named& named) {
    return spoken_text(named.called());
}

/// A text of the shipped tables (the name of an animal, a duty, a treatment) in the language spoken; the English itself where
/// there is no translation, as for names that stand in job files.
[[nodiscard]] QString catalog_text(const std::string& english);

}  // namespace seamward::viewer
