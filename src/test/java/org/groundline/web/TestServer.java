package org.groundline.web;

import org.groundline.bank.Frozen;
import org.groundline.bank.Key;
import org.groundline.bank.Questions;
import org.groundline.database.Database;
import org.groundline.database.SubjectId;
import org.groundline.database.TestDatabase;
import org.groundline.ledger.Foundation;
import org.groundline.school.Actor;
import org.groundline.school.Intake;
import org.groundline.school.People.NewAuthorisation;
import org.groundline.school.People.NewPerson;
import org.groundline.school.Role;
import org.groundline.school.School;
import org.groundline.school.Schools.NewSchool;
import org.groundline.sitting.AnswerWriter;
import org.groundline.sitting.GivenAnswer;
import org.groundline.sitting.Item;
import org.groundline.sitting.OpenSitting;
import org.jooq.ExecuteListener;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;

/// A running server on a fresh database, with a clock that the test moves, and the small vocabulary
/// in which tests of pages and API speak: `givenSchool`, `givenPerson`, `logIn`, then [Browser#get]
/// and [Browser#post].
public final class TestServer implements AutoCloseable {
    /// Everybody's password in the tests.
    public static final String PASSWORD = "a long enough sentence";

    private static final Questions BANK = Questions.load(Path.of("question-bank"));

    private volatile Instant now = Instant.parse("2027-05-01T08:00:00Z");
    private final Database database;
    private final AnswerWriter writer;
    private final Doors doors;
    private final WebServer web;

    private TestServer(Questions bank, ExecuteListener... listeners) {
        this.database = TestDatabase.open(listeners);
        this.writer = AnswerWriter.start(database);
        InstantSource clock = this::now;
        this.doors = Doors.on(Foundation.on(database, clock), bank, writer, () -> true);
        this.web = WebServer.start(doors, new Readiness(List::of), "127.0.0.1", 0);
    }

    /// Starts a server whose statements are told to listeners.
    public static TestServer start(ExecuteListener... listeners) {
        return new TestServer(BANK, listeners);
    }

    /// Starts a server with another bank than the shipped one.
    public static TestServer startWith(Questions bank, ExecuteListener... listeners) {
        return new TestServer(bank, listeners);
    }

    /// The shipped bank.
    public static Questions bank() {
        return BANK;
    }

    public Doors doors() {
        return doors;
    }

    public Database database() {
        return database;
    }

    public WebServer web() {
        return web;
    }

    public Instant now() {
        return now;
    }

    /// Moves the clock forward.
    public void passes(Duration time) {
        now = now.plus(time);
    }

    public School givenSchool(String code) {
        return doors.schools().create(new NewSchool(code, "School " + code, "Europe/Vienna", "en"));
    }

    /// A person with some roles; the address is `name@code.example`. Instructors get an
    /// authorisation for five years.
    public SubjectId givenPerson(School school, String name, Role... roles) {
        var wish = new NewPerson(name, "Person", name + "@" + school.code() + ".example", PASSWORD);
        SubjectId subject = doors.people().enter(school, Optional.empty(), wish, Set.of(roles));
        if (Set.of(roles).contains(Role.INSTRUCTOR)) {
            LocalDate today = school.dayOf(now());
            var authorisation =
                    new NewAuthorisation(
                            "T-1",
                            List.of("foot"),
                            "Test office",
                            today.minusYears(1),
                            today.plusYears(5));
            doors.people().authorise(school, Optional.empty(), subject, authorisation);
        }
        return subject;
    }

    public Intake givenIntake(School school, String name, SubjectId... students) {
        Intake intake =
                doors.people().beginIntake(school, Optional.empty(), name, school.dayOf(now()));
        for (SubjectId student : students) {
            doors.people().join(school, Optional.empty(), intake.id(), student);
        }
        return intake;
    }

    /// The actor behind a person, through a session of their own, for asking doors directly.
    public Actor actor(School school, String name) {
        return doors.logins().findActor(school, token(school, name)).orElseThrow();
    }

    /// A new session's token.
    public String token(School school, String name) {
        return doors.logins().logIn(school, name + "@" + school.code() + ".example", PASSWORD);
    }

    /// What the key of an item says, read past the doors as only a test may.
    public String rightAnswer(School school, UUID item) {
        return switch (key(school, item)) {
            case Key.Choice choice -> choice.letter();
            case Key.Number number -> number.answer().toPlainString();
        };
    }

    /// An answer that the key of an item does not accept.
    public String wrongAnswer(School school, UUID item) {
        return switch (key(school, item)) {
            case Key.Choice choice -> choice.letter().equals("A") ? "B" : "A";
            case Key.Number number -> "0";
        };
    }

    private Key key(School school, UUID item) {
        return database.inSchool(
                school.id(),
                tx ->
                        Frozen.readKey(
                                tx.fetchOne(
                                                "select key::text from item_key where item_id = ?",
                                                item)
                                        .get(0, String.class)));
    }

    /// Lets a student sit an opened test through the doors, hand it in, and returns the sitting.
    ///
    /// @param answers what the student gives to an item; empty leaves it unanswered
    public UUID givenSitting(
            School school, String student, UUID opening, Function<Item, Optional<String>> answers) {
        Actor actor = actor(school, student);
        UUID id = doors.sittings().begin(actor, opening);
        answer(actor, id, answers);
        doors.sittings().handIn(actor, id);
        return id;
    }

    /// Gives answers in a sitting that was begun, from a device of its own.
    public void answer(Actor actor, UUID sitting, Function<Item, Optional<String>> answers) {
        OpenSitting open = doors.sittings().open(actor, sitting);
        int sequence = open.nextSequence();
        for (Item item : open.items()) {
            Optional<String> raw = answers.apply(item);
            if (raw.isPresent()) {
                var given =
                        new GivenAnswer(
                                newId(),
                                item.id(),
                                open.seat(),
                                sequence++,
                                Optional.empty(),
                                now(),
                                raw.get());
                doors.sittings().answer(actor, sitting, given);
            }
        }
    }

    /// A browser that is logged in.
    public Browser logIn(School school, String name) {
        return new Browser(school, token(school, name));
    }

    /// A browser that is not logged in.
    public Browser stranger(School school) {
        return new Browser(school, "");
    }

    /// What a browser does, with one session's cookie.
    public final class Browser {
        private final HttpClient http =
                HttpClient.newBuilder().followRedirects(HttpClient.Redirect.NEVER).build();
        private final School school;
        private final String token;

        private Browser(School school, String token) {
            this.school = school;
            this.token = token;
        }

        /// Asks for a page of the school, such as `/course`.
        public HttpResponse<String> get(String path) {
            return send(request("/" + school.code() + path).GET().build());
        }

        /// Sends a form of a page of the school, with the form token that the pages carry.
        public HttpResponse<String> post(String path, Map<String, String> fields) {
            var all = new java.util.LinkedHashMap<>(fields);
            all.putIfAbsent("csrf", formToken());
            return send(
                    request("/" + school.code() + path)
                            .header("Content-Type", "application/x-www-form-urlencoded")
                            .POST(HttpRequest.BodyPublishers.ofString(encoded(all)))
                            .build());
        }

        /// The form token of this session, read from a page as a browser has it.
        public String formToken() {
            var field = java.util.regex.Pattern.compile("name=\"csrf\" value=\"([0-9a-f]+)\"");
            var found = field.matcher(get("/account").body());
            return found.find() ? found.group(1) : "";
        }

        /// Begins a request to any address, with the cookie of the session if there is one.
        public HttpRequest.Builder request(String address) {
            var builder =
                    HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + web.port() + address));
            if (!token.isEmpty()) {
                builder.header(
                        "Cookie",
                        "__Host-groundline-" + school.code() + "=" + school.code() + "." + token);
            }
            return builder;
        }

        /// Sends a request.
        public HttpResponse<String> send(HttpRequest request) {
            try {
                return http.send(request, HttpResponse.BodyHandlers.ofString());
            } catch (java.io.IOException | InterruptedException e) {
                throw new IllegalStateException(request.uri().toString(), e);
            }
        }

        private static String encoded(Map<String, String> fields) {
            return fields.entrySet().stream()
                    .map(
                            e ->
                                    e.getKey()
                                            + "="
                                            + java.net.URLEncoder.encode(
                                                    e.getValue(),
                                                    java.nio.charset.StandardCharsets.UTF_8))
                    .collect(java.util.stream.Collectors.joining("&"));
        }
    }

    /// A random id, as a browser makes one for an answer.
    public static UUID newId() {
        return UUID.randomUUID();
    }

    @Override
    public void close() {
        web.close();
        writer.close();
        database.close();
    }
}
