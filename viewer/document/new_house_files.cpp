// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/new_house_files.h"

#include <QCoreApplication>
#include <QDir>
#include <QFileInfo>
#include <QStandardPaths>
#include <array>

#include "base/diagnostics.h"
#include "exchange/write_whole_file.h"
#include "house/build_house.h"
#include "house/read_description.h"

namespace seamward::viewer {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(new_house)
};

}  // namespace

NewHouseFiles new_house_files(const QString& folder, const QString& name) {
    const QDir at(folder);
    const QString word = file_word(name);
    return {at.filePath(word + ".yaml"), at.filePath(word + "-house.yaml")};
}

QString usual_house_folder() {
    const QString documents = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    return QFileInfo(documents).isDir() ? documents : QDir::homePath();
}

QString fault_of_folder(const QString& folder, const QString& name) {
    if (folder.trimmed().isEmpty()) return Words::tr("Say in which folder the files are to stand.");
    const QFileInfo place(folder);
    if (place.exists() && !place.isDir()) return Words::tr("This is a file; give a folder.");
    const QFileInfo above(QDir::cleanPath(place.absoluteFilePath()).section('/', 0, -2) + '/');
    if (!place.exists() && !above.isDir()) return Words::tr("There is no such folder, nor the one that it would be in.");
    if (!(place.exists() ? place : above).isWritable())
        return Words::tr("Nothing can be written into this folder; choose another one.");
    const NewHouseFiles files = new_house_files(folder, name);
    for (const QString& file : {files.job, files.house}) {
        if (QFileInfo::exists(file))
            return Words::tr("%1 is in this folder already; give the house another name, or choose another folder.")
                .arg(QFileInfo(file).fileName());
    }
    return {};
}

void write_new_house(const NewHouse& house, const NewHouseFiles& files, const RunContext& context) {
    const QString house_name = QFileInfo(files.house).fileName();
    const NewHouseText text = new_house_text(house, house_name.toStdString());
    (void)build_house(parse_house_yaml(text.house, house_name.toStdString()), {}, Make::solids, context);
    context.check();
    const QString folder = QFileInfo(files.job).absolutePath();
    if (!QDir().mkpath(folder)) throw BadInput({{folder.toStdString(), {}, "this folder cannot be made", "choose another one"}});
    const std::array<WholeFile, 2> both{{{files.house.toStdString(), files.house.toStdString(), text.house},
                                         {files.job.toStdString(), files.job.toStdString(), text.job}}};
    write_whole_files(both);
}

}  // namespace seamward::viewer
