package org.groundline.authoring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.groundline.authoring.Event.Validity;
import org.groundline.bank.Misconception;
import org.groundline.bank.Question;
import org.groundline.error.Refusal;
import org.groundline.school.Actor;
import org.groundline.school.Role;
import org.groundline.school.School;
import org.groundline.sitting.Practices.PracticeItem;
import org.groundline.web.Doors;
import org.groundline.web.TestServer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;

import java.time.Duration;
import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/// A question's way from its first draft to being asked, on a real PostgreSQL.
class AuthoringTest {
    private static final TestServer SERVER = TestServer.start();
    private static final LocalDate TODAY = LocalDate.of(2027, 5, 1);
    private static final Validity FROM_TODAY = new Validity(TODAY, Optional.empty());
    private static final String ID = "buckle-opened-for-a-photo";
    private static final String TEXT =
            """
            topic: EQU-1
            questions:
              - id: buckle-opened-for-a-photo
                objective: EQU-1.2
                level: judge
                safety-critical: true
                stem: You opened one leg strap for a photo. What do you do before you launch?
                options:
                  - text: Close it and begin the whole check again
                    key: true
                  - text: Close it and launch, the rest was checked
                    misconception: earlier-check-counts
                  - text: Launch, as the chest strap is closed
                    misconception: chest-strap-holds-pilot
                rationale: >
                  After any unbuckling the whole check begins again, as the photo may have
                  interrupted more than the strap. A closed chest strap holds nobody.
                source: common practice
            """;

    private final School school =
            SERVER.givenSchool("s" + UUID.randomUUID().toString().substring(0, 8));
    private final Actor author = given("ute", Role.AUTHOR);
    private final Actor reviewer = given("rita", Role.REVIEWER);
    private final Actor chief = given("cara", Role.CHIEF_INSTRUCTOR);
    private final Doors doors = SERVER.doors();

    private Actor given(String name, Role role) {
        SERVER.givenPerson(school, name, role);
        return SERVER.actor(school, name);
    }

    @AfterAll
    static void stop() {
        SERVER.close();
    }

    private Edition keep(String text, int since) {
        return doors.editions().keep(author, new Editions.Writing(text, since, Change.SUBSTANTIVE));
    }

    private Edition submitted(String text) {
        Edition edition =
                keep(
                        text,
                        doors.dossiers().list(chief).stream().anyMatch(l -> l.id().equals(ID))
                                ? latest()
                                : 0);
        doors.editions().submit(author, edition.id());
        return edition;
    }

    private int latest() {
        return doors.dossiers().get(chief, ID).latest().map(s -> s.edition().number()).orElse(0);
    }

    private void approve(Edition edition, Validity validity) {
        doors.reviews().approve(reviewer, edition.id(), edition.version().orElseThrow(), validity);
    }

    private State state(Edition edition) {
        return doors.dossiers().get(chief, edition.questionId()).editions().stream()
                .filter(stand -> stand.edition().equals(edition))
                .findFirst()
                .orElseThrow()
                .state();
    }

    private Optional<Question> asked() {
        return doors.dossiers().get(chief, ID).asked();
    }

    @Test
    void aQuestionIsAskedOnceASecondPersonHasApprovedIt() {
        Edition edition = keep(TEXT, 0);
        assertThat(state(edition)).isEqualTo(State.DRAFT);
        assertThat(asked()).isEmpty();

        doors.editions().submit(author, edition.id());
        assertThat(state(edition)).isEqualTo(State.SUBMITTED);
        assertThat(asked()).isEmpty();

        approve(edition, FROM_TODAY);
        assertThat(state(edition)).isEqualTo(State.LIVE);
        assertThat(asked()).map(Question::version).isEqualTo(edition.version());
    }

    @Test
    void nobodyApprovesTheirOwnText() {
        var wish = new Editions.Writing(TEXT, 0, Change.SUBSTANTIVE);
        Edition own = doors.editions().keep(chief, wish);
        doors.editions().submit(chief, own.id());

        assertThatThrownBy(
                        () ->
                                doors.reviews()
                                        .approve(
                                                chief,
                                                own.id(),
                                                own.version().orElseThrow(),
                                                FROM_TODAY))
                .isInstanceOf(Refusal.Conflict.class)
                .hasMessageContaining("A second person must read it");
        assertThatThrownBy(() -> doors.reviews().sendBack(chief, own.id(), "no"))
                .isInstanceOf(Refusal.Conflict.class);
        assertThat(state(own)).isEqualTo(State.SUBMITTED);
    }

    @Test
    void whatWasSentBackIsAnsweredByTheNextEdition() {
        Edition first = submitted(TEXT);
        doors.reviews().sendBack(reviewer, first.id(), "The stem could name the helmet, too.");
        assertThat(state(first)).isEqualTo(State.SENT_BACK);
        assertThatThrownBy(() -> approve(first, FROM_TODAY)).isInstanceOf(Refusal.Conflict.class);

        Edition second = submitted(TEXT.replace("one leg strap", "one of the leg straps"));
        approve(second, FROM_TODAY);

        assertThat(second.number()).isEqualTo(2);
        assertThat(state(second)).isEqualTo(State.LIVE);
        assertThat(doors.dossiers().get(author, ID).remarks())
                .singleElement()
                .satisfies(remark -> assertThat(remark.text()).contains("helmet"));
    }

    @Test
    void aNewEditionRetiresTheOldOneOnlyWhenItIsApprovedAndItsDayHasCome() {
        Edition old = submitted(TEXT);
        approve(old, FROM_TODAY);
        Edition next = submitted(TEXT.replace("one leg strap", "one of the leg straps"));
        assertThat(asked()).map(Question::version).isEqualTo(old.version());

        approve(next, new Validity(TODAY.plusDays(3), Optional.empty()));
        assertThat(state(next)).isEqualTo(State.REVIEWED);
        assertThat(state(old)).isEqualTo(State.LIVE);

        SERVER.passes(Duration.ofDays(3));
        try {
            assertThat(state(next)).isEqualTo(State.LIVE);
            assertThat(state(old)).isEqualTo(State.RETIRED);
            assertThat(asked()).map(Question::version).isEqualTo(next.version());
            assertThat(next.origin())
                    .hasValue(new Edition.Origin(old.version().orElseThrow(), Change.SUBSTANTIVE));
        } finally {
            SERVER.passes(Duration.ofDays(-3));
        }
    }

    @Test
    void aQuestionIsAskedNoLongerThanItIsValid() {
        approve(submitted(TEXT), new Validity(TODAY, Optional.of(TODAY.plusDays(1))));
        assertThat(asked()).isPresent();

        SERVER.passes(Duration.ofDays(2));
        try {
            assertThat(asked()).isEmpty();
        } finally {
            SERVER.passes(Duration.ofDays(-2));
        }
    }

    @Test
    void aTextWithErrorsIsKeptAndCannotBeSubmitted() {
        Edition edition = keep(TEXT.replace("level: judge", "level: guess"), 0);

        assertThat(edition.version()).isEmpty();
        assertThatThrownBy(() -> doors.editions().submit(author, edition.id()))
                .isInstanceOf(Refusal.Conflict.class)
                .hasMessageContaining("still has errors");
        assertThat(doors.dossiers().get(author, ID).latest().orElseThrow().edition().text())
                .contains("level: guess");
    }

    @Test
    void twoAuthorsWhoWriteAtOnceDoNotOverwriteEachOther() {
        keep(TEXT, 0);

        assertThatThrownBy(() -> keep(TEXT.replace("photo.", "picture."), 0))
                .isInstanceOf(Refusal.Stale.class);
        assertThat(latest()).isEqualTo(1);
    }

    @Test
    void aShippedQuestionIsReplacedWithdrawnAndRestored() {
        Question shipped = TestServer.bank().ofTopic("EQU-1").getFirst();
        String text = TestServer.bank().findText(shipped.id()).orElseThrow();
        Edition own =
                keep(text.replace("rationale: >\n", "rationale: >\n      Read closely.\n"), 0);
        assertThat(own.version()).isPresent().isNotEqualTo(Optional.of(shipped.version()));
        assertThat(own.origin().orElseThrow().version()).isEqualTo(shipped.version());
        doors.editions().submit(author, own.id());
        approve(own, FROM_TODAY);
        assertThat(doors.dossiers().get(chief, shipped.id()).asked())
                .map(Question::version)
                .isEqualTo(own.version());

        doors.reviews().retire(reviewer, own.id(), "The shipped one is better.");
        assertThat(doors.dossiers().get(chief, shipped.id()).asked()).hasValue(shipped);

        doors.reviews().withdraw(chief, shipped.id(), "Two answers are right at our site.");
        assertThat(doors.dossiers().get(chief, shipped.id()).asked()).isEmpty();
        assertThatThrownBy(() -> doors.reviews().withdraw(chief, shipped.id(), "again"))
                .isInstanceOf(Refusal.Conflict.class);

        doors.reviews().restore(chief, shipped.id(), "It was the right one after all.");
        assertThat(doors.dossiers().get(chief, shipped.id()).asked()).hasValue(shipped);
    }

    @Test
    void studentsPractiseTheSchoolsOwnQuestions() {
        approve(submitted(TEXT), FROM_TODAY);
        TestServer.bank()
                .ofTopic("EQU-1")
                .forEach(q -> doors.reviews().withdraw(chief, q.id(), "Only ours is asked here."));
        Actor student = given("ada", Role.STUDENT);

        PracticeItem item = doors.practices().next(student, "EQU-1");

        assertThat(item.item().questionId()).isEqualTo(ID);
    }

    @Test
    void anotherSchoolSeesNothingOfIt() {
        approve(submitted(TEXT), FROM_TODAY);
        School other = SERVER.givenSchool("o" + UUID.randomUUID().toString().substring(0, 8));
        SERVER.givenPerson(other, "otto", Role.CHIEF_INSTRUCTOR);
        Actor stranger = SERVER.actor(other, "otto");

        assertThatThrownBy(() -> doors.dossiers().get(stranger, ID))
                .isInstanceOf(Refusal.NotFound.class);
        assertThat(doors.dossiers().list(stranger)).hasSize(TestServer.bank().all().size());
        assertThat(doors.dossiers().list(chief)).hasSize(TestServer.bank().all().size() + 1);
    }

    @Test
    void anOwnMisconceptionIsNamedAndChangesTheVersionWhenItIsWrittenAgain() {
        var idea =
                new Misconception(
                        "photo-first",
                        "A photo matters more than a strap.",
                        "No photo is worth an open strap.",
                        "the photo can wait");
        doors.ownWords().enter(author, idea);
        String text = TEXT.replace("earlier-check-counts", "photo-first");
        Edition edition = submitted(text);
        doors.ownWords()
                .enter(
                        author,
                        new Misconception(
                                idea.id(),
                                idea.wrong(),
                                idea.right(),
                                "this puts the photo first"));

        assertThatThrownBy(() -> approve(edition, FROM_TODAY))
                .isInstanceOf(Refusal.Stale.class)
                .hasMessageContaining("reads differently now");
    }

    @Test
    void anOwnMisconceptionKeepsTheRulesOfTheBank() {
        assertThatThrownBy(
                        () ->
                                doors.ownWords()
                                        .enter(
                                                author,
                                                new Misconception(
                                                        "Photo First", "No.", "Yes.", "x")))
                .isInstanceOf(Refusal.Invalid.class)
                .hasMessageContaining("small letters");
        Misconception shipped = TestServer.bank().misconception("wind-ignored");
        assertThatThrownBy(() -> doors.ownWords().enter(author, shipped))
                .isInstanceOf(Refusal.Invalid.class)
                .hasMessageContaining("A shipped misconception has the id");
    }

    @Test
    void whatIsLiveIsExportedAsFilesThatTheBankReads() {
        doors.ownWords()
                .enter(
                        author,
                        new Misconception(
                                "photo-first",
                                "A photo matters more than a strap.",
                                "No photo is worth an open strap.",
                                "the photo can wait"));
        Edition live = submitted(TEXT.replace("earlier-check-counts", "photo-first"));
        approve(live, FROM_TODAY);
        keep(TEXT.replace(ID, "only-a-draft"), 0);

        var files = doors.ownFiles().of(chief);

        assertThat(files).containsOnlyKeys("misconceptions.yaml", "EQU/own-" + ID + ".yaml");
        assertThat(files.get("EQU/own-" + ID + ".yaml")).isEqualTo(live.text());
        assertThat(files.get("misconceptions.yaml"))
                .contains("- id: photo-first", "wrong: A photo matters more than a strap.");
    }

    @Test
    void theAirLawOfACountryIsLiveWhenEachPointHasAnApprovedQuestion() {
        Actor instructor = given("ina", Role.INSTRUCTOR);
        assertThat(doors.airLaw().pack(instructor).isLive()).isFalse();
        doors.airLaw().choose(chief, new AirLaw.Choice("XA", Set.of("EU")));
        var points = doors.airLaw().pack(instructor).points();
        assertThat(points).hasSizeGreaterThanOrEqualTo(10);

        for (AirLaw.Point point : points) {
            assertThat(doors.airLaw().pack(instructor).isLive()).isFalse();
            String objective = point.objective().id();
            String text =
                    TEXT.replace("topic: EQU-1", "topic: " + objective.substring(0, 5))
                            .replace("EQU-1.2", objective)
                            .replace(ID, "national-" + objective.toLowerCase().replace('.', '-'))
                            .replace(
                                    "source: common practice",
                                    "source: common practice\n    jurisdiction: \"XA: Act on free flight, 2027\"");
            Edition edition = keep(text, 0);
            doors.editions().submit(author, edition.id());
            approve(edition, FROM_TODAY);
        }

        assertThat(doors.airLaw().pack(instructor).isLive()).isTrue();
        doors.airLaw().choose(chief, new AirLaw.Choice("XB", Set.of()));
        assertThat(doors.airLaw().pack(instructor).isLive()).isFalse();
        assertThatThrownBy(() -> doors.airLaw().choose(chief, new AirLaw.Choice("Q9", Set.of())))
                .isInstanceOf(Refusal.Invalid.class);
        assertThatThrownBy(
                        () -> doors.airLaw().choose(chief, new AirLaw.Choice("XA", Set.of("MARS"))))
                .isInstanceOf(Refusal.Invalid.class);
    }

    @Test
    void aChosenPackIsAskedAndAnotherIsNot() {
        doors.airLaw().choose(chief, new AirLaw.Choice("XA", Set.of("EU")));

        var asked = doors.dossiers().list(chief).stream().filter(Dossiers.Listed::asked).toList();

        assertThat(asked)
                .flatExtracting(l -> l.question().orElseThrow().jurisdiction().stream().toList())
                .isNotEmpty()
                .allSatisfy(where -> assertThat(where.code()).isEqualTo("EU"));
    }
}
