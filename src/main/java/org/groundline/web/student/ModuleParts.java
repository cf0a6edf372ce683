package org.groundline.web.student;

import org.groundline.bank.Topic;
import org.groundline.database.SubjectId;
import org.groundline.record.Attempt;
import org.groundline.record.ModuleRecord;
import org.groundline.record.ModuleState;
import org.groundline.record.ShownDemonstration;
import org.groundline.record.TalkItem;
import org.groundline.sitting.Practices.Progress;
import org.groundline.web.brief.BriefLink;
import org.groundline.web.request.Markdown;
import org.groundline.web.request.Times;
import org.groundline.web.student.CoursePage.Line;
import org.groundline.web.student.CoursePage.ModulePart;
import org.groundline.web.student.CoursePage.TopicLine;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/// Says in words where a student stands in each module.
///
/// @param names who somebody is
/// @param briefs the way to a topic's brief
/// @param practised by topic
/// @param practice where topics are practised, up to the topic's id; empty for who may not
record ModuleParts(
        CourseWords words,
        Times times,
        Function<SubjectId, String> names,
        Function<Topic, BriefLink> briefs,
        Map<String, Progress> practised,
        String practice) {
    /// The language of the syllabus, in which demonstrations are described.
    private static final String SYLLABUS = "en";

    private static final String MET = "met";
    private static final String MISSING = "missing";
    private static final String TALK = "talk";

    List<ModulePart> of(List<ModuleRecord> modules) {
        List<ModulePart> parts = new ArrayList<>();
        for (ModuleRecord module : modules) {
            parts.add(of(module, parts.size() + 1));
        }
        return parts;
    }

    private ModulePart of(ModuleRecord module, int number) {
        return new ModulePart(
                module.module().id(),
                number,
                module.standing().isPresent(),
                module.module().title(),
                sign(module.state()),
                inWords(module),
                module.module().topics().stream().map(this::topic).toList(),
                requirements(module));
    }

    private static String sign(ModuleState state) {
        return switch (state) {
            case ModuleState.SignedOff signedOff -> "signed";
            case ModuleState.Ready ready -> "ready";
            case ModuleState.Sitting sitting -> "begun";
            case ModuleState.Passed passed -> "begun";
            case ModuleState.NotPassed notPassed -> MISSING;
            case ModuleState.NotBegun notBegun -> "untouched";
        };
    }

    private String inWords(ModuleRecord module) {
        return switch (module.state()) {
            case ModuleState.SignedOff(var at) ->
                    words.signedOff(
                            times.day(at),
                            names.apply(module.standing().orElseThrow().instructor()));
            case ModuleState.Ready() -> words.ready();
            case ModuleState.Sitting() -> words.beingSat();
            case ModuleState.Passed(int talks, int demonstrations) ->
                    words.passedSomeMissing(talks, demonstrations);
            case ModuleState.NotPassed(int hundredths, int possible, int passMark) -> {
                var marks = new Marks(hundredths, possible);
                yield words.notPassed(marks.gained(), marks.all());
            }
            case ModuleState.NotBegun() -> words.notBegun();
        };
    }

    private TopicLine topic(Topic topic) {
        Progress progress = practised.getOrDefault(topic.id(), new Progress(0, 0));
        String address = practice.isEmpty() ? "" : practice + topic.id();
        return new TopicLine(
                topic.title(), address, briefs.apply(topic), progress.answered(), progress.right());
    }

    private List<Line> requirements(ModuleRecord module) {
        List<Line> lines = new ArrayList<>();
        lines.add(test(module));
        module.toTalkThrough().forEach(talk -> lines.add(talk(talk)));
        module.demonstrations().forEach(shown -> lines.add(demonstration(shown)));
        return lines;
    }

    private Line test(ModuleRecord module) {
        if (module.basis().isPresent()) {
            Attempt passed = module.basis().get();
            var marks = new Marks(passed.hundredths(), passed.possible());
            String day = times.day(passed.handedInAt());
            return met(words.testPassed(day, marks.gained(), marks.all()));
        }
        return line(MISSING, words.missing(), words.testToPass(), "");
    }

    private Line talk(TalkItem talk) {
        return new Line(
                TALK,
                words.toTalkOver(),
                Markdown.inline(words.askInstructor()),
                Markdown.inline(talk.shown().stem()),
                talk.language());
    }

    private Line demonstration(ShownDemonstration shown) {
        String title = shown.demonstration().title();
        return shown.observed()
                .map(o -> met(words.observed(title, times.day(o.at()))))
                .orElseGet(
                        () ->
                                line(
                                        MISSING,
                                        words.missing(),
                                        words.toShow(title),
                                        shown.demonstration().criteria()));
    }

    private Line met(String text) {
        return line(MET, words.met(), text, "");
    }

    private static Line line(String state, String stateWords, String text, String detail) {
        return new Line(
                state, stateWords, Markdown.inline(text), Markdown.inline(detail), SYLLABUS);
    }
}
