// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <QDateTime>
#include <QLockFile>
#include <QObject>
#include <QString>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "document/newest_task.h"

namespace seamward::viewer {

/// A file that is being edited.
struct EditedFile {
    QString path;
    std::string text;       ///< what would be saved
    QByteArray disk_print;  ///< of the file as it was read or saved last; empty: there was none
};

/// Work that was not saved.
struct Draft {
    QString id;  ///< the name of its file
    EditedFile job;
    std::optional<EditedFile> house;  ///< when that was edited too
    QDateTime written;                ///< UTC

    /// What the job calls itself, or its house; of a text without a name, or one that cannot be read, the file's name.
    [[nodiscard]] QString job_name() const;
};

/// Keeps what is not saved yet in a file of this window's own, so that it is found again when the program ends in any other way
/// than by leaving it. Each file is locked by the program that writes it. Written on a thread of its own.
class DraftStore : public QObject {
    Q_OBJECT

public:
    explicit DraftStore(QString folder = usual_folder(), QObject* parent = nullptr);
    /// Removes the draft: whoever leaves in good order has saved, or does not want to.
    ~DraftStore() override;

    /// Keeps this in place of what was kept before. Soon after, it is on the disk.
    void keep(const EditedFile& job, const std::optional<EditedFile>& house);
    /// There is nothing to keep.
    void forget();
    /// Goes on in the file of a draft that was left behind; the draft as it is there. Nothing when another window has it or had
    /// it, and then all stays as it was.
    [[nodiscard]] std::optional<Draft> adopt(const QString& id);
    /// Leaves the draft on the disk for whoever can use it.
    void let_go();

    [[nodiscard]] static QString usual_folder();
    /// Drafts whose programs are gone, the newest first.
    [[nodiscard]] static std::vector<Draft> left_behind(const QString& folder = usual_folder());
    /// Nobody wants this one.
    static void discard(const Draft& draft, const QString& folder = usual_folder());

signals:
    /// A draft could not be written: work is at risk.
    void failed(const QString& why);

private:
    [[nodiscard]] bool begin(const QString& id);

    QString folder_, id_;
    std::unique_ptr<QLockFile> lock_;
    std::unique_ptr<NewestTask> task_;
};

}  // namespace seamward::viewer
