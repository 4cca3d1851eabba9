// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/photo_field.h"

#include <QDir>
#include <QEvent>
#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QImageReader>
#include <QVBoxLayout>

namespace seamward::viewer {

namespace {

constexpr QSize largest{640, 240};  ///< pixels; more is not read

QImage small_picture(const QString& file) {
    QImageReader reader(file);
    reader.setAutoTransform(true);
    const QSize size = reader.size();
    if (size.isValid()) reader.setScaledSize(size.scaled(largest, Qt::KeepAspectRatio).boundedTo(size));
    return reader.read();
}

}  // namespace

PhotoField::PhotoField(QWidget* parent)
    : QWidget(parent), image_(new QLabel(this)), choose_(new QPushButton(this)), remove_(new QPushButton(this)) {
    image_->setObjectName("photo");
    image_->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    image_->setForegroundRole(QPalette::PlaceholderText);
    choose_->setObjectName("choose_photo");
    remove_->setObjectName("remove_photo");
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(choose_);
    buttons->addWidget(remove_);
    buttons->addStretch();
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(6);
    column->addWidget(image_);
    column->addLayout(buttons);
    setFocusProxy(choose_);
    connect(choose_, &QPushButton::clicked, this, &PhotoField::ask);
    connect(remove_, &QPushButton::clicked, this, [this] { emit chosen({}); });
    retranslate();
}

void PhotoField::show_photo(const QString& path, const QString& folder) {
    if (path == path_ && folder == folder_) return;
    path_ = path;
    folder_ = folder;
    picture_ = {};
    retranslate();
    load();
}

void PhotoField::load() {
    const std::uint64_t ticket = ++ticket_;
    if (path_.isEmpty()) return;
    const QString file = QDir(folder_).absoluteFilePath(path_);
    task_.start([this, file, ticket](const RunContext&) {
        const QImage picture = small_picture(file);
        const auto take = [this, picture, ticket] {
            if (ticket != ticket_) return;
            picture_ = picture;
            show_picture();
            emit picture_ready();
        };
        QMetaObject::invokeMethod(this, take, Qt::QueuedConnection);
    });
}

void PhotoField::show_picture() {
    image_->setVisible(!path_.isEmpty());
    image_->setToolTip(path_);
    image_->setWordWrap(picture_.isNull());  // a picture in a label that wraps gets no height
    if (picture_.isNull()) {
        image_->setText(path_.isEmpty() ? QString() : tr("%1 is not there, or no picture.").arg(path_));
        return;
    }
    const QSize room(std::max(80, width()), largest.height() / 2);
    image_->setPixmap(QPixmap::fromImage(picture_.scaled(room, Qt::KeepAspectRatio, Qt::SmoothTransformation)));
}

void PhotoField::ask() {
    const QString start = path_.isEmpty() ? folder_ : QFileInfo(QDir(folder_).absoluteFilePath(path_)).absolutePath();
    const QString file = QFileDialog::getOpenFileName(this, tr("A photo of this gap"), start,
                                                      tr("Pictures (*.jpg *.jpeg *.png *.webp *.bmp *.gif);;All files (*)"));
    if (!file.isEmpty()) take_file(file);
}

void PhotoField::take_file(const QString& file) {
    const QString relative = folder_.isEmpty() ? file : QDir(folder_).relativeFilePath(file);
    if (relative != path_) emit chosen(relative);
}

void PhotoField::retranslate() {
    choose_->setText(path_.isEmpty() ? tr("Choose a photo...") : tr("Photo..."));
    choose_->setToolTip(tr("The picture stays where it is; the job file notes its place from its own folder."));
    remove_->setText(tr("None"));
    remove_->setToolTip(tr("The picture itself is not deleted."));
    remove_->setVisible(!path_.isEmpty());
    image_->setAccessibleName(tr("Photo of the gap"));
    show_picture();
}

void PhotoField::changeEvent(QEvent* event) {
    if (event->type() == QEvent::LanguageChange) retranslate();
    QWidget::changeEvent(event);
}

void PhotoField::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    if (!picture_.isNull()) show_picture();
}

}  // namespace seamward::viewer
