package org.groundline.record;

import static org.assertj.core.api.Assertions.assertThat;

import org.groundline.bank.Demonstration;
import org.groundline.bank.Module;
import org.groundline.bank.Shown;
import org.groundline.database.SubjectId;
import org.junit.jupiter.api.Test;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/// Where a student stands, from the evidence alone.
class ModuleRecordTest {
    private static final Instant THEN = Instant.parse("2027-05-01T08:00:00Z");
    private static final Demonstration CHECK =
            new Demonstration("EQU-D1", "Check", "All closed.", true);
    private static final Module MODULE = new Module("EQU", "Equipment", List.of(), List.of(CHECK));
    private static final SubjectId INA = new SubjectId(UUID.randomUUID());

    private List<Attempt> attempts = List.of();
    private boolean sitting;
    private List<TalkItem> talks = List.of();
    private Optional<ShownDemonstration.Observation> shown = Optional.empty();
    private List<SignOff> signOffs = List.of();

    private ModuleRecord record() {
        var demonstrations = List.of(new ShownDemonstration(CHECK, shown));
        return new ModuleRecord(MODULE, attempts, sitting, talks, demonstrations, signOffs);
    }

    private static Attempt attempt(int hundredths, boolean passed) {
        return new Attempt(UUID.randomUUID(), THEN, 7_500, hundredths, 3_000, passed);
    }

    private static SignOff signOff(boolean reversed) {
        Optional<SignOff.Reversal> reversal =
                reversed
                        ? Optional.of(new SignOff.Reversal(INA, THEN, UUID.randomUUID()))
                        : Optional.empty();
        return new SignOff(UUID.randomUUID(), UUID.randomUUID(), INA, THEN, reversal);
    }

    private static TalkItem talk() {
        return new TalkItem(
                UUID.randomUUID(),
                UUID.randomUUID(),
                "EQU-1",
                new Shown.Number("?", "m", true, List.of()),
                "en",
                "12",
                "wrong",
                "",
                0);
    }

    @Test
    void withoutATestItHasNotBegun() {
        assertThat(record().state()).isEqualTo(new ModuleState.NotBegun());
    }

    @Test
    void aTestBeingSatIsToldAndAFailedOneShowsItsMarks() {
        sitting = true;
        assertThat(record().state()).isEqualTo(new ModuleState.Sitting());
        sitting = false;
        attempts = List.of(attempt(1_900, false), attempt(2_000, false));
        assertThat(record().state()).isEqualTo(new ModuleState.NotPassed(2_000, 3_000, 7_500));
    }

    @Test
    void aPassAloneIsNotReady() {
        attempts = List.of(attempt(2_700, true));
        talks = List.of(talk());
        assertThat(record().state()).isEqualTo(new ModuleState.Passed(1, 1));
    }

    @Test
    void passedTalkedThroughAndShownIsReadyOnTheLastPass() {
        Attempt last = attempt(2_900, true);
        attempts = List.of(attempt(2_700, true), last, attempt(1_000, false));
        shown = Optional.of(new ShownDemonstration.Observation(INA, THEN));

        assertThat(record().state()).isEqualTo(new ModuleState.Ready());
        assertThat(record().basis()).contains(last);
    }

    @Test
    void aSignOffStandsUntilItIsReversed() {
        attempts = List.of(attempt(2_700, true));
        shown = Optional.of(new ShownDemonstration.Observation(INA, THEN));
        signOffs = List.of(signOff(true));
        assertThat(record().state()).isEqualTo(new ModuleState.Ready());
        signOffs = List.of(signOff(true), signOff(false));
        assertThat(record().state()).isEqualTo(new ModuleState.SignedOff(THEN));
    }
}
