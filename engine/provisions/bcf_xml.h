// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "provisions/bcf_topics.h"

namespace seamward {

/// The names that the files of a BCF file have, of the format.
inline constexpr const char* bcf_view_file = "viewpoint.bcfv";
inline constexpr const char* bcf_snapshot_file = "snapshot.png";
inline constexpr const char* bcf_words_file = "extensions.xsd";

/// What all topics of a file share.
struct BcfOrigin {
    std::string author, model, moment;  ///< `model` may be empty; `moment` is a dateTime of XML Schema
};

/// `bcf.version`
[[nodiscard]] std::string bcf_version_xml();
/// `project.bcfp`
[[nodiscard]] std::string bcf_project_xml(const std::string& guid, const std::string& name);
/// `extensions.xsd`: markup.xsd, its words narrowed down to those that the file uses and offers
[[nodiscard]] std::string bcf_words_xml(const BcfWords& words);
/// `markup.bcf`; `index` counts topics from 0
[[nodiscard]] std::string bcf_markup_xml(const BcfTopic& topic, std::size_t index, const BcfOrigin& origin);
/// `viewpoint.bcfv`
[[nodiscard]] std::string bcf_view_xml(const BcfTopic& topic);

}  // namespace seamward
