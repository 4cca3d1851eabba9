// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/way_text.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

#include "catalog/shipped.h"
#include "document/translations.h"
#include "document/units_text.h"

namespace seamward::viewer {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(ways)
};

QString words(const std::string& text) { return QString::fromStdString(text); }

QString names_of(const std::vector<Pest>& pests, const std::vector<std::size_t>& which) {
    QStringList names;
    for (const std::size_t pest : which) names << animal_text(pests[pest]);
    return names.join(", ");
}

QString step_html(const Survey& survey, const RankedPath& way, std::size_t step) {
    const Gap& gap = survey[way.path.gaps[step]];
    const bool smallest = way.path.gaps[step] == way.pinch_gap;
    QString size = gap_width_text(gap);
    if (gap.count > 1) size = Words::tr("%1, one of %2", "width, count").arg(size).arg(gap.count);
    if (!gap.at) size = Words::tr("%1, position not given", "width").arg(size);
    if (smallest) size = "<b>" + Words::tr("%1, smallest", "width").arg(size) + "</b>";
    const QString stays = stays_open_text(gap).toHtmlEscaped();
    if (!stays.isEmpty()) size += "<br><b>" + stays + "</b>";
    return "<tr><td align='right' style='padding-right: 8px'><b>" + QString::number(step + 1) + "</b></td><td>" +
           spoken_name(gap).toHtmlEscaped() + "<br>" + size + "</td></tr><tr><td></td><td style='padding: 3px 0px 5px 0px'><i>" +
           Words::tr("into %1").arg(spoken_name(survey[way.path.spaces[step + 1]]).toHtmlEscaped()) + "</i></td></tr>";
}

}  // namespace

QString width_words(double meters) { return length_words(meters); }

QString hand_text(double width) {
    constexpr double same = 5e-6;  // no hand feels five micrometers
    const std::vector<Gauge>& all = shipped_gauges().rows;
    const auto thicker = std::find_if(all.begin(), all.end(), [&](const Gauge& gauge) { return gauge.thickness > width - same; });
    if (thicker == all.end()) return Words::tr("more than %1").arg(catalog_text(all.back().name));
    const QString name = catalog_text(thicker->name);
    if (std::abs(thicker->thickness - width) <= same) return name;
    if (thicker == all.begin()) return Words::tr("thinner than %1").arg(name);
    return Words::tr("between %1 and %2").arg(catalog_text(std::prev(thicker)->name), name);
}

QString animal_text(const Pest& animal) { return catalog_text(animal.name); }

QString gap_width_text(const Gap& gap) {
    const QString width = width_words(clear_width(gap.shape));
    return gap.evidence.how == Evidence::How::assumed ? Words::tr("%1, assumed").arg(width) : width;
}

QString stays_open_text(const Gap& gap) {
    if (!gap.closing.never.empty()) return Words::tr("never close: %1").arg(words(gap.closing.never));
    return gap.must_stay_open() ? Words::tr("stays open: %1").arg(catalog_text(duty_words(gap.duty))) : QString();
}

QString open_to_text(const Job& job, const RankedPath& way) {
    const std::vector<std::size_t> sure = open_to(job.survey, way.path, job.pests);
    std::vector<std::size_t> doubtful = perhaps_open_to(job.survey, way.path, job.pests);
    std::erase_if(doubtful, [&](std::size_t pest) { return std::find(sure.begin(), sure.end(), pest) != sure.end(); });
    const QString these = names_of(job.pests, sure);
    const QString perhaps = names_of(job.pests, doubtful);
    if (sure.empty() && doubtful.empty()) return Words::tr("Open to none of this job's animals.");
    if (doubtful.empty()) return Words::tr("Open to: %1.").arg(these);
    if (sure.empty()) return Words::tr("Open to: perhaps %1, if gaps are as wide as they may be.").arg(perhaps);
    return Words::tr("Open to: %1; perhaps %2, if gaps are as wide as they may be.").arg(these, perhaps);
}

QString room_text(const Survey& survey, const RankedPath& way) { return spoken_name(survey[way.path.to()]); }

QString smallest_gap_text(const Survey& survey, const RankedPath& way) { return spoken_name(survey[way.pinch_gap]); }

QString smallest_gap_place_text(const Survey& survey, const RankedPath& way) {
    const auto at = std::find(way.path.gaps.begin(), way.path.gaps.end(), way.pinch_gap) - way.path.gaps.begin();
    return Words::tr("%1, gap\u00a0%2\u00a0of\u00a0%3").arg(smallest_gap_text(survey, way)).arg(at + 1).arg(way.path.gaps.size());
}

QString row_text(const Survey& survey, const RankedPath& way, int row) {
    const Gap& gap = survey[way.pinch_gap];
    const QString stays = stays_open_text(gap);
    const QString text = Words::tr("Way in %1: into %2, smallest gap %3, %4")
                             .arg(row + 1)
                             .arg(room_text(survey, way), gap_width_text(gap), smallest_gap_text(survey, way));
    return stays.isEmpty() ? text : Words::tr("%1, %2", "a way in, that its gap stays open").arg(text, stays);
}

QString steps_html(const Job& job, const RankedPath& way, int row) {
    const Survey& survey = job.survey;
    QString text = "<p style='margin-top: 0px'><b>" +
                   Words::tr("Way in %1, into %2").arg(row + 1).arg(room_text(survey, way).toHtmlEscaped()) + "</b></p>";
    text += "<p>" +
            Words::tr("Smallest gap: %1. In the hand: %2.")
                .arg(gap_width_text(survey[way.pinch_gap]), hand_text(way.pinch).toHtmlEscaped()) +
            "</p>";
    if (!job.pests.empty()) text += "<p>" + open_to_text(job, way).toHtmlEscaped() + "</p>";
    text += "<table cellspacing='0' cellpadding='0' style='margin-top: 12px'><tr><td></td><td style='padding-bottom: 5px'><i>" +
            Words::tr("from %1").arg(spoken_name(survey[way.path.from()]).toHtmlEscaped()) + "</i></td></tr>";
    for (std::size_t step = 0; step < way.path.gaps.size(); ++step) text += step_html(survey, way, step);
    return text + "</table>";
}

QString remarks_html(const QStringList& remarks) {
    QString text;
    for (const QString& remark : remarks) text += "<p>" + remark.toHtmlEscaped() + ".</p>";
    return remarks.isEmpty() ? text : "<hr><p><b>" + Words::tr("To check in this survey") + "</b></p>" + text;
}

QString gap_text(const Gap& gap) {
    QString text = spoken_name(gap) + '\n';
    QString size = is_shut(gap.shape)
                       ? Words::tr("closed")
                       : Words::tr("%1, %2", "shape, width").arg(catalog_text(shape_word(gap.shape)), gap_width_text(gap));
    if (gap.count > 1) size = Words::tr("%1, one of %2", "width, count").arg(size).arg(gap.count);
    text += size;
    const QString stays = stays_open_text(gap);
    return stays.isEmpty() ? text : text + '\n' + stays;
}

}  // namespace seamward::viewer
