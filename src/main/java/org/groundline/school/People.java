package org.groundline.school;

import org.groundline.database.SubjectId;
import org.groundline.database.Violation;
import org.groundline.error.Refusal;
import org.groundline.ledger.Entry;
import org.groundline.ledger.EntryKind;
import org.groundline.ledger.Foundation;
import org.jooq.DSLContext;

import java.text.Normalizer;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

/// The people of a school, their roles, intakes and authorisations.
public final class People {
    private final Foundation foundation;
    private final Passwords passwords;
    private final Authorising authorising;
    private final Enrolment enrolment;

    public People(Foundation foundation) {
        this(foundation, new Passwords());
    }

    private People(Foundation foundation, Passwords passwords) {
        this.foundation = foundation;
        this.passwords = passwords;
        this.authorising = new Authorising(foundation);
        this.enrolment = new Enrolment(foundation);
    }

    /// As people, but one password is known to everybody: an invented school prints it, and a hash
    /// that is dear to compute would guard nothing there. Any other password, and this one where
    /// somebody changes to it, gets a dear one as ever.
    public static People withPrintedPassword(Foundation foundation, String printed) {
        return new People(foundation, Passwords.withPrinted(printed));
    }

    /// What is needed to enter a person.
    public record NewPerson(String givenName, String familyName, String email, String password) {}

    /// What is needed to enter an authorisation; both days are included.
    ///
    /// @param launchMethods `foot`, `winch`, `aerotow`; at least one
    public record NewAuthorisation(
            String number,
            List<String> launchMethods,
            String issuer,
            LocalDate validFrom,
            LocalDate validUntil) {
        private static final int LONGEST = 80;
        private static final Set<String> LAUNCH_METHODS = Set.of("foot", "winch", "aerotow");

        /// @throws Refusal.Invalid if a text, a launch method or the days cannot be used
        public NewAuthorisation {
            launchMethods = List.copyOf(launchMethods);
            require(isNamed(number), "number", "A number has 1 to 80 letters.");
            require(isNamed(issuer), "issuer", "An issuer has 1 to 80 letters.");
            require(
                    !launchMethods.isEmpty() && LAUNCH_METHODS.containsAll(launchMethods),
                    "launchMethods",
                    "Launch methods are foot, winch and aerotow; at least one.");
            require(
                    !validUntil.isBefore(validFrom),
                    "validUntil",
                    "An authorisation does not end before it begins.");
            number = number.strip();
            issuer = issuer.strip();
        }

        private static boolean isNamed(String text) {
            return !text.isBlank() && text.length() <= LONGEST;
        }

        private static void require(boolean holds, String field, String otherwise) {
            if (!holds) {
                throw new Refusal.Invalid(field, otherwise);
            }
        }
    }

    /// Enters a person with the roles they have from now on.
    ///
    /// @param by who enters them; empty for the set-up of the school
    /// @throws Refusal.Invalid if a name, the address or the password cannot be used
    /// @throws Refusal.Conflict if the address is somebody's already
    public SubjectId enter(School school, Optional<Actor> by, NewPerson person, Set<Role> roles) {
        by.ifPresent(actor -> actor.require(Action.MANAGE_PEOPLE));
        requireAcceptable(person);
        String hash = passwords.hash(person.password());
        try {
            return foundation
                    .database()
                    .inSchool(
                            school.id(),
                            tx -> enter(tx, school, by, new Newcomer(person, hash, roles)));
        } catch (Violation e) {
            throw new Refusal.Conflict(
                    "This e-mail address belongs to somebody in the school already.");
        }
    }

    private record Newcomer(NewPerson person, String passwordHash, Set<Role> roles) {}

    private SubjectId enter(DSLContext tx, School school, Optional<Actor> by, Newcomer newcomer) {
        Instant now = foundation.now();
        var subject = new SubjectId(foundation.ids().random());
        NewPerson wish = newcomer.person();
        var person =
                new Person(
                        subject,
                        wish.givenName().strip(),
                        wish.familyName().strip(),
                        wish.email().strip());
        var rows = new PersonRepository(tx, school.id());
        rows.insert(person, normalised(wish.email()), now);
        rows.insertCredential(subject, newcomer.passwordHash(), now);
        for (Role role : newcomer.roles()) {
            grant(tx, school, by.map(Actor::subject), subject, role);
        }
        foundation
                .audit()
                .write(
                        tx,
                        school.id(),
                        by.map(Actor::subject),
                        Optional.of(subject),
                        Action.MANAGE_PEOPLE.word(),
                        "person entered");
        return subject;
    }

    /// Refuses a name, an address or a password that cannot be used.
    public void requireAcceptable(NewPerson person) {
        requireNamed(person);
        Passwords.requireAcceptable(person.password());
    }

    private static void requireNamed(NewPerson person) {
        if (person.givenName().isBlank() || person.givenName().length() > 80) {
            throw new Refusal.Invalid("givenName", "A given name has 1 to 80 letters.");
        }
        if (person.familyName().isBlank() || person.familyName().length() > 80) {
            throw new Refusal.Invalid("familyName", "A family name has 1 to 80 letters.");
        }
        if (!person.email().strip().matches("[^@\\s]{1,190}@[^@\\s]{1,63}")) {
            throw new Refusal.Invalid(
                    "email", "This is no e-mail address; it looks like name@example.org.");
        }
    }

    static String normalised(String email) {
        return Normalizer.normalize(email.strip(), Normalizer.Form.NFC).toLowerCase(Locale.ROOT);
    }

    private void grant(
            DSLContext tx, School school, Optional<SubjectId> by, SubjectId subject, Role role) {
        Instant now = foundation.now();
        UUID id = foundation.ids().next();
        new RoleRepository(tx, school.id()).insert(id, subject, role, by, now);
        Map<String, Object> facts = Map.of("grant", id.toString(), "role", role.word());
        foundation
                .ledger()
                .write(
                        tx,
                        school.id(),
                        new Entry(EntryKind.ROLE, now, Optional.of(subject), by, facts));
    }

    /// Enters an instructor's authorisation for the school's discipline, paragliding.
    ///
    /// @throws Refusal.NotFound if the school has no such person
    public Authorisation authorise(
            School school, Optional<Actor> by, SubjectId subject, NewAuthorisation wish) {
        by.ifPresent(actor -> actor.require(Action.MANAGE_PEOPLE));
        return authorising.enter(school, by.map(Actor::subject), subject, wish);
    }

    /// Returns the authorisation of a person that covers a discipline today, within a transaction.
    public Optional<Authorisation> findAuthorisation(
            DSLContext tx, School school, SubjectId subject, String discipline) {
        return authorising.find(tx, school, subject, discipline);
    }

    /// Begins an intake.
    ///
    /// @throws Refusal.Conflict if the school has one of this name
    public Intake beginIntake(School school, Optional<Actor> by, String name, LocalDate startsOn) {
        by.ifPresent(actor -> actor.require(Action.MANAGE_PEOPLE));
        return enrolment.begin(school, name, startsOn);
    }

    /// Puts a student into an intake; doing so twice changes nothing.
    ///
    /// @throws Refusal.NotFound if the school has no such intake or no such person
    public void join(School school, Optional<Actor> by, UUID intake, SubjectId subject) {
        join(school, by, intake, List.of(subject));
    }

    /// Puts students into an intake, all of them or none.
    ///
    /// @throws Refusal.NotFound if the school has no such intake or lacks one of the people
    public void join(School school, Optional<Actor> by, UUID intake, List<SubjectId> subjects) {
        by.ifPresent(actor -> actor.require(Action.MANAGE_PEOPLE));
        enrolment.join(school, intake, subjects);
    }

    /// Returns the intakes, the newest first.
    public List<Intake> listIntakes(School school) {
        return enrolment.listAll(school);
    }

    /// Returns an intake.
    ///
    /// @throws Refusal.NotFound if the school has none of this id
    public Intake getIntake(School school, UUID id) {
        return enrolment.getIntake(school, id);
    }

    /// Returns the students now, of one intake or of all, sorted by family and given name as the
    /// school's language does.
    public List<Person> listStudents(School school, Optional<UUID> intake) {
        List<Person> students =
                foundation
                        .database()
                        .inSchool(
                                school.id(),
                                tx ->
                                        new PersonRepository(tx, school.id())
                                                .listStudents(intake, foundation.now()));
        return Names.sorted(students, school);
    }

    /// Returns everybody in the school with their roles now, sorted by name.
    public List<Member> listMembers(Actor by) {
        by.require(Action.READ_PEOPLE);
        School school = by.school();
        return foundation
                .database()
                .inSchool(
                        school.id(),
                        tx -> {
                            var roles = new RoleRepository(tx, school.id());
                            return Names.sorted(
                                            new PersonRepository(tx, school.id()).listAll(), school)
                                    .stream()
                                    .map(
                                            p ->
                                                    new Member(
                                                            p,
                                                            roles.listInForce(
                                                                    p.subject(), foundation.now())))
                                    .toList();
                        });
    }

    /// A person and their roles now.
    public record Member(Person person, Set<Role> roles) {}

    /// Returns a person of the school.
    ///
    /// @throws Refusal.NotFound if there is none of this id
    public Person getPerson(School school, SubjectId subject) {
        return foundation
                .database()
                .inSchool(
                        school.id(),
                        tx -> new PersonRepository(tx, school.id()).getPerson(subject));
    }

    /// Returns the names of everybody in the school, by subject, for showing who did what.
    public Map<UUID, String> namesIn(School school) {
        return foundation
                .database()
                .inSchool(
                        school.id(),
                        tx ->
                                new PersonRepository(tx, school.id())
                                        .listAll().stream()
                                                .collect(
                                                        Collectors.toMap(
                                                                p -> p.subject().value(),
                                                                Person::name)));
    }

    /// Returns a person's intakes, the newest first.
    public List<Intake> listIntakesOf(School school, SubjectId subject) {
        return enrolment.listOf(school, subject);
    }
}
