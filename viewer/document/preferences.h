// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QSettings>
#include <array>

#include "document/units_text.h"

namespace seamward::viewer {

/// How its user wants the window: language, lengths, size of the letters, contrast; and which hints were read. Kept from one
/// start to the next in the user's settings. Says that something changed; who wears it applies it.
class Preferences : public QObject {
    Q_OBJECT

public:
    enum class Language : std::uint8_t { system, english, spanish };

    /// Sizes of the letters to choose from, in percent.
    static constexpr std::array text_sizes{100, 125, 150, 175};

    /// Those of the user.
    explicit Preferences(QObject* parent = nullptr);
    /// Those in a file, which need not exist.
    explicit Preferences(const QString& file, QObject* parent = nullptr);

    [[nodiscard]] Language language() const;
    [[nodiscard]] Lengths lengths() const;
    /// One of text_sizes, whatever the settings say.
    [[nodiscard]] int text_size() const;
    [[nodiscard]] bool high_contrast() const;
    [[nodiscard]] bool hints_seen() const;

    void set_language(Language language);
    void set_lengths(Lengths lengths);
    /// The nearest of text_sizes.
    void set_text_size(int percent);
    void set_high_contrast(bool high);
    void set_hints_seen(bool seen);

signals:
    void changed();

private:
    void set(const QString& key, const QVariant& value);

    QSettings settings_;
};

}  // namespace seamward::viewer
