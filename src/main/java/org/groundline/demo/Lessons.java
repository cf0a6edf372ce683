package org.groundline.demo;

import org.groundline.bank.Topic;
import org.groundline.record.ModuleState;
import org.groundline.sitting.Openings.NewOpening;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.util.List;
import java.util.UUID;
import java.util.function.Predicate;

/// What happens to the students of one intake, entered into the agenda day by day.
final class Lessons {
    private static final LocalTime EVENING = LocalTime.of(19, 10);
    private static final LocalTime TEST = LocalTime.of(10, 0);
    private static final LocalTime ROUND = LocalTime.of(15, 30);
    private static final Duration SETTLING = Duration.ofMinutes(10);
    private static final Duration EVERYBODY_WRITES = Duration.ofMinutes(20);
    private static final Duration WINDOW = Duration.ofHours(3);
    private static final int SECONDS_A_VISIT = 260;
    private static final int SECONDS_APART = 25;
    private static final double DILIGENT = 0.6;
    private static final double STUDY = 0.2;
    private static final double STUDY_CONVINCES = 0.1;
    private static final double STUDY_AGAIN = 0.5;
    private static final double STUDY_AGAIN_CONVINCES = 0.35;

    private final World world;
    private final Group group;

    Lessons(World world, Group group) {
        this.world = world;
        this.group = group;
    }

    /// On an evening the diligent practise a topic of a module, each another one.
    void practise(int daysBefore, String module) {
        studentsFrom(
                world.calendar().at(daysBefore, EVENING),
                student -> student.chance().of("evening " + daysBefore).happens(DILIGENT),
                (student, place) -> practise(student, module, place));
    }

    private void practise(Student student, String module, int place) {
        List<Topic> topics = world.bank().course().findModule(module).orElseThrow().topics();
        student.mind()
                .study(STUDY, STUDY_CONVINCES, student.chance().of("study " + world.daysBefore()));
        Evening.begin(world, student, topics.get(place % topics.size()).id());
    }

    /// In the morning a test is opened and those concerned sit it together.
    ///
    /// @param opener e-mail address
    void sit(int daysBefore, String module, String opener, Predicate<Student> concerned) {
        Instant at = world.calendar().at(daysBefore, TEST);
        world.agenda().enter(at, () -> sitTogether(open(module, opener, "Classroom"), concerned));
        world.agenda().enter(at.plus(EVERYBODY_WRITES), world.analyse());
        world.agenda().enter(at.plus(WINDOW), world.analyse());
    }

    private void sitTogether(UUID opening, Predicate<Student> concerned) {
        studentsFrom(
                world.now().plus(SETTLING),
                concerned,
                (student, place) -> TestSitting.begin(world, student, opening));
    }

    /// As [#sit], after some days on which those concerned went back to their books.
    void sitAgain(int daysBefore, String module, String opener) {
        Predicate<Student> concerned = student -> hasNotPassed(student, module, opener);
        world.agenda()
                .enter(
                        world.calendar().at(daysBefore, TEST).minusSeconds(1),
                        () ->
                                group.students().stream()
                                        .filter(concerned)
                                        .forEach(this::studyAgain));
        sit(daysBefore, module, opener, concerned);
    }

    private void studyAgain(Student student) {
        student.mind()
                .study(
                        STUDY_AGAIN,
                        STUDY_AGAIN_CONVINCES,
                        student.chance().of("study again " + world.daysBefore()));
    }

    private boolean hasNotPassed(Student student, String module, String staff) {
        return world.doors()
                        .records()
                        .getRecord(world.as(staff), student.subject())
                        .getModule(module)
                        .state()
                instanceof ModuleState.NotPassed;
    }

    /// Opens a test now and returns its id.
    UUID open(String module, String opener, String place) {
        var wish = new NewOpening(module, group.intake(), WINDOW, place);
        return world.doors().openings().open(world.as(opener), wish).id();
    }

    /// In the afternoon an instructor goes round.
    void round(int daysBefore, Round round) {
        Instant begin = world.calendar().at(daysBefore, ROUND);
        world.agenda()
                .enter(
                        begin,
                        () ->
                                oneByOne(
                                        begin,
                                        SECONDS_A_VISIT,
                                        group.students(),
                                        (student, place) -> round.visit(student)));
    }

    /// Students do something, one beginning after the other. Who is concerned is known only then.
    private void studentsFrom(Instant begin, Predicate<Student> concerned, Deed deed) {
        world.agenda()
                .enter(
                        begin,
                        () -> {
                            var students = group.students().stream().filter(concerned).toList();
                            oneByOne(begin, SECONDS_APART, students, deed);
                        });
    }

    private void oneByOne(Instant begin, int secondsApart, List<Student> students, Deed deed) {
        for (int i = 0; i < students.size(); i++) {
            int place = i;
            world.agenda()
                    .enter(
                            begin.plusSeconds((long) secondsApart * i),
                            () -> deed.of(students.get(place), place));
        }
    }

    private interface Deed {
        void of(Student student, int place);
    }
}
