// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/space_dialog.h"

#include <QDialogButtonBox>
#include <QFormLayout>
#include <QPushButton>

namespace seamward::viewer {

SpaceDialog::SpaceDialog(QWidget* parent)
    : QDialog(parent), name_(new QLineEdit(this)), kind_(new QComboBox(this)), source_(new QCheckBox(this)) {
    setWindowTitle(tr("New space"));
    name_->setObjectName("space_name");
    name_->setMinimumWidth(240);
    name_->setPlaceholderText(tr("such as pantry, or chase behind the tub"));
    kind_->setObjectName("space_kind");
    kind_->addItem(tr("a room that people use"), static_cast<int>(SpaceKind::living));
    kind_->addItem(tr("inside of a wall, an attic, a shaft"), static_cast<int>(SpaceKind::cavity));
    kind_->addItem(tr("a garage or a porch"), static_cast<int>(SpaceKind::attached));
    kind_->addItem(tr("outdoors"), static_cast<int>(SpaceKind::outdoors));
    kind_->addItem(tr("where animals live, as in a block wall"), static_cast<int>(SpaceKind::harborage));
    source_->setText(tr("Animals &may already be there"));
    source_->setToolTip(tr("Such as a dry floor drain or a neighbor's unit: ways in start there too."));
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, this);
    buttons->button(QDialogButtonBox::Ok)->setText(tr("&Add"));
    buttons->button(QDialogButtonBox::Cancel)->setText(tr("Cancel"));
    const auto allow = [this, buttons] { buttons->button(QDialogButtonBox::Ok)->setEnabled(!name_->text().trimmed().isEmpty()); };
    connect(name_, &QLineEdit::textChanged, this, allow);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    allow();
    auto* form = new QFormLayout(this);
    form->setContentsMargins(18, 16, 18, 14);
    form->setSpacing(10);
    form->addRow(tr("&Name"), name_);
    form->addRow(tr("&What it is"), kind_);
    form->addRow(QString(), source_);
    form->addRow(buttons);
}

AddSpace SpaceDialog::space() const {
    AddSpace space;
    space.name = name_->text().trimmed().toStdString();
    space.kind = static_cast<SpaceKind>(kind_->currentData().toInt());
    space.source = source_->isChecked();
    return space;
}

}  // namespace seamward::viewer
