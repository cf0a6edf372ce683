package org.groundline.school;

import org.groundline.database.SubjectId;
import org.groundline.error.Refusal;
import org.groundline.ledger.Foundation;
import org.jooq.DSLContext;

import java.time.Duration;
import java.time.Instant;
import java.util.HexFormat;
import java.util.Optional;
import java.util.Set;

/// Log-ins: who may come in, for how long, and how often one may guess.
public final class Logins {
    private static final Duration LIFE = Duration.ofHours(12);
    private static final Duration NOTED_EACH = Duration.ofMinutes(5);
    private static final Duration GUESS_WINDOW = Duration.ofMinutes(15);
    private static final int GUESSES = 10;
    private static final int LONGEST_INPUT = 256;

    private final Foundation foundation;
    private final Passwords passwords = new Passwords();
    private final Tokens tokens = new Tokens();

    public Logins(Foundation foundation) {
        this.foundation = foundation;
    }

    /// Logs a person in.
    ///
    /// @return the token of the new session, to be kept in a cookie; it is stored nowhere
    /// @throws Refusal.Unknown if address and password do not belong together; it is not told which
    ///   is wrong
    /// @throws Refusal.TooMany after ten wrong tries within fifteen minutes
    public String logIn(School school, String email, String password) {
        if (email.length() > LONGEST_INPUT || password.length() > LONGEST_INPUT) {
            throw wrong();
        }
        byte[] address = Tokens.digest(People.normalised(email));
        requireFewTries(school, address);
        Optional<SubjectId> subject = subjectOf(school, email, password);
        noteTry(school, address, subject.isPresent());
        return begin(school, subject.orElseThrow(Logins::wrong));
    }

    private void requireFewTries(School school, byte[] address) {
        int failures =
                foundation
                        .database()
                        .inSchool(
                                school.id(),
                                tx ->
                                        new SessionRepository(tx, school.id())
                                                .countFailures(
                                                        address,
                                                        foundation.now().minus(GUESS_WINDOW)));
        if (failures >= GUESSES) {
            throw new Refusal.TooMany(
                    "Too many wrong tries. Wait fifteen minutes, or ask your school for a new password.");
        }
    }

    private Optional<SubjectId> subjectOf(School school, String email, String password) {
        Optional<Credential> stored =
                foundation
                        .database()
                        .inSchool(
                                school.id(),
                                tx ->
                                        new PersonRepository(tx, school.id())
                                                .findByEmail(People.normalised(email))
                                                .flatMap(
                                                        p ->
                                                                new SessionRepository(
                                                                                tx, school.id())
                                                                        .findCredential(
                                                                                p.subject())));
        boolean right =
                stored.map(c -> passwords.matches(password, c.hash()))
                        .orElseGet(() -> passwords.matchesNobody(password));
        return stored.filter(c -> right).map(Credential::subject);
    }

    /// A person and the hash of their password.
    record Credential(SubjectId subject, String hash) {}

    private void noteTry(School school, byte[] address, boolean succeeded) {
        foundation
                .database()
                .doInSchool(
                        school.id(),
                        tx ->
                                new SessionRepository(tx, school.id())
                                        .insertTry(
                                                foundation.ids().next(),
                                                address,
                                                foundation.now(),
                                                succeeded));
    }

    private String begin(School school, SubjectId subject) {
        String token = tokens.next();
        Instant now = foundation.now();
        foundation
                .database()
                .doInSchool(
                        school.id(),
                        tx -> {
                            new SessionRepository(tx, school.id())
                                    .insert(Tokens.digest(token), subject, now, now.plus(LIFE));
                            note(tx, school, subject, "log in");
                        });
        return token;
    }

    private void note(DSLContext tx, School school, SubjectId subject, String what) {
        foundation
                .audit()
                .write(
                        tx,
                        school.id(),
                        Optional.of(subject),
                        Optional.of(subject),
                        what,
                        "session");
    }

    private static Refusal wrong() {
        return new Refusal.Unknown("E-mail address and password do not belong together.");
    }

    /// Returns who is behind a session's token, with the roles in force now; empty when it is
    /// unknown, ended or too old.
    public Optional<Actor> findActor(School school, String token) {
        byte[] digest = Tokens.digest(token);
        Instant now = foundation.now();
        return foundation
                .database()
                .inSchool(
                        school.id(),
                        tx -> {
                            var sessions = new SessionRepository(tx, school.id());
                            Optional<Person> person = sessions.findPerson(digest, now);
                            person.ifPresent(
                                    p -> sessions.noteSeen(digest, now, now.minus(NOTED_EACH)));
                            return person.map(p -> actor(tx, school, p, digest));
                        });
    }

    private Actor actor(DSLContext tx, School school, Person person, byte[] digest) {
        Set<Role> roles =
                new RoleRepository(tx, school.id()).listInForce(person.subject(), foundation.now());
        return new Actor(
                school, person.subject(), person.name(), roles, HexFormat.of().formatHex(digest));
    }

    /// Refuses unless this is the actor's own password; asked again before a sign-off.
    ///
    /// @throws Refusal.TooMany after ten wrong tries within fifteen minutes
    public void requirePassword(Actor actor, String password) {
        School school = actor.school();
        byte[] account = Tokens.digest("account " + actor.subject().value());
        requireFewTries(school, account);
        String hash =
                foundation
                        .database()
                        .inSchool(
                                school.id(),
                                tx ->
                                        new SessionRepository(tx, school.id())
                                                .findCredential(actor.subject()))
                        .orElseThrow(Logins::wrong)
                        .hash();
        boolean right = password.length() <= LONGEST_INPUT && passwords.matches(password, hash);
        noteTry(school, account, right);
        if (!right) {
            throw new Refusal.Invalid(
                    "password", "This is not your password. Nothing was changed.");
        }
    }

    /// Changes the actor's password and ends every other session of theirs.
    public void changePassword(Actor actor, String old, String wanted) {
        requirePassword(actor, old);
        Passwords.requireAcceptable(wanted);
        String hash = passwords.hash(wanted);
        School school = actor.school();
        foundation
                .database()
                .doInSchool(
                        school.id(),
                        tx -> {
                            var sessions = new SessionRepository(tx, school.id());
                            sessions.updateCredential(actor.subject(), hash, foundation.now());
                            sessions.endOthers(
                                    actor.subject(),
                                    HexFormat.of().parseHex(actor.session()),
                                    foundation.now());
                            note(tx, school, actor.subject(), "change password");
                        });
    }

    /// Ends the actor's session.
    public void logOut(Actor actor) {
        foundation
                .database()
                .doInSchool(
                        actor.school().id(),
                        tx -> {
                            new SessionRepository(tx, actor.school().id())
                                    .end(
                                            HexFormat.of().parseHex(actor.session()),
                                            foundation.now());
                            note(tx, actor.school(), actor.subject(), "log out");
                        });
    }
}
