// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFont>
#include <QLineF>
#include <QPainterPath>
#include <QStringList>
#include <optional>
#include <vector>

#include "catalog/passage.h"
#include "job_file/job.h"

namespace seamward::viewer {

/// Whether an animal gets through a gap: as stated, only where its plus-minus makes it wider, or not.
enum class Fit : std::uint8_t { through, perhaps, kept_out };

struct FitAnimal {
    Pest pest;
    Fit fit = Fit::kept_out;
};

/// A gap, and the animals to be drawn beside it.
struct FitSubject {
    static constexpr std::size_t most_animals = 4;

    Shape shape;
    std::vector<FitAnimal> animals;  ///< most telling first; at most so many
    bool chosen = false;             ///< whether the first of them was asked for

    /// The animal to be drawn inside of the opening: the one asked for, or the largest that gets through; or null.
    [[nodiscard]] const FitAnimal* inside() const;
};

/// The animal asked for, by its position in the job's pests; then in turn the largest of those that get through and the smallest
/// of those that do not.
[[nodiscard]] FitSubject fit_subject(const Job& job, GapIndex gap, std::optional<std::size_t> chosen_animal);

/// "fits", "perhaps", "kept out"
[[nodiscard]] QString fit_words(Fit fit);

/// Where everything of a sketch is drawn, in pixels. One scale for all; what is too large for it is drawn in part.
struct FitLayout {
    /// The opening, or an animal, over its words.
    struct Column {
        QRectF window;      ///< where it is drawn
        QRectF shape;       ///< around all of it, to scale; what is outside of the window is torn off
        QRectF words;       ///< its name, with the sign and the word, or the scale, in the last line
        QStringList lines;  ///< the name

        [[nodiscard]] Qt::Edges torn() const;
    };

    double scale = 0;  ///< pixels a millimeter
    double line = 0;   ///< height of a line of words
    Column opening;  ///< `shape`: a slot as long and as high as it is clear, a hole, the hole around a pipe, one clear square of
                     ///< a mesh
    QRectF pipe;     ///< in the hole; empty where there is none
    QPainterPath lying;           ///< the animal inside of the opening; empty where it is larger than the window
    std::vector<Column> animals;  ///< the first ones of the subject, as many as there is room for
    QLineF bar;                   ///< as long as `bar_words` say; null when nothing has a size
    QString bar_words;
    QRectF bar_box;  ///< around those words
    QRectF note;     ///< for words in place of animals
};

/// `font`: of the words. `size`: of the sketch.
[[nodiscard]] FitLayout fit_layout(const FitSubject& subject, const QSizeF& size, const QFont& font);

}  // namespace seamward::viewer
