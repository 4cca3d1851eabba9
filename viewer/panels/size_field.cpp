// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/size_field.h"

#include <QEvent>
#include <QVBoxLayout>
#include <cmath>

#include "base/quantity.h"
#include "document/gap_facts.h"
#include "document/units_text.h"
#include "document/way_text.h"

namespace seamward::viewer {

namespace {

constexpr double same = 1e-9;  ///< meters; far below what can be typed

Parsed<double> parsed(SizeField::Of of, const QString& text) {
    const std::string typed = text.toStdString();
    if (of == SizeField::Of::area) return parse_area(typed);
    return of == SizeField::Of::length ? parse_distance(typed) : parse_length(typed);
}

}  // namespace

SizeField::SizeField(QWidget* parent) : QWidget(parent), line_(new QLineEdit(this)), words_(new QLabel(this)) {
    words_->setTextFormat(Qt::PlainText);
    words_->setWordWrap(true);
    words_->setObjectName("size_words");
    words_->setForegroundRole(QPalette::PlaceholderText);
    line_->setMaxLength(60);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2);
    column->addWidget(line_);
    column->addWidget(words_);
    setFocusProxy(line_);
    connect(line_, &QLineEdit::editingFinished, this, &SizeField::enter);
    connect(line_, &QLineEdit::textEdited, this, [this] {
        refused_.clear();
        tell();
    });
    tell();
}

void SizeField::set_of(Of of) {
    if (of_ == of) return;
    of_ = of;
    tell();
}

std::optional<double> SizeField::size() const { return text().isEmpty() ? std::nullopt : parsed(of_, text()).value; }

void SizeField::show_size(std::optional<double> size, bool afresh) {
    const bool keep = !afresh && (wrong_ || (line_->hasFocus() && line_->isModified()));
    shown_ = size;
    if (keep) return;
    refused_.clear();
    const QString typed = !size ? QString() : of_ == Of::area ? typed_area(*size) : typed_length(*size, of_ == Of::length);
    // The same size in the words that somebody typed stays in those.
    if (const auto now = this->size(); afresh || !now || !size || std::abs(*now - *size) > same) line_->setText(typed);
    line_->setModified(false);
    tell();
}

void SizeField::type(const QString& text) {
    line_->setText(text);
    line_->setModified(true);
    refused_.clear();
    tell();
}

void SizeField::refuse(const QString& why) {
    refused_ = why;
    tell();
}

bool SizeField::check() {
    tell();
    if (text().isEmpty() && !optional_) tell_wrong(tr("Type a size with its unit, such as 1/16 in or 1.6 mm."));
    return !wrong_;
}

void SizeField::enter() {
    if (!line_->isModified()) return;
    const auto now = size();
    if (text().isEmpty() ? !optional_ : !now) {
        (void)check();
        return;
    }
    if (!refused_.isEmpty()) return;
    line_->setModified(false);
    const bool other = now.has_value() != shown_.has_value() || (now && std::abs(*now - *shown_) > same);
    if (other) emit entered(text());
}

void SizeField::tell() {
    if (!refused_.isEmpty()) {
        tell_wrong(refused_);
        return;
    }
    wrong_ = false;
    words_->setForegroundRole(QPalette::PlaceholderText);
    words_->setVisible(!text().isEmpty());
    line_->setAccessibleDescription({});
    if (text().isEmpty()) return;
    const Parsed<double> read = parsed(of_, text());
    if (!read) {
        tell_wrong(tr("%1: %2.", "what is wrong, how to mend it")
                       .arg(QString::fromStdString(read.fault.what), QString::fromStdString(read.fault.mend)));
        return;
    }
    switch (of_) {
        case Of::width:
            words_->setText(*read > 0 ? tr("%1, %2", "width, in things at hand").arg(width_words(*read), hand_text(*read))
                                      : tr("shut"));
            break;
        case Of::length: words_->setText(distance_words(*read)); break;
        case Of::area: words_->setText(tr("%1 square inches").arg(*read / (0.0254 * 0.0254), 0, 'g', 3)); break;
        default: words_->setText(width_words(*read)); break;
    }
    line_->setAccessibleDescription(words_->text());
}

void SizeField::tell_wrong(const QString& why) {
    wrong_ = true;
    words_->setForegroundRole(QPalette::WindowText);
    words_->setText(tr("⚠ %1").arg(as_sentence(why)));
    words_->show();
    line_->setAccessibleDescription(why);
}

void SizeField::changeEvent(QEvent* event) {
    if (event->type() == QEvent::LanguageChange) tell();
    QWidget::changeEvent(event);
}

}  // namespace seamward::viewer
