package org.groundline.web.api;

import static org.assertj.core.api.Assertions.assertThat;

import org.groundline.bank.Demonstration;
import org.groundline.web.TestServer;
import org.groundline.web.api.Deeds.Seen;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import java.util.List;
import java.util.UUID;

/// What people do by the API alone leaves the same rows as what they do by the doors that the pages
/// ask: two schools, the same story, compared table by table.
class EquivalenceTest {
    private static final TestServer SERVER = TestServer.start();
    private static final TaughtSchool BY_DOORS = new TaughtSchool(SERVER);
    private static final TaughtSchool BY_API = new TaughtSchool(SERVER);

    @BeforeAll
    static void tell() {
        tell(BY_DOORS, new DoorDeeds(BY_DOORS));
        tell(BY_API, new ApiDeeds(BY_API));
    }

    @AfterAll
    static void stop() {
        SERVER.close();
    }

    private static void tell(TaughtSchool taught, Deeds deeds) {
        deeds.enterStudent("bo");
        deeds.authorise();
        deeds.acknowledge("EQU-1");
        deeds.practise("EQU-1");
        practise(taught, deeds);
        deeds.openTest("EQU");
        sit(taught, deeds);
        train(taught, deeds);
        deeds.beginIntake("Summer", "bo");
        deeds.changePolicy();
        deeds.changePassword("bo");
    }

    private static void practise(TaughtSchool taught, Deeds deeds) {
        for (boolean right : List.of(true, false, true)) {
            Seen seen = deeds.practise("EQU-1");
            UUID clientId = TestServer.newId();
            String answer = right ? taught.right(seen.item()) : taught.wrong(seen.item());
            deeds.answerPractice(seen, clientId, answer);
            deeds.answerPractice(seen, clientId, answer);
        }
    }

    /// One safety-critical item wrong, one other item left out, one answer changed, one sent twice.
    private static void sit(TaughtSchool taught, Deeds deeds) {
        List<Seen> paper = deeds.begin();
        Seen missed = first(paper, taught, true);
        Seen left = first(paper, taught, false);
        int sequence = 0;
        for (Seen seen : paper) {
            if (!seen.equals(left)) {
                UUID clientId = TestServer.newId();
                deeds.answer(seen, clientId, sequence, taught.wrong(seen.item()));
                deeds.answer(seen, clientId, sequence++, taught.wrong(seen.item()));
            }
            if (!seen.equals(left) && !seen.equals(missed)) {
                deeds.answer(seen, TestServer.newId(), sequence++, taught.right(seen.item()));
            }
        }
        deeds.flag(paper.get(0), true);
        deeds.flag(paper.get(1), true);
        deeds.flag(paper.get(1), false);
        deeds.handIn(paper.get(0).sitting());
        deeds.handIn(paper.get(0).sitting());
    }

    private static Seen first(List<Seen> paper, TaughtSchool taught, boolean safetyCritical) {
        return paper.stream()
                .filter(seen -> taught.isSafetyCritical(seen.item()) == safetyCritical)
                .findFirst()
                .orElseThrow();
    }

    private static void train(TaughtSchool taught, Deeds deeds) {
        UUID item =
                UUID.fromString(
                        taught.one(
                                "select item_id from mark where safety_critical and verdict = 'wrong'"));
        deeds.debrief(item, "not yet understood", "");
        deeds.debrief(item, "explained back", "On her own harness.");
        var module = TestServer.bank().course().findModule("EQU").orElseThrow();
        module.demonstrations().stream().map(Demonstration::id).forEach(deeds::demonstrate);
        deeds.signOff("EQU");
        deeds.reverse("EQU", "Seen on the wrong harness.");
        deeds.signOff("EQU");
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            textBlock =
                    """
                    person          | given_name, family_name
                    brief_acknowledgement | topic, version
                    role_grant      | role, granted_by is null
                    authorisation   | number, discipline, launch_methods, issuer, valid_from, valid_until
                    intake          | name, starts_on
                    intake_member   | joined_on
                    policy          | version, rules
                    opening         | stakes, place, closes_at - opens_at
                    paper           | stakes, blueprint_id is null
                    sitting         | stakes, scope, policy_version, deadline_at - started_at, handed_in_by
                    sitting_event   | kind, actor_id is null
                    seat            | number
                    flag            | 1
                    answer          | stakes, seat, sequence, client_time is null, received_at
                    scoring_run     | scoring_version, reason, hundredths, possible, passed
                    mark            | topic
                    mark            | verdict, hundredths, possible, answer_id is null
                    result          | 1
                    debrief         | outcome, note_id is null
                    demonstration   | demonstration, note_id is null
                    sign_off        | module, discipline
                    reversal        | 1
                    note            | text
                    ledger_entry    | kind, (select string_agg(k, ' ' order by k) from jsonb_object_keys(body::jsonb -> 'facts') k)
                    ledger_salt     | part
                    audit_entry     | action, regexp_replace(object, '[0-9a-f-]{36}', ''), actor_id is null, subject_id is null
                    """)
    void theRowsAreTheSame(String table, String columns) {
        List<String> byDoors = rows(BY_DOORS, table, columns);

        assertThat(rows(BY_API, table, columns)).isEqualTo(byDoors).isNotEmpty();
    }

    private static List<String> rows(TaughtSchool taught, String table, String columns) {
        return SERVER.database()
                .inSchool(
                        taught.school.id(),
                        tx ->
                                tx.fetch(
                                                "select row(%s)::text from %s order by 1"
                                                        .formatted(columns, table))
                                        .map(row -> String.valueOf(row.get(0))));
    }
}
