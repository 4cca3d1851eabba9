// SPDX-License-Identifier: GPL-3.0-or-later
#include "provisions/bcf.h"

#include <stdexcept>

#include "provisions/archive.h"
#include "provisions/bcf_topics.h"
#include "provisions/bcf_xml.h"

namespace seamward {

std::string bcf_bytes(const Audit& audit, const BcfSettings& settings) {
    const int year = static_cast<int>(audit.date.year());
    if (!audit.date.ok() || year < 1 || year > 9999) throw std::invalid_argument("the day of the audit is no day");
    // Noon of Greenwich is on the same day nearly everywhere.
    const BcfOrigin origin{settings.author, settings.model, date_text(audit.date) + "T12:00:00Z"};
    const BcfTopics made = bcf_topics(audit, settings);
    std::vector<ArchiveEntry> entries{{"bcf.version", bcf_version_xml()},
                                      {"project.bcfp", bcf_project_xml(made.project_guid, audit.heading)},
                                      {bcf_words_file, bcf_words_xml(made.words)}};
    for (std::size_t i = 0; i < made.topics.size(); ++i) {
        const BcfTopic& topic = made.topics[i];
        const std::string folder = topic.guid + "/";
        entries.push_back({folder, {}});  // the format asks for an entry of the folder's own
        entries.push_back({folder + "markup.bcf", bcf_markup_xml(topic, i, origin)});
        if (topic.has_view()) entries.push_back({folder + bcf_view_file, bcf_view_xml(topic)});
        if (!topic.snapshot.empty()) entries.push_back({folder + bcf_snapshot_file, topic.snapshot});
    }
    return zip_bytes(entries);
}

}  // namespace seamward
