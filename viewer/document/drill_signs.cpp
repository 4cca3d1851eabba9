// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/drill_signs.h"

#include <QCoreApplication>

namespace seamward::viewer {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(drill)
};

}  // namespace

QString sign_words(PlaceSign sign) {
    switch (sign) {
        case PlaceSign::told_open: return Words::tr("open");
        case PlaceSign::told_tight: return Words::tr("tight");
        case PlaceSign::right: return Words::tr("right");
        case PlaceSign::partly: return Words::tr("partly right");
        case PlaceSign::missed: return Words::tr("missed");
        case PlaceSign::false_alarm: return Words::tr("false alarm");
        case PlaceSign::harm: return Words::tr("does harm");
        case PlaceSign::nothing: break;
    }
    return {};
}

}  // namespace seamward::viewer
