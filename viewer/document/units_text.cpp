// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/units_text.h"

#include <QCoreApplication>
#include <QLocale>
#include <atomic>

#include "base/measure_text.h"

namespace seamward::viewer {

namespace {

constexpr double least_distance = 0.5;  ///< meters; what is shorter is measured with a tape, not paced off

struct Words {
    Q_DECLARE_TR_FUNCTIONS(lengths)
};

std::atomic<Lengths>& lengths_now() {
    static std::atomic<Lengths> lengths{Lengths::inches_first};
    return lengths;
}

/// The number of "3/64 in", "under 1/64 in", "1.2 mm".
QString number_of(const std::string& text, bool& under) {
    QString number = QString::fromStdString(text);
    under = number.startsWith("under ");
    if (under) number.remove(0, 6);
    return number.left(number.lastIndexOf(' '));
}

QString inches_words(double meters) {
    bool under = false;
    const QString number = number_of(inches_text(meters), under);
    return under ? Words::tr("under %1 in").arg(number) : Words::tr("%1 in").arg(number);
}

QString millimeters_words(double meters) {
    bool under = false;
    const QString number = number_of(millimeters_text(meters), under);
    return under ? Words::tr("under %1 mm").arg(number) : Words::tr("%1 mm").arg(number);
}

}  // namespace

void write_lengths_as(Lengths lengths) { lengths_now() = lengths; }

Lengths lengths_written() { return lengths_now(); }

QString length_words(double meters) {
    if (lengths_written() == Lengths::millimeters) return millimeters_words(meters);
    return Words::tr("%1 (%2)", "inches, millimeters").arg(inches_words(meters), millimeters_words(meters));
}

QString distance_words(double meters) {
    if (meters > 0 && meters < least_distance) return length_words(meters);
    const QString number = QLocale::c().toString(meters, 'g', 6);
    if (lengths_written() == Lengths::millimeters) return Words::tr("%1 m").arg(number);
    return Words::tr("%1 m (%2 ft)").arg(number, QLocale::c().toString(meters / 0.3048, 'f', meters < 10 ? 1 : 0));
}

}  // namespace seamward::viewer
