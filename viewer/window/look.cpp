// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/look.h"

#include <QVTKOpenGLNativeWidget.h>

#include <QFont>
#include <QPalette>
#include <QStyleFactory>
#include <QSurfaceFormat>
#include <clocale>

#include "layers/palette.h"

namespace seamward::viewer {

namespace {

QString style_sheet() {
    return QStringLiteral(
               "QMainWindow, QMenuBar, QStatusBar, QDialog { background: %1; }"
               "QMenuBar { border-bottom: 1px solid %2; padding: 2px 8px; }"
               "QStatusBar { border-top: 1px solid %2; color: %3; }"
               "QStatusBar::item { border: none; }"
               "QListWidget, QTextBrowser { background: %1; }"
               "QListWidget { border-top: 1px solid %2; }"
               "QSplitter::handle { background: %2; }"
               "QSplitter::handle:horizontal { width: 1px; }"
               "QSplitter::handle:vertical { height: 1px; }"
               "QScrollBar:vertical { background: transparent; width: 12px; margin: 2px; }"
               "QScrollBar::handle:vertical { background: %2; border-radius: 4px; min-height: 28px; }"
               "QScrollBar::add-line:vertical, QScrollBar::sub-line:vertical { height: 0; }"
               "QLabel#count, QLabel#hint { color: %3; }"
               "QPushButton#open_job { padding: 10px 26px; }")
        .arg(palette::panel.name(), palette::hairline.name(), palette::soft_ink.name());
}

}  // namespace

void prepare_graphics() {
    QSurfaceFormat::setDefaultFormat(QVTKOpenGLNativeWidget::defaultFormat());
    QCoreApplication::setAttribute(Qt::AA_UseHighDpiPixmaps);
}

void dress(QApplication& application) {
    std::setlocale(LC_NUMERIC, "C");
    QApplication::setStyle(QStyleFactory::create("Fusion"));
    QPalette colors;
    colors.setColor(QPalette::Window, palette::panel);
    colors.setColor(QPalette::Base, QColor(0xff, 0xfd, 0xf9));
    colors.setColor(QPalette::AlternateBase, palette::panel);
    colors.setColor(QPalette::Button, QColor(0xf4, 0xec, 0xdf));
    for (const QPalette::ColorRole role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
        colors.setColor(role, palette::ink);
    colors.setColor(QPalette::Highlight, palette::way);
    colors.setColor(QPalette::HighlightedText, QColor(0xff, 0xfd, 0xf9));
    colors.setColor(QPalette::ToolTipBase, QColor(0xff, 0xfd, 0xf9));
    colors.setColor(QPalette::ToolTipText, palette::ink);
    QApplication::setPalette(colors);
    QFont font = QApplication::font();
    font.setPointSizeF(10.0);
    QApplication::setFont(font);
    application.setStyleSheet(style_sheet());
}

}  // namespace seamward::viewer
