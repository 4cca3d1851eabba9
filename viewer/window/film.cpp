// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/film.h"

#include <vtkImageData.h>
#include <vtkNew.h>
#include <vtkOggTheoraWriter.h>

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QPainter>
#include <QTemporaryDir>
#include <algorithm>

#include "layers/palette.h"

namespace seamward::viewer {

namespace {

constexpr int frames_a_second = 20;
constexpr int widest = 1280;  ///< pixels: a film is for a phone or a screen, not for print

QString words(const char* text) { return QCoreApplication::translate("film", text); }

/// The frame with where the ride is written under it.
QImage frame_of(PictureCanvas& canvas) {
    QImage frame = canvas.image().convertToFormat(QImage::Format_RGB888);
    if (frame.width() > widest) frame = frame.scaledToWidth(widest, Qt::SmoothTransformation);
    // The film's blocks are 16 pixels wide and high.
    frame = frame.copy(0, 0, std::max(16, frame.width() / 16 * 16), std::max(16, frame.height() / 16 * 16));
    QPainter painter(&frame);
    QFont font = painter.font();
    font.setPixelSize(std::max(12, frame.height() / 32));
    painter.setFont(font);
    const QString text = canvas.ride_words();
    const QRect room(12, 0, frame.width() - 24, frame.height() - 12);
    const QRect box = painter.boundingRect(room, Qt::AlignLeft | Qt::AlignBottom | Qt::TextWordWrap, text).adjusted(-8, -5, 8, 5);
    painter.fillRect(box, palette::card);
    painter.setPen(palette::ink);
    painter.drawText(room, Qt::AlignLeft | Qt::AlignBottom | Qt::TextWordWrap, text);
    return frame;
}

vtkSmartPointer<vtkImageData> data_of(const QImage& frame) {
    auto data = vtkSmartPointer<vtkImageData>::New();
    data->SetDimensions(frame.width(), frame.height(), 1);
    data->AllocateScalars(VTK_UNSIGNED_CHAR, 3);
    auto* out = static_cast<unsigned char*>(data->GetScalarPointer());
    for (int y = frame.height() - 1; y >= 0; --y) {
        const unsigned char* row = frame.constScanLine(y);
        out = std::copy(row, row + static_cast<std::ptrdiff_t>(frame.width()) * 3, out);
    }
    return data;
}

QString cannot_write(const QString& path) { return words("%1 cannot be written.").arg(path); }

/// Moves finished frames to their place; none of them when one cannot be moved.
QString put_pictures(const QTemporaryDir& made, int count, const QFileInfo& target) {
    QStringList done;
    for (int i = 0; i < count; ++i) {
        const QString number = QStringLiteral("%1").arg(i, 5, 10, QLatin1Char('0'));
        const QString to = target.dir().filePath(target.completeBaseName() + '-' + number + ".png");
        QFile::remove(to);
        if (!QFile::rename(made.filePath(number + ".png"), to)) {
            for (const QString& file : done) QFile::remove(file);
            return cannot_write(to);
        }
        done << to;
    }
    return {};
}

}  // namespace

QString write_film(const QString& path, PictureCanvas& canvas, const std::function<bool(double)>& go_on) {
    const QFileInfo target(path);
    const QTemporaryDir made(target.dir().filePath(".film-XXXXXX"));
    if (!made.isValid()) return cannot_write(path);
    const bool pictures = target.suffix().compare("png", Qt::CaseInsensitive) == 0;
    const QString film = made.filePath("film.ogv");
    vtkNew<vtkOggTheoraWriter> writer;
    writer->SetFileName(film.toLocal8Bit().constData());
    writer->SetRate(frames_a_second);
    writer->SetQuality(2);
    const double step = canvas.ride_speed() / frames_a_second;  // seconds of the ride between two frames
    const int count = std::max(1, static_cast<int>(canvas.ride_duration() / step));
    QSize size;  // all frames have that of the first, whatever becomes of the window
    for (int i = 0; i < count; ++i) {
        if (!canvas.is_riding()) {
            if (!pictures && i > 0) writer->End();
            return words("The ride ended before it was saved.");
        }
        canvas.ride_to(i * step);
        QImage frame = frame_of(canvas);
        if (i == 0) size = frame.size();
        if (frame.size() != size) frame = frame.scaled(size, Qt::IgnoreAspectRatio, Qt::SmoothTransformation);
        if (pictures) {
            if (!frame.save(made.filePath(QStringLiteral("%1.png").arg(i, 5, 10, QLatin1Char('0'))))) return cannot_write(path);
        } else {
            writer->SetInputData(data_of(frame));
            if (i == 0) writer->Start();
            writer->Write();
            if (writer->GetError() != 0) return cannot_write(path);
        }
        if (!go_on(static_cast<double>(i + 1) / count)) {
            if (!pictures) writer->End();
            return {};
        }
    }
    if (pictures) return put_pictures(made, count, target);
    writer->End();
    QFile::remove(path);
    return QFile::rename(film, path) ? QString() : cannot_write(path);
}

}  // namespace seamward::viewer
