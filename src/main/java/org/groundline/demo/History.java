package org.groundline.demo;

import org.groundline.record.SignOff;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;

/// The ten weeks of the school: what is taught, tested, talked through and signed on which day.
///
/// The older intake sits three of the modules and is nearly through; the younger one is in the
/// middle, with a test open at this moment.
final class History {
    static final int FOUNDED = 72;
    private static final LocalTime MORNING = LocalTime.of(9, 0);
    private static final int REVERSED = 9;
    private static final Duration OPEN_SINCE = Duration.ofMinutes(26);
    private static final Duration SITTING_SINCE = Duration.ofMinutes(8);
    private static final Duration LAST_JOINED = Duration.ofMinutes(3);
    private static final int MISSED_THE_TEST = 2;

    private final World world;
    private final Founding founding;
    private final String chief;
    private final String first;
    private final String second;

    History(World world, Chance chance) {
        this.world = world;
        this.founding = new Founding(world, chance);
        List<Roster.Staff> staff = world.roster().staff();
        this.chief = staff.get(0).email();
        this.first = staff.get(1).email();
        this.second = staff.get(2).email();
    }

    /// Lets it all happen, up to the present.
    void happen() {
        founding.enterStaff(world.calendar().today());
        List<Roster.Intake> intakes = world.roster().intakes();
        at(intakes.get(0).began(), () -> beginOlder(intakes.get(0)));
        at(intakes.get(1).began(), () -> beginYounger(intakes.get(1)));
        world.agenda().runUntil(world.calendar().present());
    }

    private void at(int daysBefore, Runnable deed) {
        world.agenda().enter(world.calendar().at(daysBefore, MORNING), deed);
    }

    private void beginOlder(Roster.Intake plan) {
        Group group = founding.begin(plan);
        founding.join(group, plan.students());
        var lessons = new Lessons(world, group);
        lessons.practise(60, "EQU");
        lessons.round(58, new Round(world, "EQU", first, 0, 0.85, 0));
        lessons.sit(56, "EQU", first, student -> true);
        lessons.round(55, new Round(world, "EQU", first, 1, 0.9, 0.9));
        lessons.sitAgain(49, "EQU", second);
        lessons.round(48, new Round(world, "EQU", first, 1, 1, 1));
        lessons.practise(42, "AER");
        lessons.sit(38, "AER", second, student -> true);
        lessons.round(37, new Round(world, "AER", second, 0.9, 0, 0.9));
        lessons.sitAgain(30, "AER", second);
        lessons.round(29, new Round(world, "AER", second, 0.9, 0, 0.8));
        lessons.practise(20, "SAF");
        lessons.sit(16, "SAF", first, student -> true);
        lessons.round(15, new Round(world, "SAF", first, 0, 0.85, 0));
        lessons.round(13, new Round(world, "SAF", first, 0.6, 0.5, 0.6));
        lessons.sitAgain(5, "SAF", first);
        at(REVERSED, () -> reverseFirst(group, "EQU"));
    }

    private void beginYounger(Roster.Intake plan) {
        Group group = founding.begin(plan);
        int all = plan.students().size();
        founding.join(group, plan.students().subList(0, all - 1));
        var lessons = new Lessons(world, group);
        lessons.practise(19, "EQU");
        lessons.practise(12, "EQU");
        lessons.round(9, new Round(world, "EQU", second, 0, 0.6, 0));
        lessons.sit(6, "EQU", second, student -> !missedTheTest(group, student));
        lessons.round(4, new Round(world, "EQU", second, 0.5, 0.4, 0.5));
        lessons.practise(2, "AER");
        openNow(lessons, group);
        world.agenda()
                .enter(
                        before(LAST_JOINED),
                        () -> founding.join(group, plan.students().subList(all - 1, all)));
    }

    private static boolean missedTheTest(Group group, Student student) {
        List<Student> joined = group.students();
        return joined.indexOf(student) >= joined.size() - MISSED_THE_TEST;
    }

    /// A test is open at present, and the first of the intake is in the middle of it.
    private void openNow(Lessons lessons, Group group) {
        world.agenda()
                .enter(
                        before(OPEN_SINCE),
                        () -> {
                            var opening = lessons.open("AER", first, "Hut, upper room");
                            world.agenda()
                                    .enter(
                                            before(SITTING_SINCE),
                                            () ->
                                                    TestSitting.begin(
                                                            world,
                                                            group.students().get(0),
                                                            opening));
                        });
    }

    private Instant before(Duration duration) {
        return world.calendar().present().minus(duration);
    }

    /// The chief instructor takes the first sign-off back.
    private void reverseFirst(Group group, String module) {
        for (Student student : group.students()) {
            Optional<SignOff> standing =
                    world.doors()
                            .records()
                            .getRecord(world.as(chief), student.subject())
                            .getModule(module)
                            .standing();
            if (standing.isPresent()) {
                reverse(student, standing.get());
                return;
            }
        }
    }

    private void reverse(Student student, SignOff signOff) {
        world.doors()
                .signOffs()
                .reverse(
                        world.as(chief),
                        student.subject(),
                        signOff.id(),
                        world.roster().reversal(),
                        world.roster().password());
    }
}
