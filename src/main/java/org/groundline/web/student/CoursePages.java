package org.groundline.web.student;

import io.javalin.http.Context;

import org.groundline.bank.Module;
import org.groundline.reading.Reading;
import org.groundline.record.ModuleRecord;
import org.groundline.record.StudentRecord;
import org.groundline.school.Action;
import org.groundline.school.Actor;
import org.groundline.sitting.Opening;
import org.groundline.sitting.Practices.Progress;
import org.groundline.sitting.Result;
import org.groundline.sitting.Sitting;
import org.groundline.web.Doors;
import org.groundline.web.brief.BriefLink;
import org.groundline.web.brief.BriefWords;
import org.groundline.web.request.Frame;
import org.groundline.web.request.Routes;
import org.groundline.web.request.Times;
import org.groundline.web.student.CoursePage.OpenTest;
import org.groundline.web.student.CoursePage.PastTest;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;

/// A student's own course.
final class CoursePages {
    private final Doors doors;

    CoursePages(Doors doors) {
        this.doors = doors;
    }

    void addTo(Routes routes) {
        routes.get("/{school}/course", Action.READ_COURSE, this::show);
    }

    private void show(Context ctx, Actor actor) {
        CourseWords words = CourseWords.in(actor.school().language());
        Frame frame = Frame.of(ctx, actor, words.yourCourse());
        ctx.render("student/course.jte", Map.of("page", page(actor, frame, words)));
    }

    private CoursePage page(Actor actor, Frame frame, CourseWords words) {
        StudentRecord record = doors.records().getRecord(actor, actor.subject());
        List<Result> results = doors.sittings().listResults(actor, actor.subject());
        boolean practises = actor.mayAtAll(Action.PRACTISE);
        Map<String, Progress> practised = practises ? doors.practices().progress(actor) : Map.of();
        Map<String, Reading> readings = doors.readings().listOwn(actor);
        BriefWords briefWords = BriefWords.in(actor.school().language());
        Times times = Times.of(actor.school());
        var parts =
                new ModuleParts(
                        words,
                        times,
                        subject -> doors.people().getPerson(actor.school(), subject).name(),
                        topic -> BriefLink.to(topic, readings, frame.root(), briefWords, times),
                        practised,
                        practises ? frame.root() + "/practice/" : "");
        boolean sits = actor.mayAtAll(Action.SIT);
        return new CoursePage(
                frame,
                words,
                doors.bank().course().title(),
                lead(words, record),
                sits,
                sits ? new Tests(actor, frame.root(), words).now(results) : List.of(),
                parts.of(record.modules()),
                past(actor, frame.root(), words, results));
    }

    private static String lead(CourseWords words, StudentRecord record) {
        List<ModuleRecord> modules = record.modules();
        int signed = (int) modules.stream().filter(m -> m.standing().isPresent()).count();
        return words.lead(signed, modules.size());
    }

    private List<PastTest> past(Actor actor, String root, CourseWords words, List<Result> results) {
        Times times = Times.of(actor.school());
        return results.stream()
                .map(
                        r -> {
                            var marks = new Marks(r.hundredths(), r.possible());
                            Sitting.Facts facts = r.sitting().facts();
                            return new PastTest(
                                    moduleTitle(facts.scope()),
                                    root + "/sittings/" + facts.id() + "/result",
                                    times.day(r.sitting().at()),
                                    words.marks(
                                            marks.gained(), marks.all(), marks.share(r.rules())),
                                    r.passed(),
                                    r.passed() ? words.passed() : words.failed());
                        })
                .toList();
    }

    private String moduleTitle(String module) {
        return doors.bank().course().findModule(module).map(Module::title).orElse(module);
    }

    /// The tests that concern a student now.
    private final class Tests {
        private final Actor actor;
        private final String root;
        private final CourseWords words;
        private final Times times;

        Tests(Actor actor, String root, CourseWords words) {
            this.actor = actor;
            this.root = root;
            this.words = words;
            this.times = Times.of(actor.school());
        }

        List<OpenTest> now(List<Result> results) {
            Set<UUID> begun = new HashSet<>();
            results.forEach(r -> r.sitting().facts().opening().ifPresent(begun::add));
            List<OpenTest> tests = new ArrayList<>();
            for (Sitting.Open open : doors.sittings().listOpen(actor)) {
                open.facts().opening().ifPresent(begun::add);
                tests.add(goOn(open));
            }
            Instant now = doors.foundation().now();
            doors.openings().listMine(actor).stream()
                    .filter(o -> o.isOpenAt(now) && !begun.contains(o.id()))
                    .map(this::begin)
                    .forEach(tests::add);
            return tests;
        }

        private OpenTest goOn(Sitting.Open open) {
            return new OpenTest(
                    moduleTitle(open.facts().scope()),
                    open.deadline().map(d -> words.running(times.time(d))).orElse(""),
                    root + "/sittings/" + open.facts().id(),
                    words.goOn());
        }

        private OpenTest begin(Opening opening) {
            return new OpenTest(
                    moduleTitle(opening.blueprint().module()),
                    words.mayBeBegun(times.dayAndTime(opening.closesAt())),
                    root + "/tests/" + opening.id(),
                    words.readTheRules());
        }
    }
}
