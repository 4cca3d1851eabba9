// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QImage>
#include <QObject>
#include <QProcess>
#include <QStringList>

#include "document/newest_task.h"

namespace seamward::viewer {

/// Pictures of jobs for cards, each drawn once by `seamward picture`, the program beside this one, and kept in a folder under the
/// content of the job, of its house and the version of the program. One after the other, beside the window's work.
class ExamplePictures : public QObject {
    Q_OBJECT

public:
    /// `folder` is made when there is something to keep.
    explicit ExamplePictures(QString folder = usual_folder(), QObject* parent = nullptr);
    ~ExamplePictures() override;

    /// ready() follows for each of these jobs that a picture can be made of.
    void want(const QStringList& jobs);
    /// Draws no more of them, not even the one being drawn, until they are wanted again: the machine has better to do.
    void rest();

    [[nodiscard]] static QString usual_folder();
    /// The command line program, beside the running one or in ../bin; empty when it is not there.
    [[nodiscard]] static QString drawing_program();

signals:
    void ready(const QString& job, const QImage& picture);
    /// Nothing is left to do.
    void finished();

private:
    void next();
    void look(bool draw_if_missing);
    void draw(const QString& file);

    QString folder_;
    QStringList waiting_;
    QString job_;  ///< being worked on; empty: none
    bool resting_ = false;
    QProcess drawing_;
    NewestTask task_;  ///< last, so that its thread ends before the rest goes
};

}  // namespace seamward::viewer
