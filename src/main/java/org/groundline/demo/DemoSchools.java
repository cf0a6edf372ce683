package org.groundline.demo;

import org.groundline.bank.Questions;
import org.groundline.chance.SeededDraw;
import org.groundline.database.Database;
import org.groundline.error.Refusal;
import org.groundline.ledger.Foundation;
import org.groundline.school.People;
import org.groundline.school.School;
import org.groundline.school.Schools;
import org.groundline.sitting.AnswerWriter;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/// The invented school of this server: makes it once, and tells how to log in.
public final class DemoSchools {
    private static final long SEED = 20_270_501;

    private final Database database;
    private final InstantSource clock;
    private final Questions bank;
    private final Runnable analyse;
    private final Roster roster = Roster.shipped();

    /// @param clock the real one; the simulation has its own
    /// @param analyse renews the statistics that the database plans its queries by: ten weeks pass
    ///   faster than it would notice by itself
    public DemoSchools(Database database, InstantSource clock, Questions bank, Runnable analyse) {
        this.database = database;
        this.clock = clock;
        this.bank = bank;
        this.analyse = analyse;
    }

    /// Somebody to try the server as.
    public record LogIn(String role, String email, String password) {}

    /// Whether this server has the invented school.
    ///
    /// @throws Refusal.Conflict if it was not made to the end
    public boolean exists() {
        Foundation foundation = Foundation.on(database, clock);
        Optional<School> school = new Schools(foundation).findSchool(roster.code());
        school.ifPresent(found -> requireWhole(foundation, found));
        return school.isPresent();
    }

    /// The last student joins at the end of the history.
    private void requireWhole(Foundation foundation, School school) {
        int students = new People(foundation).listStudents(school, Optional.empty()).size();
        if (students < roster.size()) {
            throw new Refusal.Conflict(
                    "The demo school is only half made, because the start that made it was cut off. Start again with an empty data folder or database.");
        }
    }

    /// Makes the invented school. Nobody else may be at work on it meanwhile.
    public void make() {
        make(SEED);
    }

    void make(long seed) {
        Instant present = clock.instant();
        var time = new SimulatedClock(present.minus(Duration.ofDays(History.FOUNDED)));
        var draw = new SeededDraw(seed);
        try (AnswerWriter writer = AnswerWriter.start(database)) {
            var seeds = new KnownSeeds(draw.split("papers"));
            DemoDoors doors = DemoDoors.on(database, time, bank, writer, seeds, roster.password());
            School school = doors.schools().create(roster.school());
            var loggedIn = new LoggedIn(doors, school, roster.password());
            var calendar = new Calendar(school, present);
            var agenda = new Agenda(time);
            var world = new World(roster, doors, agenda, school, calendar, loggedIn, analyse);
            new History(world, new Chance(draw.split("people"))).happen();
            analyse.run();
        }
    }

    /// The code of the invented school in addresses.
    public String code() {
        return roster.code();
    }

    /// Those of the school whom it is worth being for a while.
    public List<LogIn> listLogIns() {
        List<LogIn> logIns = new ArrayList<>();
        for (Roster.Staff person : roster.staff()) {
            if (person.shown()) {
                String role = String.join(", ", person.roles());
                logIns.add(new LogIn(role, person.email(), roster.password()));
            }
        }
        for (Roster.Intake intake : roster.intakes()) {
            intake.students().stream()
                    .filter(Roster.Student::shown)
                    .map(s -> logIn(intake, s))
                    .forEach(logIns::add);
        }
        return List.copyOf(logIns);
    }

    private LogIn logIn(Roster.Intake intake, Roster.Student student) {
        return new LogIn("student, intake " + intake.name(), student.email(), roster.password());
    }
}
