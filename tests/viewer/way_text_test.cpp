// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/way_text.h"

#include <gtest/gtest.h>

namespace seamward::viewer::test {
namespace {

const char* const text = R"(seamward: 1
spaces: [{id: yard, kind: outdoors}, {id: closet, kind: attached}, {id: den, kind: living}]
pests: [{id: big, slit: 6 mm, hole: 9 mm}, {id: mid, slit: 4.1 mm, hole: 9 mm}, {id: small, slit: 2 mm, hole: 3 mm}]
gaps:
  - id: louver
    between: [yard, closet]
    slot: {width: 4 mm, length: 200 mm}
    duty: combustion-air
    evidence: {how: assumed, plus_minus: 0.2 mm}
  - id: flue
    between: [closet, den]
    slot: {width: 7 mm, length: 200 mm}
    duty: exhaust
    closing: {never: "smoke <has> to leave"}
  - {id: hatch, between: [yard, den], slot: {width: 3 mm, length: 1 m}, duty: operable, evidence: {how: measured}}
)";

class WayText : public testing::Test {
protected:
    Job job = parse_job(text, "job.yaml");
    Trace ways = trace(job.survey, {}, RunContext());
};

TEST_F(WayText, SaysWhatStaysOpen) {
    EXPECT_EQ(stays_open_text(job.survey.gaps[0]), "stays open: combustion air");
    EXPECT_EQ(stays_open_text(job.survey.gaps[1]), "never close: smoke <has> to leave");
    EXPECT_EQ(stays_open_text(job.survey.gaps[2]), "");
    EXPECT_TRUE(gap_text(job.survey.gaps[1]).endsWith("\nnever close: smoke <has> to leave"));
    const QString steps = steps_html(job, ways.paths.at(0), 0);
    EXPECT_TRUE(steps.contains("stays open: combustion air"));
    EXPECT_TRUE(steps.contains("never close: smoke &lt;has&gt; to leave"));
    EXPECT_TRUE(row_text(job.survey, ways.paths[0], 0).endsWith("louver, stays open: combustion air"));
    EXPECT_FALSE(steps_html(job, ways.paths.at(1), 1).contains("open: "));  // of a hatch; "Open to:" is another matter
}

TEST_F(WayText, SaysWhatIsAssumed) {
    EXPECT_EQ(gap_width_text(job.survey.gaps[0]), "5/32 in (4 mm), assumed");
    EXPECT_FALSE(gap_width_text(job.survey.gaps[1]).contains("assumed"));  // the file does not say
    EXPECT_FALSE(gap_width_text(job.survey.gaps[2]).contains("assumed"));
    EXPECT_TRUE(row_text(job.survey, ways.paths[0], 0).contains("5/32 in (4 mm), assumed"));
}

TEST_F(WayText, SaysWhatIsPerhapsOpen) {
    EXPECT_EQ(open_to_text(job, ways.paths[0]), "Open to: small; perhaps mid, if gaps are as wide as they may be.");
    EXPECT_EQ(open_to_text(job, ways.paths[1]), "Open to: small.");
    job.pests.resize(2);
    EXPECT_EQ(open_to_text(job, ways.paths[0]), "Open to: perhaps mid, if gaps are as wide as they may be.");
    EXPECT_EQ(open_to_text(job, ways.paths[1]), "Open to none of this job's animals.");
    EXPECT_FALSE(steps_html(job, ways.paths[0], 0).contains("measured"));
}

TEST(RemarksHtml, IsEmptyWithoutRemarks) {
    EXPECT_EQ(remarks_html({}), "");
    EXPECT_TRUE(remarks_html({"a <b>"}).contains("a &lt;b&gt;."));
}

}  // namespace
}  // namespace seamward::viewer::test
