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

QString names_of(const std::vector<Pest>& pests, const std::vector<std::size_t>& which) {
    QStringList names;
    for (const std::size_t pest : which) names << words(pests[pest].name);
    return names.join(", ");
}

QString step_html(const Survey& survey, const RankedPath& way, std::size_t step) {
    const Gap& gap = survey[way.path.gaps[step]];
    const bool smallest = way.path.gaps[step] == way.pinch_gap;
    QString size = gap_width_text(gap);
    if (gap.count > 1) size += ", " + tr("one of %1").arg(gap.count);
    if (!gap.at) size += ", " + tr("position not given");
    if (smallest) size = "<b>" + size + ", " + tr("smallest") + "</b>";
    const QString stays = stays_open_text(gap).toHtmlEscaped();
    if (!stays.isEmpty()) size += "<br><b>" + stays + "</b>";
    return "<tr><td align='right' style='padding-right: 8px'><b>" + QString::number(step + 1) + "</b></td><td>" +
           html(gap.label()) + "<br>" + size + "</td></tr><tr><td></td><td style='padding: 3px 0px 5px 0px'><i>" +
           tr("into %1").arg(html(survey[way.path.spaces[step + 1]].label())) + "</i></td></tr>";
}

}  // namespace

QString width_words(double meters) { return words(width_text(meters)); }

QString gap_width_text(const Gap& gap) {
    const QString width = width_words(clear_width(gap.shape));
    return gap.evidence.how == Evidence::How::assumed ? tr("%1, assumed").arg(width) : width;
}

QString stays_open_text(const Gap& gap) {
    if (!gap.closing.never.empty()) return tr("never close: %1").arg(words(gap.closing.never));
    return gap.must_stay_open() ? tr("stays open: %1").arg(duty_words(gap.duty)) : QString();
}

QString open_to_text(const Job& job, const RankedPath& way) {
    const std::vector<std::size_t> sure = open_to(job.survey, way.path, job.pests);
    std::vector<std::size_t> doubtful = perhaps_open_to(job.survey, way.path, job.pests);
    std::erase_if(doubtful, [&](std::size_t pest) { return std::find(sure.begin(), sure.end(), pest) != sure.end(); });
    QString text = names_of(job.pests, sure);
    if (!doubtful.empty()) {
        text += (sure.empty() ? QString() : QStringLiteral("; ")) +
                tr("perhaps %1, if widths are larger by their plus-minus").arg(names_of(job.pests, doubtful));
    }
    return text.isEmpty() ? tr("Open to none of this job's animals.") : tr("Open to: %1.").arg(text);
}

QString room_text(const Survey& survey, const RankedPath& way) { return words(survey[way.path.to()].label()); }

QString smallest_gap_text(const Survey& survey, const RankedPath& way) { return words(survey[way.pinch_gap].label()); }

QString smallest_gap_place_text(const Survey& survey, const RankedPath& way) {
    const auto at = std::find(way.path.gaps.begin(), way.path.gaps.end(), way.pinch_gap) - way.path.gaps.begin();
    return tr("%1, gap\u00a0%2\u00a0of\u00a0%3").arg(smallest_gap_text(survey, way)).arg(at + 1).arg(way.path.gaps.size());
}

QString row_text(const Survey& survey, const RankedPath& way, int row) {
    const Gap& gap = survey[way.pinch_gap];
    const QString stays = stays_open_text(gap);
    return tr("Way in %1: into %2, smallest gap %3, %4")
               .arg(row + 1)
               .arg(room_text(survey, way), gap_width_text(gap), smallest_gap_text(survey, way)) +
           (stays.isEmpty() ? QString() : ", " + stays);
}

QString steps_html(const Job& job, const RankedPath& way, int row) {
    const Survey& survey = job.survey;
    QString text = "<p style='margin-top: 0px'><b>" +
                   tr("Way in %1, into %2").arg(row + 1).arg(room_text(survey, way).toHtmlEscaped()) + "</b></p>";
    const std::string at_hand = field_check(way.pinch, shipped_gauges().rows);
    text += "<p>" + tr("Smallest gap: %1. In the hand: %2.").arg(gap_width_text(survey[way.pinch_gap]), html(at_hand)) + "</p>";
    if (!job.pests.empty()) text += "<p>" + open_to_text(job, way).toHtmlEscaped() + "</p>";
    text += "<table cellspacing='0' cellpadding='0' style='margin-top: 12px'><tr><td></td><td style='padding-bottom: 5px'><i>" +
            tr("from %1").arg(html(survey[way.path.from()].label())) + "</i></td></tr>";
    for (std::size_t step = 0; step < way.path.gaps.size(); ++step) text += step_html(survey, way, step);
    return text + "</table>";
}

QString remarks_html(const QStringList& remarks) {
    QString text;
    for (const QString& remark : remarks) text += "<p>" + remark.toHtmlEscaped() + ".</p>";
    return remarks.isEmpty() ? text : "<hr><p><b>" + tr("To check in this survey") + "</b></p>" + text;
}

QString gap_text(const Gap& gap) {
    QString text = words(gap.label()) + '\n';
    text += is_shut(gap.shape) ? tr("closed") : QString(shape_word(gap.shape)) + ", " + gap_width_text(gap);
    if (gap.count > 1) text += ", " + tr("one of %1").arg(gap.count);
    const QString stays = stays_open_text(gap);
    return stays.isEmpty() ? text : text + '\n' + stays;
}

}  // namespace seamward::viewer
