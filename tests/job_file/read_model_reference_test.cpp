// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include "job_file/job.h"
#include "tests/support/cottage.h"
#include "tests/support/diagnostic_matchers.h"
#include "tests/support/marked_text.h"
#include "tests/support/scratch_folder.h"

namespace seamward::test {
namespace {

class JobOnAModel : public testing::Test {
protected:
    JobOnAModel() {
        folder_.write("model.ifc", "ISO-10303-21;");
        folder_.write("model.txt", "text");
        folder_.write("house.yaml", cottage);
        std::filesystem::create_directory(folder_.path() / "folder.obj");
    }
    /// A job with one fault, at its caret.
    void expect_fault(const std::string& marked_text, std::string_view what, std::string_view mend) const {
        const MarkedText marked("seamward: 1\n" + marked_text);
        const auto path = folder_.write("job.yaml", marked.text);
        const auto faults = faults_of([&] { (void)read_job(path, RunContext()); });
        EXPECT_TRUE(only_fault(faults, marked.places.at(0), what, mend)) << marked_text;
        for (const Diagnostic& fault : faults) EXPECT_EQ(fault.file, path.string());
    }
    const ScratchFolder& folder() const { return folder_; }

private:
    ScratchFolder folder_;
};

TEST_F(JobOnAModel, KnowsItsModel) {
    const auto path = folder().write("job.yaml", "seamward: 1\nmodel: {file: model.ifc, unit: mm, up: z}\n");
    const Job job = read_job(path, RunContext());
    ASSERT_TRUE(job.model.has_value());
    EXPECT_EQ(job.model->file, "model.ifc");
    EXPECT_EQ(job.model->path, folder().path() / "model.ifc");
    EXPECT_EQ(job.model->unit, ModelUnit::mm);
    EXPECT_EQ(job.model->up, UpAxis::z);
    EXPECT_FALSE(read_job(folder().write("job.yaml", "seamward: 1\nmodel:\n"), RunContext()).model.has_value());
}

TEST_F(JobOnAModel, Faults) {
    expect_fault("model: {file: ^modle.ifc}\n", (folder().path() / "modle.ifc").string(), "from the folder of the job file");
    expect_fault("model: {file: ^model.txt}\n", (folder().path() / "model.txt").string() + " is of no kind of 3D file", ".ifc");
    expect_fault("model: {file: ^folder.obj}\n", "is a folder, not a 3D file", "name a file in it");
    expect_fault("model: ^{unit: mm}\n", "model has no file", "add file: ...");
    expect_fault("model: {file: model.ifc, unit: ^furlong}\n", "unit", "mm");
    expect_fault("model: {file: model.ifc, up: ^w}\n", "up", "x, y, z");
    expect_fault("model: {file: model.ifc, ^units: mm}\n", "unknown key \"units\"", "did you mean unit?");
    expect_fault("model: ^model.ifc\n", "model", "");
    expect_fault("house: house.yaml\nmodel: ^{file: model.ifc}\n", "not both", "remove house or model");
}

}  // namespace
}  // namespace seamward::test
