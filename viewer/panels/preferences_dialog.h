// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QCheckBox>
#include <QComboBox>
#include <QDialog>
#include <QLabel>
#include <QPushButton>

#include "document/preferences.h"

namespace seamward::viewer {

/// Language, lengths, size of the letters and contrast. What is chosen holds at once.
class PreferencesDialog : public QDialog {
    Q_OBJECT

public:
    explicit PreferencesDialog(Preferences& preferences, QWidget* parent = nullptr);

protected:
    void changeEvent(QEvent* event) override;

private:
    void retranslate();
    /// Shows what the preferences say.
    void fill();

    Preferences& preferences_;
    QLabel* language_name_;
    QComboBox* language_;
    QLabel* lengths_name_;
    QComboBox* lengths_;
    QLabel* text_size_name_;
    QComboBox* text_size_;
    QCheckBox* contrast_;
    QPushButton* hints_;
    QPushButton* close_;
};

}  // namespace seamward::viewer
