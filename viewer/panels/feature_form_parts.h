// SPDX-License-Identifier: GPL-3.0-or-later
// What the form of a feature keeps while it is open.
#pragma once

#include <QLabel>
#include <QString>
#include <string>

#include "document/feature_places.h"
#include "panels/size_field.h"

namespace seamward::viewer {

/// A gap with the width that it shall have: one that the chosen type makes, or one that is there.
struct WidthRow {
    const FeatureGap* row;  ///< null: it is there
    std::string gap;        ///< id of one that is there
    QLabel* label;
    SizeField* field;
};

/// What is there and being changed.
struct PresentFeature {
    std::string id;
    QString name;
    FeatureDescription described;
    bool moved = false;
    bool placed = true;  ///< its place can be told, and changed
};

/// What was asked of the survey and is not read yet.
struct AskedFeature {
    std::string id;
    bool removal = false;
};

}  // namespace seamward::viewer
