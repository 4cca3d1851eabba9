// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/preferences.h"

#include <algorithm>
#include <cstdlib>

namespace seamward::viewer {

namespace {

const QString language_key = QStringLiteral("language");
const QString lengths_key = QStringLiteral("lengths");
const QString text_size_key = QStringLiteral("text_size");
const QString contrast_key = QStringLiteral("contrast");
const QString hints_key = QStringLiteral("hints_seen");

int nearest_text_size(int percent) {
    const auto& all = Preferences::text_sizes;
    return *std::min_element(all.begin(), all.end(), [&](int a, int b) { return std::abs(a - percent) < std::abs(b - percent); });
}

}  // namespace

Preferences::Preferences(QObject* parent)
    : QObject(parent), settings_(QSettings::IniFormat, QSettings::UserScope, "Seamward", "viewer") {}

Preferences::Preferences(const QString& file, QObject* parent) : QObject(parent), settings_(file, QSettings::IniFormat) {}

Preferences::Language Preferences::language() const {
    const QString word = settings_.value(language_key).toString();
    if (word == "en") return Language::english;
    return word == "es" ? Language::spanish : Language::system;
}

Lengths Preferences::lengths() const {
    return settings_.value(lengths_key).toString() == "millimeters" ? Lengths::millimeters : Lengths::inches_first;
}

int Preferences::text_size() const { return nearest_text_size(settings_.value(text_size_key, text_sizes.front()).toInt()); }

bool Preferences::high_contrast() const { return settings_.value(contrast_key).toString() == "high"; }

bool Preferences::hints_seen() const { return settings_.value(hints_key, false).toBool(); }

void Preferences::set_language(Language language) {
    const char* const words[] = {"system", "en", "es"};
    set(language_key, words[static_cast<std::size_t>(language)]);
}

void Preferences::set_lengths(Lengths lengths) { set(lengths_key, lengths == Lengths::millimeters ? "millimeters" : "inches"); }

void Preferences::set_text_size(int percent) { set(text_size_key, nearest_text_size(percent)); }

void Preferences::set_high_contrast(bool high) { set(contrast_key, high ? "high" : "normal"); }

void Preferences::set_hints_seen(bool seen) { set(hints_key, seen); }

void Preferences::set(const QString& key, const QVariant& value) {
    if (settings_.value(key) == value) return;
    settings_.setValue(key, value);
    settings_.sync();
    emit changed();
}

}  // namespace seamward::viewer
