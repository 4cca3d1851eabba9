// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/way_text.h"

#include <QCoreApplication>
#include <algorithm>

#include "base/measure_text.h"
#include "catalog/field_check.h"
#include "catalog/shipped.h"

namespace seamward::viewer {

namespace {

QString tr(const char* text) { return QCoreApplication::translate("ways", text); }

QString words(const std::string& text) { return QString::fromStdString(text); }

QString html(const std::string& text) { return words(text).toHtmlEscaped(); }

QString animals_html(const Job& job, const RankedPath& way) {
    if (job.pests.empty()) return {};
    QStringList names;
    for (const std::size_t pest : open_to(job.survey, way.path, job.pests)) names << html(job.pests[pest].name);
    QString text =
        names.isEmpty() ? tr("Open to none of this job's animals as measured.") : tr("Open to: %1.").arg(names.join(", "));
    if (way.maybe) text += ' ' + tr("Perhaps open to the animal chosen, if a width is off by its plus-minus.");
    return "<p>" + text + "</p>";
}

QString step_html(const Survey& survey, const RankedPath& way, std::size_t step) {
    const Gap& gap = survey[way.path.gaps[step]];
    const bool smallest = way.path.gaps[step] == way.pinch_gap;
    QString size = width_words(clear_width(gap.shape));
    if (gap.count > 1) size += ", " + tr("one of %1").arg(gap.count);
    if (!gap.at) size += ", " + tr("position not given");
    if (smallest) size = "<b>" + size + ", " + tr("smallest") + "</b>";
    return "<tr><td align='right' style='padding-right: 8px'><b>" + QString::number(step + 1) + "</b></td><td>" +
           html(gap.label()) + "<br>" + size + "</td></tr><tr><td></td><td style='padding: 3px 0px 5px 0px'><i>" +
           tr("into %1").arg(html(survey[way.path.spaces[step + 1]].label())) + "</i></td></tr>";
}

}  // namespace

QString width_words(double meters) { return words(width_text(meters)); }

QString room_text(const Survey& survey, const RankedPath& way) { return words(survey[way.path.to()].label()); }

QString smallest_gap_text(const Survey& survey, const RankedPath& way) { return words(survey[way.pinch_gap].label()); }

QString smallest_gap_place_text(const Survey& survey, const RankedPath& way) {
    const auto at = std::find(way.path.gaps.begin(), way.path.gaps.end(), way.pinch_gap) - way.path.gaps.begin();
    return tr("%1, gap\u00a0%2\u00a0of\u00a0%3").arg(smallest_gap_text(survey, way)).arg(at + 1).arg(way.path.gaps.size());
}

QString row_text(const Survey& survey, const RankedPath& way, int row) {
    return tr("Way in %1: into %2, smallest gap %3, %4")
        .arg(row + 1)
        .arg(room_text(survey, way), width_words(way.pinch), smallest_gap_text(survey, way));
}

QString steps_html(const Job& job, const RankedPath& way, int row) {
    const Survey& survey = job.survey;
    QString text = "<p style='margin-top: 0px'><b>" +
                   tr("Way in %1, into %2").arg(row + 1).arg(room_text(survey, way).toHtmlEscaped()) + "</b></p>";
    const std::string at_hand = field_check(way.pinch, shipped_gauges().rows);
    text += "<p>" + tr("Smallest gap: %1. In the hand: %2.").arg(width_words(way.pinch), html(at_hand)) + "</p>" +
            animals_html(job, way);
    text += "<table cellspacing='0' cellpadding='0' style='margin-top: 12px'><tr><td></td><td style='padding-bottom: 5px'><i>" +
            tr("from %1").arg(html(survey[way.path.from()].label())) + "</i></td></tr>";
    for (std::size_t step = 0; step < way.path.gaps.size(); ++step) text += step_html(survey, way, step);
    return text + "</table>";
}

QString gap_text(const Gap& gap) {
    QString text = words(gap.label()) + '\n';
    text += is_shut(gap.shape) ? tr("closed") : QString(shape_word(gap.shape)) + ", " + width_words(clear_width(gap.shape));
    if (gap.count > 1) text += ", " + tr("one of %1").arg(gap.count);
    return text;
}

}  // namespace seamward::viewer
