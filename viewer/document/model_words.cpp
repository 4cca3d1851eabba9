// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/model_words.h"

#include <QCoreApplication>
#include <algorithm>

#include "network/on_ways.h"

namespace seamward::viewer {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(model_words)
};

bool is_shut(const Gap& gap) { return clear_width(gap.shape) == 0 && gap.evidence.how == Evidence::How::modeled; }

}  // namespace

int shut_joints(const Survey& survey) { return static_cast<int>(std::ranges::count_if(survey.gaps, is_shut)); }

QString model_words(const Job& job) {
    if (!job.model) return {};
    const int joints = shut_joints(job.survey);
    const int gaps = static_cast<int>(job.survey.gaps.size()) - joints;
    const QString drawn = gaps == 0 ? Words::tr("This survey was found in a builder's model, which draws no gap at all.")
                                    : Words::tr("This survey was found in a builder's model, which draws %n gap(s).", "", gaps);
    const QString shut =
        joints == 0 ? QString()
                    : ' ' + Words::tr("%n joint(s) between its parts are drawn shut, and nobody has measured them.", "", joints);
    return drawn + shut + ' ' + Words::tr("A house drawn tight need not be tight: look at the joints on site, and measure.");
}

std::vector<bool> only_indoors(const Job& job) {
    const Survey& survey = job.survey;
    std::vector<bool> indoors(survey.gaps.size(), false);
    const bool has_room = std::ranges::count(survey.spaces, SpaceKind::living, &Space::kind) > 0;
    if (!job.model || !has_room) return indoors;
    const Network network = make_network(survey, [](const Gap&) { return true; });
    const std::vector<bool> on_ways = links_on_ways(network, Roles(survey, {}));
    const auto outside = [&](SpaceIndex space) { return survey[space].kind == SpaceKind::outdoors || survey[space].source; };
    for (std::size_t i = 0; i < indoors.size(); ++i) indoors[i] = std::ranges::none_of(survey.gaps[i].between, outside);
    for (std::size_t i = 0; i < on_ways.size(); ++i) {
        if (on_ways[i]) indoors[network.links()[i].gap.value] = false;
    }
    return indoors;
}

}  // namespace seamward::viewer
