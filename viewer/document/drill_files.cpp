// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/drill_files.h"

#include <QFile>
#include <QRegularExpression>
#include <exception>

#include "base/document.h"
#include "document/translations.h"

namespace seamward::viewer {

namespace {

constexpr qint64 beginning = 16'384;       ///< bytes: more comment than any file begins with
constexpr qint64 most_of_drill = 262'144;  ///< bytes of a drill that a list reads

QByteArray first_bytes(const QString& path, qint64 most) {
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.read(most) : QByteArray();
}

Spoken spoken_of(const Node& node) {
    Spoken text;
    if (!node.is_mapping()) return text;
    node.for_each_pair([&](const Node& key, const Node& value) {
        if (key.text() == "en") text.english = value.text();
        if (key.text() == "es") text.spanish = value.text();
    });
    return text;
}

}  // namespace

bool is_drill_file(const QString& path) {
    // Comments, the mark of a document and the brace of JSON may stand before the first key.
    static const QRegularExpression first_key(
        QStringLiteral("\\A\\x{feff}?(?:[ \\t]*(?:#[^\\n]*)?\\r?\\n|---[ "
                       "\\t]*\\r?\\n|%[^\\n]*\\n)*\\s*\\{?\\s*[\"']?seamward-drill[\"']?\\s*:"));
    return first_key.match(QString::fromUtf8(first_bytes(path, beginning))).hasMatch();
}

std::optional<DrillHead> drill_head(const QString& path) {
    if (!is_drill_file(path)) return std::nullopt;
    const QByteArray bytes = first_bytes(path, most_of_drill);
    try {
        const std::string_view text(bytes.constData(), static_cast<std::size_t>(bytes.size()));
        const std::string name = path.toStdString();
        const Document document = path.endsWith(".json", Qt::CaseInsensitive) ? parse_json(text, name) : parse_yaml(text, name);
        DrillHead head;
        if (!document.root().is_mapping()) return std::nullopt;
        document.root().for_each_pair([&](const Node& key, const Node& value) {
            if (key.text() == "title") head.title = spoken_of(value);
            if (key.text() == "difficulty") head.difficulty = spoken_text(Message(std::string(value.text())));
        });
        if (head.title.english.empty()) return std::nullopt;
        if (head.title.spanish.empty()) head.title.spanish = head.title.english;
        return head;
    } catch (const std::exception&) {
        return std::nullopt;  // opening it tells what is wrong
    }
}

}  // namespace seamward::viewer
