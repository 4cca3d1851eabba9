// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/example_pictures.h"

#include <QCoreApplication>
#include <QCryptographicHash>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QRegularExpression>
#include <QStandardPaths>
#include <utility>

namespace seamward::viewer {

namespace {

constexpr int drawn_width = 1500, drawn_height = 816;
constexpr int kept_width = 720;

QByteArray content(const QString& path) {
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

/// The name of a job's picture: another one when the job, its house or the program is another.
QString picture_name(const QString& job) {
    static const QRegularExpression house(QStringLiteral("^house:\\s*\"?([^\"\\n#]+?)\"?\\s*$"),
                                          QRegularExpression::MultilineOption);
    const QByteArray text = content(job);
    QCryptographicHash hash(QCryptographicHash::Sha256);
    hash.addData(SEAMWARD_VERSION " without words");
    hash.addData(text);
    const QRegularExpressionMatch match = house.match(QString::fromUtf8(text));
    if (match.hasMatch()) hash.addData(content(QFileInfo(job).dir().filePath(match.captured(1))));
    return QString::fromLatin1(hash.result().toHex().left(32)) + ".png";
}

}  // namespace

ExamplePictures::ExamplePictures(QString folder, QObject* parent) : QObject(parent), folder_(std::move(folder)) {
    connect(&drawing_, qOverload<int, QProcess::ExitStatus>(&QProcess::finished), this, [this] { look(false); });
    connect(&drawing_, &QProcess::errorOccurred, this, [this](QProcess::ProcessError error) {
        if (error == QProcess::FailedToStart) next();
    });
}

ExamplePictures::~ExamplePictures() {
    drawing_.disconnect(this);
    if (drawing_.state() == QProcess::NotRunning) return;
    drawing_.kill();  // it writes its picture whole or not at all
    drawing_.waitForFinished(1000);
}

QString ExamplePictures::usual_folder() {
    return QDir(QStandardPaths::writableLocation(QStandardPaths::CacheLocation)).filePath("examples");
}

QString ExamplePictures::drawing_program() {
    const QDir here(QCoreApplication::applicationDirPath());
    for (const char* name : {"seamward", "../bin/seamward"}) {
        const QFileInfo program(here.filePath(name));
        if (program.isFile() && program.isExecutable()) return program.canonicalFilePath();
    }
    return {};
}

void ExamplePictures::want(const QStringList& jobs) {
    resting_ = false;
    for (const QString& job : jobs) {
        if (!waiting_.contains(job)) waiting_ << job;
    }
    if (job_.isEmpty()) next();
}

void ExamplePictures::rest() {
    resting_ = true;
    waiting_.clear();
    drawing_.kill();
}

void ExamplePictures::next() {
    job_.clear();
    if (waiting_.isEmpty()) {
        emit finished();
        return;
    }
    job_ = waiting_.takeFirst();
    look(true);
}

void ExamplePictures::look(bool draw_if_missing) {
    task_.start([this, job = job_, folder = folder_, draw_if_missing](const RunContext&) {
        const QString file = QDir(folder).filePath(picture_name(job));
        QImage picture(file);
        if (picture.isNull() && draw_if_missing) (void)QDir().mkpath(folder);
        if (!picture.isNull()) picture = picture.scaledToWidth(kept_width, Qt::SmoothTransformation);
        const auto deliver = [this, job, file, picture, draw_if_missing] {
            if (!picture.isNull()) emit ready(job, picture);
            if (picture.isNull() && draw_if_missing && !resting_)
                draw(file);
            else
                next();
        };
        QMetaObject::invokeMethod(this, deliver, Qt::QueuedConnection);
    });
}

void ExamplePictures::draw(const QString& file) {
    const QString program = drawing_program();
    if (program.isEmpty()) {
        next();
        return;
    }
    drawing_.setStandardOutputFile(QProcess::nullDevice());
    drawing_.setStandardErrorFile(QProcess::nullDevice());
    drawing_.start(program, {"picture", job_, "-o", file, "--without-words", "--size",
                             QStringLiteral("%1x%2").arg(drawn_width).arg(drawn_height)});
}

}  // namespace seamward::viewer
