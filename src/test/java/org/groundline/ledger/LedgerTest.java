package org.groundline.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;

import org.groundline.database.Database;
import org.groundline.database.SubjectId;
import org.groundline.database.TestDatabase;
import org.groundline.school.People;
import org.groundline.school.People.NewPerson;
import org.groundline.school.Role;
import org.groundline.school.School;
import org.groundline.school.Schools;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

import java.time.Instant;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

class LedgerTest {
    private final Database database = TestDatabase.open();
    private final Foundation foundation =
            Foundation.on(database, () -> Instant.parse("2027-05-01T08:00:00.123456789Z"));
    private final School school =
            new Schools(foundation)
                    .create(new Schools.NewSchool("here", "Here", "Europe/Vienna", "en"));

    @AfterEach
    void close() {
        database.close();
    }

    private List<Record> entries() {
        return database.inSchool(
                school.id(),
                tx ->
                        List.copyOf(
                                tx.fetch(
                                        "select id, kind, body, entered_at from ledger_entry order by id")));
    }

    private Record roleEntry() {
        return entries().stream()
                .filter(r -> r.get("kind", String.class).equals("role"))
                .findFirst()
                .orElseThrow();
    }

    private SubjectId givenPerson() {
        return new People(foundation)
                .enter(
                        school,
                        Optional.empty(),
                        new NewPerson(
                                "Zebulon", "Quill", "zq@here.example", "a long enough sentence"),
                        java.util.Set.of(Role.STUDENT));
    }

    @Test
    void policyAndRoleChangesAreEnteredAsTheyHappen() {
        givenPerson();

        assertThat(entries().stream().map(r -> r.get("kind", String.class)))
                .containsExactlyInAnyOrder("policy", "role");
    }

    @Test
    void anEntryIsCanonicalAndNamesNobody() throws Exception {
        givenPerson();
        String body = roleEntry().get("body", String.class);
        JsonNode json = new ObjectMapper().readTree(body);

        assertThat(json.fieldNames())
                .toIterable()
                .containsExactly(
                        "entered", "facts", "format", "happened", "kind", "school", "subject");
        assertThat(json.get("entered").asText()).isEqualTo("2027-05-01T08:00:00.123456Z");
        assertThat(json.get("facts").get("role").asText()).isEqualTo("student");
        assertThat(body).doesNotContain("Zebulon", "Quill", "zq@").doesNotContain(" ");
    }

    @Test
    void whoHoldsTheSaltCanShowWhomAnEntryIsAbout() throws Exception {
        SubjectId subject = givenPerson();
        Record entry = roleEntry();
        String named =
                new ObjectMapper()
                        .readTree(entry.get("body", String.class))
                        .get("subject")
                        .asText();
        byte[] salt =
                database.inSchool(
                        school.id(),
                        tx ->
                                tx.fetchOne(
                                                "select salt from ledger_salt where entry_id = ? and part = 'subject'",
                                                entry.get("id", UUID.class))
                                        .get(0, byte[].class));

        String hex = HexFormat.of().formatHex(salt);

        assertThat(Ledger.Commitment.of(subject, hex).hex()).isEqualTo(named);
        assertThat(Ledger.Commitment.of(new SubjectId(UUID.randomUUID()), hex).hex())
                .isNotEqualTo(named);
    }

    @Test
    void theServerCanNeitherEditNorDeleteAnEntry() {
        assertThatThrownBy(() -> run(tx -> tx.execute("update ledger_entry set kind = 'result'")))
                .hasMessageContaining("permission denied");
        assertThatThrownBy(() -> run(tx -> tx.execute("delete from ledger_entry")))
                .hasMessageContaining("permission denied");
        assertThatThrownBy(() -> run(tx -> tx.execute("truncate ledger_entry")))
                .hasMessageContaining("permission denied");
    }

    private int run(java.util.function.Function<DSLContext, Integer> work) {
        return database.inSchool(school.id(), work);
    }

    @Test
    void anEntryThatIsRolledBackWithItsDeedIsNotThere() {
        assertThatThrownBy(
                        () ->
                                database.doInSchool(
                                        school.id(),
                                        tx -> {
                                            foundation
                                                    .ledger()
                                                    .write(
                                                            tx,
                                                            school.id(),
                                                            new Entry(
                                                                    EntryKind.RESULT,
                                                                    foundation.now(),
                                                                    Optional.empty(),
                                                                    Optional.empty(),
                                                                    Map.of()));
                                            throw new IllegalStateException("the deed failed");
                                        }))
                .hasMessage("the deed failed");

        assertThat(entries()).hasSize(1);
    }
}
