<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>model_search</name>
    <message numerus="yes">
        <source>None of the file&apos;s %n part(s) of the class %1 came through.</source>
        <translation>
            <numerusform>The file&apos;s only part of the class %1 did not come through.</numerusform>
            <numerusform>None of the file&apos;s %n parts of the class %1 came through.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Of the file&apos;s %n part(s) of the class %1, only %2 came through.</source>
        <translation>
            <numerusform>Of the file&apos;s one part of the class %1, only %2 came through.</numerusform>
            <numerusform>Of the file&apos;s %n parts of the class %1, only %2 came through.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>model_words</name>
    <message numerus="yes">
        <source>This survey was found in a builder&apos;s model, which draws %n gap(s).</source>
        <translation>
            <numerusform>This survey was found in a builder&apos;s model, which draws %n gap.</numerusform>
            <numerusform>This survey was found in a builder&apos;s model, which draws %n gaps.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n joint(s) between its parts are drawn shut, and nobody has measured them.</source>
        <translation>
            <numerusform>%n joint between its parts is drawn shut, and nobody has measured it.</numerusform>
            <numerusform>%n joints between its parts are drawn shut, and nobody has measured them.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>new_house</name>
    <message numerus="yes">
        <source>%n bedroom(s)</source>
        <translation>
            <numerusform>%n bedroom</numerusform>
            <numerusform>%n bedrooms</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n bath(s)</source>
        <translation>
            <numerusform>%n bath</numerusform>
            <numerusform>%n baths</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>seamward::viewer::ClosingsHead</name>
    <message numerus="yes">
        <source>%n gaps ticked</source>
        <translation>
            <numerusform>%n gap ticked</numerusform>
            <numerusform>%n gaps ticked</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Whole plan: %n gaps, %1, about %2, before call-out, overhead, tax and whole packs.</source>
        <translation>
            <numerusform>Whole plan: %n gap, %1, about %2, before call-out, overhead, tax and whole packs.</numerusform>
            <numerusform>Whole plan: %n gaps, %1, about %2, before call-out, overhead, tax and whole packs.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Whole plan: %n gaps, %1, before call-out, overhead, tax and whole packs.</source>
        <translation>
            <numerusform>Whole plan: %n gap, %1, before call-out, overhead, tax and whole packs.</numerusform>
            <numerusform>Whole plan: %n gaps, %1, before call-out, overhead, tax and whole packs.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>seamward::viewer::ClosingsList</name>
    <message numerus="yes">
        <source>Before the work (%n)</source>
        <translation>
            <numerusform>Before the work (%n)</numerusform>
            <numerusform>Before the work (%n)</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Not needed for these animals (%n)</source>
        <translation>
            <numerusform>Not needed for these animals (%n)</numerusform>
            <numerusform>Not needed for these animals (%n)</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Can be closed (%n)</source>
        <translation>
            <numerusform>Can be closed (%n)</numerusform>
            <numerusform>Can be closed (%n)</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>seamward::viewer::DrillPage</name>
    <message numerus="yes">
        <source>Nothing is said of %n place(s).</source>
        <translation>
            <numerusform>Nothing is said of one place.</numerusform>
            <numerusform>Nothing is said of %n places.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>seamward::viewer::GapList</name>
    <message numerus="yes">
        <source>%n gap(s)</source>
        <translation>
            <numerusform>%n gap</numerusform>
            <numerusform>%n gaps</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n not measured</source>
        <translation>
            <numerusform>%n not measured</numerusform>
            <numerusform>%n not measured</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Also %n gap(s) between two places indoors</source>
        <translation>
            <numerusform>Also %n gap between two places indoors</numerusform>
            <numerusform>Also %n gaps between two places indoors</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>seamward::viewer::HelpPages</name>
    <message numerus="yes">
        <source>On %n page(s)</source>
        <translation>
            <numerusform>On %n page</numerusform>
            <numerusform>On %n pages</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>seamward::viewer::ModelForm</name>
    <message numerus="yes">
        <source>%n space(s)</source>
        <translation>
            <numerusform>%n space</numerusform>
            <numerusform>%n spaces</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Found: %n gap(s) between %1.</source>
        <comment>%1: so many spaces</comment>
        <translation>
            <numerusform>Found: %n gap between %1.</numerusform>
            <numerusform>Found: %n gaps between %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Looked at: %n part(s) of the model, for gaps from %1 to %2.</source>
        <translation>
            <numerusform>Looked at: %n part of the model, for gaps from %1 to %2.</numerusform>
            <numerusform>Looked at: %n parts of the model, for gaps from %1 to %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n joint(s) between parts are drawn shut, and nobody has measured them. They stand in the survey with no width.</source>
        <translation>
            <numerusform>%n joint between parts is drawn shut, and nobody has measured it. It stands in the survey with no width.</numerusform>
            <numerusform>%n joints between parts are drawn shut, and nobody has measured them. They stand in the survey with no width.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>seamward::viewer::NewHouseForm</name>
    <message numerus="yes">
        <source>Not all answers can be used yet; see beside them.</source>
        <translation>
            <numerusform>An answer cannot be used yet; see beside it.</numerusform>
            <numerusform>%n answers cannot be used yet; see beside them.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>seamward::viewer::OutlineSketch</name>
    <message numerus="yes">
        <source>An outline of %n wall(s).</source>
        <translation>
            <numerusform>An outline of %n wall.</numerusform>
            <numerusform>An outline of %n walls.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>seamward::viewer::WaysPanel</name>
    <message numerus="yes">
        <source>%n remark(s) on this survey, under the steps</source>
        <translation>
            <numerusform>One remark on this survey, under the steps</numerusform>
            <numerusform>%n remarks on this survey, under the steps</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The %n widest way(s) in, by smallest gap</source>
        <translation>
            <numerusform>The widest way in, by smallest gap</numerusform>
            <numerusform>The %n widest ways in, by smallest gap</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The %n widest way(s) in for %1, by smallest gap</source>
        <translation>
            <numerusform>The widest way in for %1, by smallest gap</numerusform>
            <numerusform>The %n widest ways in for %1, by smallest gap</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The %n widest way(s) into %1, by smallest gap</source>
        <translation>
            <numerusform>The widest way into %1, by smallest gap</numerusform>
            <numerusform>The %n widest ways into %1, by smallest gap</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The %n widest way(s) in for %1 into %2, by smallest gap</source>
        <translation>
            <numerusform>The widest way in for %1 into %2, by smallest gap</numerusform>
            <numerusform>The %n widest ways in for %1 into %2, by smallest gap</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n way(s) in, by smallest gap</source>
        <translation>
            <numerusform>One way in</numerusform>
            <numerusform>%n ways in, by smallest gap</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n way(s) in for %1, by smallest gap</source>
        <translation>
            <numerusform>One way in for %1</numerusform>
            <numerusform>%n ways in for %1, by smallest gap</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n way(s) into %1, by smallest gap</source>
        <translation>
            <numerusform>One way into %1</numerusform>
            <numerusform>%n ways into %1, by smallest gap</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n way(s) in for %1 into %2, by smallest gap</source>
        <translation>
            <numerusform>One way in for %1 into %2</numerusform>
            <numerusform>%n ways in for %1 into %2, by smallest gap</numerusform>
        </translation>
    </message>
</context>
</TS>
