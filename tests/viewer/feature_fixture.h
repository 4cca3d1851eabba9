// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QSignalSpy>
#include <algorithm>

#include "panels/feature_form.h"
#include "panels/survey_panel.h"
#include "whole_window_fixture.h"

namespace seamward::viewer::test {

/// A window with a demo that may be written to, at the page of the survey.
class Features : public WholeWindowFixture {
protected:
    void SetUp() override {
        qputenv("XDG_DATA_HOME", folder.filePath("data").toUtf8());
        open(own_demo());
        house_before = content(house_path());
        window->show_page(MainWindow::Page::survey);
    }
    QString house_path() const { return folder.filePath("models/quillfeather.yaml"); }
    SurveyPanel& panel() { return part<SurveyPanel>("survey_panel"); }
    FeatureForm& form() { return panel().feature_form(); }
    [[nodiscard]] std::string house_now() {
        const FileTexts& newer = window->document().newer();
        return newer.empty() ? house_before.toStdString() : newer.begin()->second;
    }
    void choose(const QString& id) {
        auto& types = part<QListWidget>("feature_types");
        for (int i = 0; i < types.count(); ++i) {
            if (types.item(i)->data(Qt::UserRole).toString() == id) return types.setCurrentRow(i);
        }
        FAIL() << "no type " << id.toStdString();
    }
    [[nodiscard]] bool offers(const QString& id) {
        auto& types = part<QListWidget>("feature_types");
        for (int i = 0; i < types.count(); ++i) {
            if (types.item(i)->data(Qt::UserRole).toString() == id) return true;
        }
        return false;
    }
    void type(const char* name, const QString& text) {
        QLineEdit& line = part<SizeField>(name).line();
        line.selectAll();
        QTest::keyClicks(&line, text);
    }
    /// Adds it and waits until it is in the survey.
    void add() {
        QSignalSpy added(&form(), &FeatureForm::added);
        part<QPushButton>("feature_add").click();
        ASSERT_TRUE(!added.isEmpty() || added.wait(soon)) << form().findChild<FaultLabel*>()->text().toStdString();
        ASSERT_TRUE(wait_idle());
    }
    [[nodiscard]] const Gap& gap_of(const std::string& id) { return window->document().job().survey[gap(id)]; }
    /// The text that was put into the house file; fails where anything else of it is other than before.
    [[nodiscard]] std::string inserted() {
        const std::string before = house_before.toStdString(), now = house_now();
        const std::size_t longer = now.size() - before.size();
        const auto [old, fresh] = std::ranges::mismatch(before, now);
        const auto at = static_cast<std::size_t>(fresh - now.begin());
        EXPECT_EQ(now.substr(at + longer), before.substr(at));
        return now.substr(at, longer);
    }

    QByteArray house_before;
};

}  // namespace seamward::viewer::test
