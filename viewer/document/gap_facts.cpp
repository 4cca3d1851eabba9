// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/gap_facts.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>
#include <cmath>

#include "base/measure_text.h"
#include "base/quantity.h"
#include "catalog/shipped.h"
#include "document/translations.h"
#include "document/units_text.h"
#include "document/way_text.h"

namespace seamward::viewer {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(survey)
};

/// Whether a text says that length to the last thousandth of a millimeter.
bool says(const std::string& text, double meters) {
    const Parsed<double> read = parse_distance(text);
    return read && std::abs(*read - meters) < 1e-6;
}

QString number(double value) { return QLocale::c().toString(value, 'g', 9); }

QString closed_words(const ClosedGap& closed) {
    const Treatment* treatment = closed.with.empty() ? nullptr : shipped_treatments().find(closed.with);
    const QString with = treatment == nullptr ? QString() : catalog_text(treatment->name);
    if (!closed.holds()) return Words::tr("closed, and open again");
    const auto date = closed.held_since();
    const QString day = date ? QString::fromStdString(date_text(*date)) : QString();
    if (with.isEmpty()) return day.isEmpty() ? Words::tr("closed") : Words::tr("closed on %1").arg(day);
    return day.isEmpty() ? Words::tr("closed: %1", "treatment").arg(with)
                         : Words::tr("closed on %1: %2", "day, treatment").arg(day, with);
}

}  // namespace

GapFacts gap_facts(const Job& job, GapIndex gap) {
    GapFacts facts{job.survey[gap], nullptr, gap.value < job.gaps_of_house};
    if (facts.of_house) facts.feature = job.house.places[gap.value].feature;
    const auto at = std::ranges::find(job.closed, gap, &ClosedGap::gap);
    if (at == job.closed.end()) return facts;
    facts.closed = &*at;
    facts.gap.shape = at->before;
    facts.gap.evidence.plus_minus = at->plus_minus;
    facts.gap.covered.reset();
    return facts;
}

std::vector<GapIndex> gaps_of_feature(const Job& job, const std::string& feature) {
    std::vector<GapIndex> gaps;
    for (std::uint32_t i = 0; i < job.gaps_of_house; ++i) {
        if (!feature.empty() && job.house.places[i].feature == feature) gaps.push_back({i});
    }
    return gaps;
}

void complete_evidence(ChangeGap& edit, const GapFacts& facts) {
    if (!facts.of_house) return;
    if (!edit.how) edit.how = facts.gap.evidence.how;
    const double off = facts.gap.evidence.plus_minus;
    if (!edit.plus_minus) edit.plus_minus = off > 0 ? typed_length(off).toStdString() : "";
}

ChangeGap measured_width(const GapFacts& facts, const std::string& width) {
    ChangeGap edit{.id = facts.gap.id};
    edit.shape = ShapeText{shape_word(facts.gap.shape), width, std::nullopt};
    if (facts.measured()) return edit;
    edit.how = Evidence::How::measured;
    complete_evidence(edit, facts);
    return edit;
}

QString as_sentence(QString text) {
    if (!text.isEmpty()) text[0] = text[0].toUpper();
    return text;
}

QString how_words(Evidence::How how) {
    switch (how) {
        case Evidence::How::measured: return Words::tr("measured");
        case Evidence::How::modeled: return Words::tr("from drawings");
        case Evidence::How::assumed: return Words::tr("assumed");
        default: return Words::tr("not said how");
    }
}

QString known_words(const GapFacts& facts) {
    if (facts.closed != nullptr) return closed_words(*facts.closed);
    const QString how = how_words(facts.gap.evidence.how);
    if (!(facts.gap.evidence.plus_minus > 0)) return how;
    QString length = typed_length(facts.gap.evidence.plus_minus);
    if (length.endsWith(QStringLiteral(" in"))) length = QCoreApplication::translate("lengths", "%1 in").arg(length.chopped(3));
    return Words::tr("%1, give or take %2", "how known, length").arg(how, length);
}

QString sides_words(const Survey& survey, const Gap& gap) {
    return Words::tr("%1 to %2", "two spaces").arg(spoken_name(survey[gap.between[0]]), spoken_name(survey[gap.between[1]]));
}

QString shape_words(const Shape& shape) {
    if (const auto* slot = std::get_if<Slot>(&shape)) return Words::tr("slot, %1 long").arg(distance_words(slot->length));
    if (const auto* ring = std::get_if<Ring>(&shape)) return Words::tr("ring around a pipe of %1").arg(width_words(ring->around));
    return std::holds_alternative<Mesh>(shape) ? Words::tr("screened opening") : Words::tr("round hole");
}

QString typed_length(double meters, bool large) {
    const std::string inches = inches_text(meters), millimeters = millimeters_text(meters);
    if (large && meters >= 1) {
        const double rounded = std::round(meters * 1e3) / 1e3;
        const QString text = number(std::abs(rounded - meters) < 1e-6 ? rounded : meters);
        return text + QStringLiteral(" m");
    }
    const bool in_inches = says(inches, meters), in_millimeters = says(millimeters, meters);
    if (in_inches && (!in_millimeters || lengths_written() == Lengths::inches_first)) return QString::fromStdString(inches);
    if (in_millimeters) return QString::fromStdString(millimeters);
    return number(meters * 1e3) + QStringLiteral(" mm");
}

QString typed_area(double square_meters) { return number(square_meters * 1e4) + QStringLiteral(" cm2"); }

}  // namespace seamward::viewer
