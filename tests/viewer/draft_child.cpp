// SPDX-License-Identifier: GPL-3.0-or-later
// Opens a job, changes it, says "kept" once a draft of that is on the disk, and waits to be killed.
#include <QCoreApplication>
#include <QDir>
#include <QTimer>
#include <iostream>

#include "document/survey_document.h"

using namespace seamward;
using namespace seamward::viewer;

int main(int argc, char** argv) {
    QCoreApplication application(argc, argv);
    QCoreApplication::setApplicationName("viewer_survey_test");
    JobDocument document;
    SurveyDocument survey(document);
    QObject::connect(&document, &JobDocument::opened, &survey, [&] {
        ChangeGap edit{.id = "bib"};
        edit.shape = ShapeText{"ring", "7.1 mm", std::nullopt};
        edit.note = "killed é";
        survey.change(edit);
    });
    QTimer look;
    QObject::connect(&look, &QTimer::timeout, &application, [] {
        if (QDir(DraftStore::usual_folder()).entryList({"*.draft"}, QDir::Files).isEmpty()) return;
        static bool told = false;
        if (!told) std::cout << "kept" << std::endl;
        told = true;
    });
    look.start(20);
    document.open(QCoreApplication::arguments().value(1));
    return QCoreApplication::exec();
}
