// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/preferences_dialog.h"

#include <QEvent>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

namespace seamward::viewer {

PreferencesDialog::PreferencesDialog(Preferences& preferences, QWidget* parent)
    : QDialog(parent),
      preferences_(preferences),
      language_name_(new QLabel(this)),
      language_(new QComboBox(this)),
      lengths_name_(new QLabel(this)),
      lengths_(new QComboBox(this)),
      text_size_name_(new QLabel(this)),
      text_size_(new QComboBox(this)),
      contrast_(new QCheckBox(this)),
      hints_(new QPushButton(this)),
      close_(new QPushButton(this)) {
    setObjectName("preferences");
    language_->setObjectName("language");
    lengths_->setObjectName("lengths");
    text_size_->setObjectName("text_size");
    contrast_->setObjectName("contrast");
    hints_->setObjectName("hints_again");
    close_->setObjectName("close");
    close_->setDefault(true);
    hints_->setAutoDefault(false);
    auto* form = new QFormLayout;
    form->setHorizontalSpacing(14);
    form->setVerticalSpacing(12);
    form->setRowWrapPolicy(QFormLayout::WrapLongRows);
    form->addRow(language_name_, language_);
    form->addRow(lengths_name_, lengths_);
    form->addRow(text_size_name_, text_size_);
    form->addRow(contrast_);
    language_name_->setBuddy(language_);
    lengths_name_->setBuddy(lengths_);
    text_size_name_->setBuddy(text_size_);
    auto* below = new QHBoxLayout;
    below->addWidget(hints_);
    below->addStretch(1);
    below->addWidget(close_);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(22, 20, 22, 18);
    column->setSpacing(22);
    column->addLayout(form);
    column->addLayout(below);
    column->setSizeConstraint(QLayout::SetFixedSize);  // as large as its words, in any language and size

    connect(language_, qOverload<int>(&QComboBox::activated), this,
            [this](int row) { preferences_.set_language(static_cast<Preferences::Language>(row)); });
    connect(lengths_, qOverload<int>(&QComboBox::activated), this,
            [this](int row) { preferences_.set_lengths(static_cast<Lengths>(row)); });
    connect(text_size_, qOverload<int>(&QComboBox::activated), this,
            [this](int row) { preferences_.set_text_size(Preferences::text_sizes.at(static_cast<std::size_t>(row))); });
    connect(contrast_, &QCheckBox::toggled, &preferences_, &Preferences::set_high_contrast);
    connect(hints_, &QPushButton::clicked, this, [this] { preferences_.set_hints_seen(false); });
    connect(close_, &QPushButton::clicked, this, &QDialog::accept);
    connect(&preferences_, &Preferences::changed, this, &PreferencesDialog::fill);
    retranslate();
}

void PreferencesDialog::changeEvent(QEvent* event) {
    QDialog::changeEvent(event);
    if (event->type() == QEvent::LanguageChange || event->type() == QEvent::FontChange) retranslate();
}

void PreferencesDialog::retranslate() {
    setWindowTitle(tr("Preferences"));
    language_name_->setText(tr("&Language"));
    lengths_name_->setText(tr("&Widths"));
    text_size_name_->setText(tr("Size of the l&etters"));
    contrast_->setText(tr("&Strong contrast: black on white"));
    contrast_->setToolTip(tr("For bright sun and for eyes that need it"));
    hints_->setText(tr("Show the &hints again"));
    close_->setText(tr("&Close"));
    for (const auto& [box, name] :
         {std::pair(language_, language_name_), {lengths_, lengths_name_}, {text_size_, text_size_name_}}) {
        box->setAccessibleName(name->text().remove('&'));
        name->setMinimumWidth(fontMetrics().horizontalAdvance(name->text()) + 8);  // its own hint is short by a pixel or two
        box->clear();
    }
    language_->addItem(tr("As on this computer"));
    // Each in its own words, for whoever cannot read the other.
    language_->addItem(QStringLiteral("English"));
    language_->addItem(QStringLiteral("Español"));
    lengths_->addItem(tr("Inches, and millimeters beside them"));
    lengths_->addItem(tr("Millimeters only"));
    for (const int percent : Preferences::text_sizes) text_size_->addItem(tr("%1 percent").arg(percent));
    fill();
}

void PreferencesDialog::fill() {
    const QSignalBlocker quiet(contrast_);
    language_->setCurrentIndex(static_cast<int>(preferences_.language()));
    lengths_->setCurrentIndex(static_cast<int>(preferences_.lengths()));
    const auto& sizes = Preferences::text_sizes;
    text_size_->setCurrentIndex(
        static_cast<int>(std::find(sizes.begin(), sizes.end(), preferences_.text_size()) - sizes.begin()));
    contrast_->setChecked(preferences_.high_contrast());
    hints_->setEnabled(preferences_.hints_seen());
}

}  // namespace seamward::viewer
