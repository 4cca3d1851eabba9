// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/fault_box.h"

#include <QDialog>
#include <QDialogButtonBox>
#include <QLabel>
#include <QPlainTextEdit>
#include <QVBoxLayout>

namespace seamward::viewer {

void show_fault(QWidget& parent, const OpenFault& fault) {
    auto* box = new QDialog(&parent);
    box->setObjectName("fault");
    box->setAttribute(Qt::WA_DeleteOnClose);
    box->setWindowTitle(QObject::tr("Seamward"));
    box->resize(720, 320);
    auto* heading = new QLabel(fault.in_input ? QObject::tr("This cannot be opened. What is wrong, and where:")
                                              : QObject::tr("The program failed. What it says:"));
    heading->setWordWrap(true);
    auto* text = new QPlainTextEdit(fault.text);
    text->setObjectName("fault_text");
    text->setReadOnly(true);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    QObject::connect(buttons, &QDialogButtonBox::rejected, box, &QDialog::reject);
    auto* column = new QVBoxLayout(box);
    column->setContentsMargins(18, 16, 18, 16);
    column->setSpacing(12);
    column->addWidget(heading);
    column->addWidget(text, 1);
    column->addWidget(buttons);
    box->open();
}

}  // namespace seamward::viewer
