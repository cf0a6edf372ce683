package org.groundline.web.api;

import static java.util.stream.Collectors.toMap;

import com.fasterxml.jackson.databind.JsonNode;

import org.groundline.authoring.Change;
import org.groundline.authoring.Edition;
import org.groundline.authoring.Editions;
import org.groundline.database.SubjectId;
import org.groundline.school.Action;
import org.groundline.school.Actor;
import org.groundline.school.Permissions;
import org.groundline.school.Role;
import org.groundline.school.Scope;
import org.groundline.web.TestServer;
import org.groundline.web.request.Routes.Route;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;

/// Two schools with a student in each who has one of everything, and in the first school one person
/// for each role, who has what the role can have.
final class AccessWorld {
    private final TestServer server;
    private final TaughtSchool here;
    private final TaughtSchool there;
    private final Map<Role, Person> people;
    private final Things anothers;
    private final Things foreign;

    AccessWorld(TestServer server) {
        this.server = server;
        this.here = new TaughtSchool(server);
        this.there = new TaughtSchool(server);
        this.anothers = student(here, "ada", here.ada, here.intake.id());
        this.foreign = student(there, "ada", there.ada, there.intake.id());
        this.people = Arrays.stream(Role.values()).collect(toMap(role -> role, this::person));
    }

    /// A person with one role, their sessions, and what is theirs.
    record Person(String name, ApiClient api, TestServer.Browser browser, Things own) {}

    /// Ids by their names in addresses. Which sitting and item is meant depends on the route.
    record Things(Map<String, String> ids) {
        Map<String, String> of(Route route) {
            Map<String, String> chosen = new HashMap<>(ids);
            String path = route.path();
            String kind =
                    path.contains("/practice")
                            ? route.method().equals("GET") ? "explained " : "practised "
                            : path.matches(".*/(result|debriefs)") ? "handed-in " : "";
            chosen.computeIfPresent("sitting", (n, id) -> ids.getOrDefault(kind + n, id));
            chosen.computeIfPresent("item", (n, id) -> ids.getOrDefault(kind + n, id));
            return chosen;
        }

        /// These, with one from elsewhere.
        Things with(Things others, String name) {
            Map<String, String> mixed = new HashMap<>(ids);
            others.ids.forEach(
                    (key, id) -> {
                        if (key.equals(name) || key.endsWith(" " + name)) {
                            mixed.put(key, id);
                        }
                    });
            return new Things(mixed);
        }
    }

    TaughtSchool here() {
        return here;
    }

    TaughtSchool there() {
        return there;
    }

    Person person(Route route, Role role) {
        Person person = java.util.Objects.requireNonNull(people.get(role));
        return endsSessions(route)
                ? new Person(
                        person.name(),
                        here.api(person.name()),
                        server.logIn(here.school, person.name()),
                        person.own())
                : person;
    }

    /// Whether a route ends sessions of the one who uses it.
    static boolean endsSessions(Route route) {
        return route.path().matches(".*/(logout|sessions/current|password)");
    }

    Things anothers() {
        return anothers;
    }

    Things foreign() {
        return foreign;
    }

    private Person person(Role role) {
        String name = role.word().replace(' ', '-');
        SubjectId subject = server.givenPerson(here.school, name, role);
        Things own =
                role == Role.STUDENT
                        ? student(
                                here,
                                name,
                                subject,
                                server.givenIntake(here.school, name, subject).id())
                        : staff(role, name, subject);
        return new Person(name, here.api(name), server.logIn(here.school, name), own);
    }

    /// Staff have nothing of what students have, but themselves and what they practise.
    private Things staff(Role role, String name, SubjectId subject) {
        Map<String, String> ids = new HashMap<>(anothers.ids());
        ids.put("subject", subject.value().toString());
        if (Permissions.SHIPPED.scope(Action.PRACTISE, role) != Scope.NONE) {
            practise(here, here.api(name), ids);
        }
        return new Things(ids);
    }

    private Things student(TaughtSchool taught, String name, SubjectId subject, UUID intake) {
        ApiClient student = taught.api(name);
        ApiClient chief = taught.api("cleo");
        Map<String, String> ids = new HashMap<>();
        ids.put("school", taught.school.code());
        ids.put("subject", subject.value().toString());
        ids.put("intake", intake.toString());
        ids.put("demonstration", "none");
        ids.put("edition", edition(taught));
        ids.put("opening", open(chief, "EQU", intake));
        ids.put("sitting", begin(student, ids.get("opening")));
        ids.put("item", student.get("/sittings/" + ids.get("sitting")).text("/items/0/item/item"));
        practise(taught, student, ids);
        handIn(taught, student, ids, begin(student, open(chief, "SAF", intake)));
        signOff(taught, student, ids, begin(student, open(chief, "AER", intake)));
        return new Things(ids);
    }

    /// A question of the school's own that waits for a second person.
    private String edition(TaughtSchool taught) {
        Actor cleo = server.actor(taught.school, "cleo");
        String shipped = TestServer.bank().ofTopic("EQU-1").getLast().id();
        String text = TestServer.bank().findText(shipped).orElseThrow();
        var writing =
                new Editions.Writing(
                        text.replace("id: " + shipped, "id: u" + TestServer.newId()),
                        0,
                        Change.SUBSTANTIVE);
        Edition edition = server.doors().editions().keep(cleo, writing);
        server.doors().editions().submit(cleo, edition.id());
        return edition.id().toString();
    }

    private static String open(ApiClient chief, String module, UUID intake) {
        return chief.post(
                        "/openings",
                        Map.of("module", module, "intake", intake, "windowMinutes", 600))
                .text("/opening");
    }

    private static String begin(ApiClient student, String opening) {
        return student.post("/openings/" + opening + "/sittings").text("/sitting");
    }

    private static void practise(TaughtSchool taught, ApiClient student, Map<String, String> ids) {
        ApiAnswer first = student.post("/practices", Map.of("topic", "AER-2"));
        String practice = first.text("/sitting");
        UUID item = first.id("/item/item");
        student.withKey(TestServer.newId())
                .post(
                        "/practices/" + practice + "/answers",
                        taught.answer(item, 1, 0, taught.right(item)));
        ApiAnswer next = student.post("/practices", Map.of("topic", "AER-2"));
        ids.put("explained sitting", practice);
        ids.put("explained item", item.toString());
        ids.put("practised sitting", practice);
        ids.put("practised item", next.text("/item/item"));
    }

    private static void handIn(
            TaughtSchool taught, ApiClient student, Map<String, String> ids, String sitting) {
        taught.answerAll(student, UUID.fromString(sitting), 1);
        student.post("/sittings/" + sitting + "/hand-in");
        ids.put("handed-in sitting", sitting);
        ids.put(
                "handed-in item",
                student.get("/me/record").text("/modules/3/toTalkThrough/0/item"));
    }

    private static void signOff(
            TaughtSchool taught, ApiClient student, Map<String, String> ids, String sitting) {
        String path = "/students/" + ids.get("subject");
        ApiClient chief = taught.api("cleo").with("If-Match", "*");
        taught.answerAll(student, UUID.fromString(sitting), 0);
        student.post("/sittings/" + sitting + "/hand-in");
        for (JsonNode module : chief.get("/course").at("/modules")) {
            for (JsonNode shown : module.get("demonstrations")) {
                String demonstration = shown.get("demonstration").asText();
                ids.put("demonstration", demonstration);
                chief.post(path + "/demonstrations", Map.of("demonstration", demonstration));
            }
        }
        ApiAnswer signed =
                chief.post(
                        path + "/sign-offs",
                        Map.of("module", "AER", "password", TestServer.PASSWORD));
        ids.put("signOff", signed.text("/modules/1/signOffs/0/signOff"));
    }
}
