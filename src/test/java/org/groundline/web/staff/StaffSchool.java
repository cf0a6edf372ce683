package org.groundline.web.staff;

import org.groundline.bank.Shown;
import org.groundline.database.SubjectId;
import org.groundline.school.Intake;
import org.groundline.school.Role;
import org.groundline.school.School;
import org.groundline.sitting.Item;
import org.groundline.sitting.Openings.NewOpening;
import org.groundline.web.TestServer;
import org.groundline.web.TestServer.Browser;

import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Function;

/// A school with a chief instructor, Carl, an instructor, Ina, and one intake, and the small
/// vocabulary of what students did before staff look at it. The module AER asks for a test and
/// talks, and for no demonstration.
record StaffSchool(TestServer server, School school, Intake intake) {
    static StaffSchool open(TestServer server) {
        School school = server.givenSchool("s" + TestServer.newId().toString().substring(0, 8));
        server.givenPerson(school, "carl", Role.CHIEF_INSTRUCTOR);
        server.givenPerson(school, "ina", Role.INSTRUCTOR);
        return new StaffSchool(server, school, server.givenIntake(school, "Spring"));
    }

    SubjectId givenStudent(String name) {
        SubjectId student = server.givenPerson(school, name, Role.STUDENT);
        server.doors().people().join(school, Optional.empty(), intake.id(), student);
        return student;
    }

    UUID givenOpening(String module) {
        var wish = new NewOpening(module, intake.id(), Duration.ofHours(2), "Hut");
        return server.doors().openings().open(server.actor(school, "ina"), wish).id();
    }

    UUID givenSitting(String student, UUID opening, Function<Item, Optional<String>> answers) {
        return server.givenSitting(school, student, opening, answers);
    }

    Optional<String> right(Item item) {
        return Optional.of(server.rightAnswer(school, item.id()));
    }

    /// Answers all right but one safety-critical item to choose in.
    Function<Item, Optional<String>> oneTalk() {
        var spoilt = new AtomicBoolean();
        return item ->
                item.safetyCritical()
                                && item.shown() instanceof Shown.Choice
                                && spoilt.compareAndSet(false, true)
                        ? Optional.of(server.wrongAnswer(school, item.id()))
                        : right(item);
    }

    void givenSignOff(SubjectId student) {
        server.doors()
                .signOffs()
                .signOff(server.actor(school, "ina"), student, "AER", TestServer.PASSWORD);
    }

    Browser ina() {
        return server.logIn(school, "ina");
    }

    Browser carl() {
        return server.logIn(school, "carl");
    }

    static String of(SubjectId student) {
        return "/students/" + student.value();
    }

    /// What a page says, without its marks; runs of white space count as one space.
    static String text(HttpResponse<String> page) {
        return text(page.body());
    }

    /// The row of a table that begins with a name.
    static String row(HttpResponse<String> page, String name) {
        for (String row : page.body().split("<tr>")) {
            if (text(row).startsWith(name)) {
                return text(row);
            }
        }
        throw new AssertionError("no row of " + name + " in " + text(page));
    }

    private static String text(String html) {
        return html.replaceAll("(?s)<head>.*?</head>", "")
                .replaceAll("<[^>]*>", " ")
                .replaceAll("[\\s\\u202f\\u00a0]+", " ")
                .strip();
    }

    static Map<String, String> fields(String... namesAndValues) {
        Map<String, String> fields = new java.util.HashMap<>();
        for (int i = 0; i < namesAndValues.length; i += 2) {
            fields.put(namesAndValues[i], namesAndValues[i + 1]);
        }
        return fields;
    }
}
