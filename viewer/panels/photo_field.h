// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QImage>
#include <QLabel>
#include <QPushButton>
#include <QWidget>

#include "document/newest_task.h"

namespace seamward::viewer {

/// A small picture of a photo, and buttons to choose another or none. Files are read on a thread of its own.
class PhotoField : public QWidget {
    Q_OBJECT

public:
    explicit PhotoField(QWidget* parent = nullptr);

    /// `path` as the job file has it, from `folder`; empty: none.
    void show_photo(const QString& path, const QString& folder);
    [[nodiscard]] QString path() const { return path_; }
    /// A file was chosen: keeps it as a path from the folder, where there is one.
    void take_file(const QString& file);
    void retranslate();
    [[nodiscard]] QPushButton& choose_button() const { return *choose_; }
    [[nodiscard]] bool has_picture() const { return !picture_.isNull(); }

signals:
    /// Another file, as the job file shall have it; empty: none any more.
    void chosen(const QString& path);
    void picture_ready();

protected:
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void ask();
    void load();
    void show_picture();

    QLabel* image_;
    QPushButton* choose_;
    QPushButton* remove_;
    QString path_, folder_;
    QImage picture_;
    std::uint64_t ticket_ = 0;
    NewestTask task_;  ///< stands last, so that its thread ends first
};

}  // namespace seamward::viewer
