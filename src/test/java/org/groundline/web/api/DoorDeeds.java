package org.groundline.web.api;

import org.groundline.database.SubjectId;
import org.groundline.record.Debriefs.Outcome;
import org.groundline.school.Actor;
import org.groundline.school.People.NewAuthorisation;
import org.groundline.school.People.NewPerson;
import org.groundline.school.PolicyRules;
import org.groundline.school.Role;
import org.groundline.sitting.GivenAnswer;
import org.groundline.sitting.Openings.NewOpening;
import org.groundline.web.Doors;
import org.groundline.web.TestServer;

import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/// Asks the doors, as the pages do.
final class DoorDeeds implements Deeds {
    private final TaughtSchool taught;
    private final Doors doors;
    private final Actor ada;
    private final Actor iris;
    private final Actor cleo;

    DoorDeeds(TaughtSchool taught) {
        this.taught = taught;
        this.doors = taught.server.doors();
        this.ada = taught.server.actor(taught.school, "ada");
        this.iris = taught.server.actor(taught.school, "iris");
        this.cleo = taught.server.actor(taught.school, "cleo");
    }

    @Override
    public void enterStudent(String name) {
        var wish =
                new NewPerson(
                        name,
                        "Person",
                        name + "@" + taught.school.code() + ".example",
                        TestServer.PASSWORD);
        doors.people().enter(taught.school, Optional.of(cleo), wish, Set.of(Role.STUDENT));
    }

    @Override
    public void authorise() {
        var wish =
                new NewAuthorisation(
                        "T-2",
                        List.of("foot", "winch"),
                        "Test office",
                        LocalDate.parse("2027-01-01"),
                        LocalDate.parse("2029-12-31"));
        doors.people().authorise(taught.school, Optional.of(cleo), taught.iris, wish);
    }

    @Override
    public void beginIntake(String name, String student) {
        var intake =
                doors.people()
                        .beginIntake(
                                taught.school,
                                Optional.of(cleo),
                                name,
                                LocalDate.parse("2027-06-01"));
        SubjectId subject =
                doors.people().listMembers(cleo).stream()
                        .filter(m -> m.person().givenName().equals(student))
                        .findFirst()
                        .orElseThrow()
                        .person()
                        .subject();
        doors.people().join(taught.school, Optional.of(cleo), intake.id(), subject);
        doors.people().join(taught.school, Optional.of(cleo), intake.id(), subject);
    }

    @Override
    public void changePolicy() {
        int since = doors.policies().current(taught.school).version();
        doors.policies().change(cleo, since, new PolicyRules(8_050, 9, 20, 6));
    }

    @Override
    public void changePassword(String person) {
        Actor actor = taught.server.actor(taught.school, person);
        doors.logins().changePassword(actor, TestServer.PASSWORD, "another long sentence");
    }

    @Override
    public void acknowledge(String topic) {
        var brief = doors.readings().getBrief(ada, topic);
        doors.readings().acknowledge(ada, topic, brief.version());
    }

    @Override
    public Seen practise(String topic) {
        var next = doors.practices().next(ada, topic);
        return new Seen(next.sitting(), next.seat(), next.item().id());
    }

    @Override
    public void answerPractice(Seen seen, UUID clientId, String answer) {
        doors.practices().answer(ada, seen.sitting(), given(seen, clientId, 0, answer));
    }

    private GivenAnswer given(Seen seen, UUID clientId, int sequence, String answer) {
        return new GivenAnswer(
                clientId,
                seen.item(),
                seen.seat(),
                sequence,
                Optional.empty(),
                doors.foundation().now(),
                answer);
    }

    @Override
    public void openTest(String module) {
        doors.openings()
                .open(
                        iris,
                        new NewOpening(module, taught.intake.id(), Duration.ofMinutes(60), "Hut"));
    }

    @Override
    public List<Seen> begin() {
        UUID opening = doors.openings().listMine(ada).get(0).id();
        doors.sittings().begin(ada, opening);
        var open = doors.sittings().open(ada, doors.sittings().begin(ada, opening));
        UUID sitting = open.sitting().facts().id();
        return open.items().stream().map(i -> new Seen(sitting, open.seat(), i.id())).toList();
    }

    @Override
    public void answer(Seen seen, UUID clientId, int sequence, String answer) {
        doors.sittings().answer(ada, seen.sitting(), given(seen, clientId, sequence, answer));
    }

    @Override
    public void flag(Seen seen, boolean flagged) {
        doors.sittings().flag(ada, seen.sitting(), seen.item(), flagged);
    }

    @Override
    public void handIn(UUID sitting) {
        doors.sittings().handIn(ada, sitting);
    }

    @Override
    public void debrief(UUID item, String outcome, String note) {
        doors.debriefs().enter(iris, taught.ada, item, Outcome.ofWord(outcome), note);
    }

    @Override
    public void demonstrate(String demonstration) {
        doors.demonstrations().observe(iris, taught.ada, demonstration, "");
    }

    @Override
    public void signOff(String module) {
        doors.signOffs().signOff(iris, taught.ada, module, TestServer.PASSWORD);
    }

    @Override
    public void reverse(String module, String reason) {
        var record = doors.records().getRecord(iris, taught.ada).getModule(module);
        UUID signOff = record.standing().orElseThrow().id();
        doors.signOffs().reverse(iris, taught.ada, signOff, reason, TestServer.PASSWORD);
    }
}
