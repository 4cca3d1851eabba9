// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QButtonGroup>
#include <QCheckBox>
#include <QComboBox>
#include <QDialog>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QScrollArea>
#include <QVBoxLayout>
#include <vector>

#include "document/job_document.h"
#include "document/new_house_files.h"
#include "panels/form_field.h"
#include "panels/outline_sketch.h"

namespace seamward::viewer {

/// Asks what kind of house it is, shows its outline as it is typed, and writes a house file and a job file into a folder.
class NewHouseForm : public QDialog {
    Q_OBJECT

public:
    explicit NewHouseForm(QWidget* parent = nullptr);

    void set_folder(const QString& folder) { folder_->setText(folder); }
    /// The house as it is typed now; lengths that cannot be read are as they were before.
    [[nodiscard]] const NewHouse& house() const { return house_; }
    /// Writes both files; job_wanted() follows, or what is wrong is shown.
    void make();
    /// All answers as they are at first, but the folder, which is that of the last house.
    void begin_afresh();

signals:
    void job_wanted(const QString& path);

protected:
    void changeEvent(QEvent* event) override;

private:
    /// A typed length.
    struct Size {
        QLineEdit* edit;
        FormField* field;
        double NewHouse::*into;
        NewHouseFault::Of of;
    };
    struct Choice {
        QComboBox* box;
        FormField* field;
    };

    [[nodiscard]] QWidget* make_questions();
    void add_shapes(QWidget* page, QVBoxLayout* column);
    void add_choices(QWidget* page, QVBoxLayout* column);
    void add_animals(QWidget* page, QVBoxLayout* column);
    [[nodiscard]] QLayout* make_foot();
    void choose_folder();
    void read();
    void read_corners();
    void show_faults();
    [[nodiscard]] FormField* field_of(NewHouseFault::Of of) const;
    void set_busy(bool busy);
    void fail(const QString& of_folder, const OpenFault& fault);
    void retranslate();

    QScrollArea* questions_;
    NewHouse house_;
    std::vector<std::pair<FormField*, QString>> unread_;  ///< what was typed and cannot be read
    QLineEdit *name_, *address_, *folder_;
    QPlainTextEdit* corners_;
    FormField *name_field_, *address_field_, *folder_field_, *corners_field_;
    std::vector<Size> sizes_;
    QButtonGroup* shapes_;
    Choice stories_{}, garage_{}, bedrooms_{}, baths_{}, cladding_{}, foundation_{}, roof_{};
    std::vector<std::pair<QCheckBox*, std::string>> animals_;
    QLabel *shape_heading_, *build_heading_, *animals_heading_, *files_, *promise_;
    OutlineSketch* sketch_;
    QComboBox* floor_;  ///< whose rooms the sketch shows
    FaultLabel* fault_;
    QPushButton *make_, *cancel_, *afresh_;
    bool tried_ = false;  ///< what is still empty is told from then on
    bool busy_ = false;
    NewestTask task_;  ///< last, so that its thread ends before the rest goes
};

}  // namespace seamward::viewer
