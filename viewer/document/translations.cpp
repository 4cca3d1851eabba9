// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/translations.h"

#include <QCoreApplication>
#include <QLibraryInfo>
#include <QLocale>
#include <QPointer>
#include <QTranslator>

#include "catalog/translator.h"

/// Resources of a static library have to be called in by name, outside of any namespace.
static void call_words_in() { Q_INIT_RESOURCE(seamward_words); }

namespace seamward::viewer {

namespace {

struct Spoken {
    QString language = QStringLiteral("en");
    QPointer<QTranslator> plurals, own, of_qt;  ///< of the application object, and gone with it
};

Spoken& state() {
    static Spoken spoken;
    return spoken;
}

QString wanted(Preferences::Language language) {
    if (language == Preferences::Language::english) return QStringLiteral("en");
    if (language == Preferences::Language::spanish) return QStringLiteral("es");
    // The first of the user's languages that is one of ours.
    for (const QString& name : QLocale::system().uiLanguages()) {
        if (name.startsWith("es")) return QStringLiteral("es");
        if (name.startsWith("en")) break;
    }
    return QStringLiteral("en");
}

/// Null when there is no such file.
QTranslator* installed(const QString& name, const QString& folder) {
    auto* translator = new QTranslator(QCoreApplication::instance());
    if (translator->load(name, folder) && QCoreApplication::installTranslator(translator)) return translator;
    delete translator;
    return nullptr;
}

}  // namespace

void speak(Preferences::Language language) {
    call_words_in();
    Spoken& now = state();
    const QString folder = QStringLiteral(":/seamward/words");
    if (now.plurals == nullptr) now.plurals = installed(QStringLiteral("seamward_en.qm"), folder);
    const QString next = wanted(language);
    if (next == now.language) return;
    delete now.own;
    delete now.of_qt;
    now.language = next;
    if (next == "en") return;
    // Qt's own words, those of its dialogs, where the system has them.
    now.of_qt = installed("qtbase_" + next, QLibraryInfo::location(QLibraryInfo::TranslationsPath));
    now.own = installed("seamward_" + next + ".qm", folder);
}

QString spoken() { return state().language; }

QString spoken_text(const Message& message) {
    const Translator say(spoken() == "es" ? Language::spanish : Language::english);
    return QString::fromStdString(say(message));
}

QString catalog_text(const std::string& english) { return spoken_text(as_named(english)); }

}  // namespace seamward::viewer
