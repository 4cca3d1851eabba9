// SPDX-License-Identifier: GPL-3.0-or-later
// The .ts files against the sources: every text is there and translated, and fits what it translates.
#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QXmlStreamReader>
#include <map>
#include <tuple>

namespace seamward::viewer::test {
namespace {

struct Message {
    bool numerus = false;
    QString type;
    QStringList translations;
};
using Key = std::tuple<QString, QString, QString>;  // context, source, comment
using Messages = std::map<Key, Message>;

const QString folder = QStringLiteral(SEAMWARD_SOURCE_FOLDER "/viewer/translations/");

Messages read(const QString& path) {
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
    QXmlStreamReader xml(&file);
    Messages all;
    QString context;
    QString source;
    QString comment;
    Message message;
    while (!xml.atEnd()) {
        xml.readNext();
        const auto name = xml.name();
        if (xml.isEndElement() && name == "message") all[{context, source, comment}] = message;
        if (!xml.isStartElement()) continue;
        if (name == "name") context = xml.readElementText();
        if (name == "message") {
            message = {xml.attributes().value("numerus") == "yes", {}, {}};
            source.clear();
            comment.clear();
        }
        if (name == "source") source = xml.readElementText();
        if (name == "comment") comment = xml.readElementText();
        if (name == "translation") {
            message.type = xml.attributes().value("type").toString();
            if (!message.numerus) message.translations << xml.readElementText();
        }
        if (name == "numerusform") message.translations << xml.readElementText();
    }
    EXPECT_FALSE(xml.hasError()) << path.toStdString() << ": " << xml.errorString().toStdString();
    return all;
}

std::string shown(const Key& key) { return (std::get<0>(key) + ": " + std::get<1>(key)).toStdString(); }

QStringList places(const QString& text) {
    static const QRegularExpression place("%(?:\\d+|n)");
    QStringList found;
    for (auto at = place.globalMatch(text); at.hasNext();) found << at.next().captured();
    found.sort();
    found.removeDuplicates();
    return found;
}

int mnemonics(const QString& text) { return QString(text).remove("&&").count(QRegularExpression("&\\S")); }

/// What the sources say now.
class Sources : public testing::Test {
protected:
    void SetUp() override {
        if (!QFileInfo::exists(SEAMWARD_LUPDATE)) GTEST_SKIP() << "lupdate (Debian: qttools5-dev-tools) is not installed";
        for (const char* name : {"en", "es"})
            ASSERT_TRUE(QFile::copy(folder + "seamward_" + name + ".ts", at.filePath(QString(name) + ".ts")));
        QProcess collect;
        collect.start(SEAMWARD_CMAKE,
                      {"-DSOURCES=" SEAMWARD_SOURCE_FOLDER "/viewer", "-DCOPY=" + at.filePath("copy"),
                       "-DLUPDATE=" SEAMWARD_LUPDATE, "-DENGLISH=" + at.filePath("en.ts"), "-DSPANISH=" + at.filePath("es.ts"),
                       "-P", SEAMWARD_SOURCE_FOLDER "/viewer/collect_words.cmake"});
        ASSERT_TRUE(collect.waitForFinished());
        ASSERT_EQ(collect.exitCode(), 0) << collect.readAllStandardError().toStdString();
    }

    QTemporaryDir at;
};

TEST_F(Sources, AreAllTranslated) {
    for (const char* name : {"en", "es"}) {
        const Messages now = read(at.filePath(QString(name) + ".ts"));
        const Messages kept = read(folder + "seamward_" + name + ".ts");
        EXPECT_GT(now.size(), name == QString("es") ? 500U : 5U);
        std::string wanting;
        for (const auto& [key, message] : now) {
            const bool translated = message.type != "unfinished" && !message.translations.contains(QString());
            if (!translated) wanting += "not translated: " + shown(key) + '\n';
        }
        for (const auto& [key, message] : kept) {
            if (!now.contains(key)) wanting += "in no source any more: " + shown(key) + '\n';
        }
        EXPECT_EQ(wanting, "") << "the target translations_update brings seamward_" << name << ".ts up to date";
    }
}

TEST(Translations, KeepPlacesAndKeys) {
    for (const auto& [key, message] : read(folder + "seamward_es.ts")) {
        const QString& source = std::get<1>(key);
        for (const QString& text : message.translations) {
            if (text.isEmpty()) continue;  // told by the other test
            QStringList wanted = places(source);
            // A plural may say "one" in place of the number.
            if (message.numerus && !text.contains("%n")) wanted.removeAll("%n");
            EXPECT_EQ(places(text), wanted) << shown(key);
            EXPECT_EQ(mnemonics(text), mnemonics(source)) << shown(key);
            EXPECT_EQ(text.endsWith(' '), source.endsWith(' ')) << shown(key);
            EXPECT_EQ(text.endsWith('.'), source.endsWith('.')) << shown(key);
        }
    }
}

TEST(Translations, TellNoPlacesOfSources) {
    for (const char* name : {"en", "es"}) {
        QFile file(folder + "seamward_" + name + ".ts");
        ASSERT_TRUE(file.open(QIODevice::ReadOnly));
        const QByteArray text = file.readAll();
        EXPECT_FALSE(text.contains("<location"));
        EXPECT_FALSE(text.contains("filename"));
    }
}

}  // namespace
}  // namespace seamward::viewer::test
