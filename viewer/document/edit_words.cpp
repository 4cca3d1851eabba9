// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/edit_words.h"

#include <QCoreApplication>
#include <algorithm>

#include "document/gap_facts.h"
#include "document/translations.h"

namespace seamward::viewer {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(edit)
};

QString name_of(const std::string& id, const Survey& survey) {
    const auto at = std::ranges::find(survey.gaps, id, &Gap::id);
    return at == survey.gaps.end() ? QString::fromStdString(id) : spoken_name(*at);
}

/// Of what it is called only its gaps tell.
QString name_of_feature(const std::string& id, const Job& job) {
    const std::vector<GapIndex> gaps = gaps_of_feature(job, id);
    return gaps.empty() ? QString::fromStdString(id) : spoken_name(job.survey[gaps.front()]);
}

QString change_words(const ChangeGap& edit) {
    // That a width is measured goes with the width.
    const bool evidence = (edit.how || edit.plus_minus) && !(edit.shape && edit.how == Evidence::How::measured);
    const int parts = (edit.shape ? 1 : 0) + (evidence ? 1 : 0) + (edit.name ? 1 : 0) + (edit.note ? 1 : 0) +
                      (edit.photo ? 1 : 0) + (edit.at ? 1 : 0) + (edit.between ? 1 : 0);
    if (parts != 1) return Words::tr("changes of “%1”");
    if (edit.shape) return edit.shape->width && !edit.shape->second ? Words::tr("width of “%1”") : Words::tr("size of “%1”");
    if (edit.how) return Words::tr("how “%1” is known");
    if (edit.plus_minus) return Words::tr("plus or minus of “%1”");
    if (edit.name) return Words::tr("name of “%1”");
    if (edit.note) return Words::tr("note on “%1”");
    if (edit.photo) return Words::tr("photo of “%1”");
    return edit.at ? Words::tr("place of “%1”") : Words::tr("sides of “%1”");
}

}  // namespace

QString edit_words(const Edit& edit, const Job& job) {
    const Survey& survey = job.survey;
    if (const auto* one = std::get_if<ChangeGap>(&edit)) return change_words(*one).arg(name_of(one->id, survey));
    if (const auto* one = std::get_if<AddGap>(&edit)) return Words::tr("new gap “%1”").arg(QString::fromStdString(one->name));
    if (const auto* one = std::get_if<RemoveGap>(&edit)) return Words::tr("removal of “%1”").arg(name_of(one->id, survey));
    if (const auto* one = std::get_if<AddSpace>(&edit)) return Words::tr("new space “%1”").arg(QString::fromStdString(one->name));
    if (const auto* one = std::get_if<CloseGap>(&edit)) return Words::tr("“%1” is closed").arg(name_of(one->id, survey));
    if (const auto* one = std::get_if<OpenGap>(&edit)) return Words::tr("“%1” is open").arg(name_of(one->id, survey));
    if (const auto* one = std::get_if<AddFeature>(&edit))
        return Words::tr("new part “%1”").arg(QString::fromStdString(one->name));
    if (const auto* one = std::get_if<ChangeFeature>(&edit))
        return (one->name ? Words::tr("changes of “%1”") : Words::tr("place of “%1”")).arg(name_of_feature(one->id, job));
    if (const auto* one = std::get_if<RemoveFeature>(&edit))
        return Words::tr("removal of “%1”").arg(name_of_feature(one->id, job));
    return Words::tr("the job file moves");
}

}  // namespace seamward::viewer
