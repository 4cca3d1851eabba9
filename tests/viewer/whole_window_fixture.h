// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>

#include <QApplication>
#include <QDir>
#include <QFile>
#include <QPointer>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>
#include <functional>
#include <memory>

#include "window/look.h"
#include "window/main_window.h"

namespace seamward::viewer::test {

inline const QString source_folder = QStringLiteral(SEAMWARD_SOURCE_FOLDER);

/// Three gaps with positions and no house.
inline const QByteArray small_job =
    "seamward: 1\nspaces: [{id: yard, kind: outdoors}, {id: wall, kind: cavity}, {id: den, kind: living}]\n"
    "gaps:\n"
    "  - {id: a, between: [yard, wall], slot: {width: 3 mm, length: 1 m}, at: [0 m, 0 m, 0 m]}\n"
    "  - {id: b, between: [wall, den], slot: {width: 4 mm, length: 1 m}, at: [1 m, 0 m, 0 m]}\n"
    "  - {id: c, between: [yard, den], slot: {width: 5 mm, length: 1 m}, at: [2 m, 1 m, 1 m]}\n"
    "pests: [bark-scorpion]\n";

/// A window of its own, with its settings in a folder of the test's own.
class WholeWindowFixture : public testing::Test {
protected:
    static constexpr int soon = 60'000;  ///< milliseconds after which something hangs

    WholeWindowFixture() : preferences(folder.filePath("preferences.ini")), recent(folder.filePath("recent.ini")) {
        preferences.set_language(Preferences::Language::english);
        preferences.set_hints_seen(true);
        wear(*static_cast<QApplication*>(QApplication::instance()), preferences);
        make_window();
    }
    ~WholeWindowFixture() override {
        preferences.set_high_contrast(false);
        preferences.set_text_size(100);
        preferences.set_language(Preferences::Language::english);
    }

    void make_window() {
        window = std::make_unique<MainWindow>(preferences, recent);
        canvas().set_animated(false);
        window->resize(900, 640);
        window->show();
        QApplication::setActiveWindow(window.get());
    }
    /// Opens a job and waits until all of it is there.
    void open(const QString& path) {
        bool taken = false;
        QObject context;
        QObject::connect(&window->document(), &JobDocument::opened, &context, [&] { taken = true; });
        window->open(path);
        ASSERT_TRUE(QTest::qWaitFor([&] { return taken && idle(); }, soon)) << path.toStdString();
    }
    void open_shipped(const QString& name) { open(source_folder + "/scenarios/" + name); }
    /// A copy of the demo that may be written to.
    QString own_demo() {
        QDir(folder.path()).mkpath("scenarios");
        QDir(folder.path()).mkpath("models");
        for (const char* name : {"scenarios/demo.yaml", "models/quillfeather.yaml"})
            QFile::copy(source_folder + '/' + name, folder.filePath(name));
        return folder.filePath("scenarios/demo.yaml");
    }
    QString write(const QString& name, const QByteArray& text) {
        QFile file(folder.filePath(name));
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(text);
        return file.fileName();
    }
    static QByteArray content(const QString& path) {
        QFile file(path);
        EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
        return file.readAll();
    }
    /// Whether nothing is being read, traced, built or planned.
    bool idle() {
        JobDocument& document = window->document();
        ClosingsDocument& closings = window->closings();
        if (!document.has_job() || document.is_busy()) return false;
        const Job& job = document.job();
        const bool house = job.model || !job.house.survey.spaces.empty();
        const bool planned = closings.has_plan() ? closings.plan().job == document.filed() : !closings.fault().isEmpty();
        return planned && !document.is_building() && (!house || document.solids());
    }
    [[nodiscard]] bool wait_idle() {
        QApplication::processEvents();
        return QTest::qWaitFor([this] { return idle(); }, soon);
    }
    PictureCanvas& canvas() { return window->picture().canvas(); }
    template <class Widget>
    Widget& part(const char* name) {
        auto* found = window->findChild<Widget*>(name);
        if (found == nullptr) throw std::runtime_error(name);
        return *found;
    }
    [[nodiscard]] GapIndex gap(const std::string& id) {
        const auto& gaps = window->document().job().survey.gaps;
        for (std::uint32_t i = 0; i < gaps.size(); ++i) {
            if (gaps[i].id == id) return {i};
        }
        throw std::runtime_error("no gap " + id);
    }
    /// Clicks where the picture shows a point of the scene, so many pixels aside.
    void click(const Point& at, QPoint aside = {}) {
        const auto shown = canvas().camera().shown_at(at, canvas().width(), canvas().height());
        ASSERT_TRUE(shown);
        QTest::mouseClick(&canvas(), Qt::LeftButton, Qt::NoModifier,
                          QPoint(static_cast<int>(std::lround(shown->x)), static_cast<int>(std::lround(shown->y))) + aside);
    }
    /// The numbers in the picture are those of the list.
    void expect_marks() {
        std::vector<std::pair<int, bool>> expected, shown;
        const Survey& survey = window->closings().plan().survey();
        for (const NumberedGap& one : window->closings().numbered()) {
            if (survey[one.gap].at) expected.emplace_back(one.number, one.ticked);
        }
        for (const ClosingMark& mark : canvas().scene().closings()) shown.emplace_back(mark.number, mark.ticked);
        EXPECT_EQ(shown, expected);
    }
    /// For whoever wants to see what a test sees: SEAMWARD_SEE_WINDOWS=FOLDER saves it there.
    void see(const std::string& name) {
        const QByteArray folder_to = qgetenv("SEAMWARD_SEE_WINDOWS");
        if (folder_to.isEmpty()) return;
        canvas().settle();
        const QString file = QString::fromStdString(name).replace(QRegularExpression("[^A-Za-z0-9]+"), "-") + ".png";
        EXPECT_TRUE(window->grab().save(QDir(QString::fromLocal8Bit(folder_to)).filePath(file)));
    }
    /// Answers the next question that the window asks while `act` runs; what it asked.
    QString answering(const std::function<void(QWidget&)>& answer, const std::function<void()>& act) {
        QString asked;
        QTimer look;
        QObject::connect(&look, &QTimer::timeout, [&] {
            QWidget* box = QApplication::activeModalWidget();
            if (box == nullptr || box->objectName().isEmpty() || !asked.isEmpty()) return;  // some tell how far they are
            asked = box->objectName();
            answer(*box);
        });
        look.start(5);
        act();
        return asked;
    }

    QTemporaryDir folder;
    Preferences preferences;
    RecentJobs recent;
    std::unique_ptr<MainWindow> window;
};

}  // namespace seamward::viewer::test
