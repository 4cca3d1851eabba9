// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/look.h"

#include <QVTKOpenGLNativeWidget.h>

#include <QAbstractSpinBox>
#include <QComboBox>
#include <QEvent>
#include <QFont>
#include <QPalette>
#include <QStyleFactory>
#include <QSurfaceFormat>
#include <QWidget>
#include <clocale>
#include <cmath>
#include <map>

#include "document/translations.h"
#include "layers/palette.h"

namespace seamward::viewer {

namespace {

constexpr double points = 10.0;  ///< of letters at 100 percent

/// The wheel scrolls and changes nothing: whoever scrolls over a closed box of choices does not mean to choose.
class WheelScrolls : public QObject {
public:
    using QObject::QObject;
    bool eventFilter(QObject* watched, QEvent* event) override {
        if (event->type() != QEvent::Wheel ||
            (qobject_cast<QComboBox*>(watched) == nullptr && qobject_cast<QAbstractSpinBox*>(watched) == nullptr))
            return QObject::eventFilter(watched, event);
        event->ignore();  // it goes on to what the box stands in
        return true;
    }
};

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
               "QLabel#count, QLabel#gap_count, QLabel#hint { color: %3; }"
               "QPushButton#open_job { padding: 10px 26px; }")
        .arg(palette::panel.name(), palette::hairline.name(), palette::soft_ink.name());
}

void color(QApplication& application) {
    QPalette colors;
    colors.setColor(QPalette::Window, palette::panel);
    colors.setColor(QPalette::Base, palette::card);
    colors.setColor(QPalette::AlternateBase, palette::panel);
    colors.setColor(QPalette::Button, palette::button);
    for (const QPalette::ColorRole role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
        colors.setColor(role, palette::ink);
    for (const QPalette::ColorRole role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
        colors.setColor(QPalette::Disabled, role, palette::other_way);
    colors.setColor(QPalette::PlaceholderText, palette::soft_ink);
    colors.setColor(QPalette::Link, palette::way);
    colors.setColor(QPalette::LinkVisited, palette::way);
    colors.setColor(QPalette::Highlight, palette::way);
    colors.setColor(QPalette::HighlightedText, palette::card);
    colors.setColor(QPalette::ToolTipBase, palette::card);
    colors.setColor(QPalette::ToolTipText, palette::ink);
    QApplication::setPalette(colors);
    application.setStyleSheet(style_sheet());
    for (QWidget* widget : QApplication::allWidgets()) widget->update();
}

struct OwnFont {
    QFont font;
    bool has_size = false;
};

/// A widget and its children, parents first: with a font of its own, that one, its size scaled where it has one of its own; all
/// others take theirs from the parent. Under a style sheet Qt does not do it by itself.
void set_fonts(QWidget& widget, const std::map<QWidget*, OwnFont>& own, double ratio) {
    const auto at = own.find(&widget);
    QFont font;
    if (at != own.end()) {
        font = at->second.font;
        if (at->second.has_size) font.setPointSizeF(font.pointSizeF() * ratio);
    }
    widget.setFont(font);
    for (QObject* child : widget.children()) {
        if (child->isWidgetType()) set_fonts(*static_cast<QWidget*>(child), own, ratio);
    }
}

/// All letters as large as that, those of widgets with a font of their own in proportion.
void scale_letters(int percent) {
    QFont font = QApplication::font();
    const double ratio = points * percent / 100 / font.pointSizeF();
    if (std::abs(ratio - 1) < 1e-6) return;
    // Noted before the others change: a child without a size of its own follows its parent.
    std::map<QWidget*, OwnFont> own;
    for (QWidget* widget : QApplication::allWidgets()) {
        if (!widget->testAttribute(Qt::WA_SetFont)) continue;
        const QFont& now = widget->font();
        own[widget] = {now, (now.resolve() & QFont::SizeResolved) != 0 && now.pointSizeF() > 0};
    }
    font.setPointSizeF(font.pointSizeF() * ratio);
    QApplication::setFont(font);
    for (QWidget* window : QApplication::topLevelWidgets()) {
        if (window->parentWidget() == nullptr) set_fonts(*window, own, ratio);
    }
}

}  // namespace

void prepare_graphics() {
    QSurfaceFormat::setDefaultFormat(QVTKOpenGLNativeWidget::defaultFormat());
    QCoreApplication::setAttribute(Qt::AA_UseHighDpiPixmaps);
}

void dress(QApplication& application) {
    std::setlocale(LC_NUMERIC, "C");
    application.installEventFilter(new WheelScrolls(&application));
    QApplication::setStyle(QStyleFactory::create("Fusion"));
    QFont font = QApplication::font();
    font.setPointSizeF(points);
    QApplication::setFont(font);
    color(application);
    speak(Preferences::Language::english);
}

void wear(QApplication& application, Preferences& preferences) {
    const auto apply = [&application, &preferences] {
        const palette::Contrast contrast = preferences.high_contrast() ? palette::Contrast::high : palette::Contrast::normal;
        if (contrast != palette::in_use()) {
            palette::use(contrast);
            color(application);
        }
        scale_letters(preferences.text_size());
        const QString before = spoken();
        const bool rewrite = preferences.lengths() != lengths_written();
        write_lengths_as(preferences.lengths());
        speak(preferences.language());
        // Widths are written where words are.
        if (rewrite && spoken() == before) QCoreApplication::postEvent(&application, new QEvent(QEvent::LanguageChange));
    };
    apply();
    QObject::connect(&preferences, &Preferences::changed, &application, apply);
}

}  // namespace seamward::viewer
