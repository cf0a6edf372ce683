package org.groundline.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.groundline.bank.Brief;
import org.groundline.bank.Questions;
import org.groundline.bank.SmallBank;
import org.groundline.database.SubjectId;
import org.groundline.error.Refusal;
import org.groundline.school.Actor;
import org.groundline.school.Role;
import org.groundline.school.School;
import org.groundline.web.TestServer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import java.nio.file.Path;
import java.time.Instant;
import java.util.UUID;

/// Reading the briefs of the small bank, through the door.
class ReadingsTest {
    private static final TestServer SERVER = TestServer.startWith(Questions.load(SmallBank.SOUND));

    @TempDir private Path folder;
    private final School school =
            SERVER.givenSchool("s" + UUID.randomUUID().toString().substring(0, 8));
    private final SubjectId ada = SERVER.givenPerson(school, "ada", Role.STUDENT);
    private final Readings readings = SERVER.doors().readings();
    private Actor reader;

    @BeforeEach
    void givenReader() {
        reader = SERVER.actor(school, "ada");
    }

    @AfterAll
    static void stop() {
        SERVER.close();
    }

    private Actor given(String name, Role role) {
        SERVER.givenPerson(school, name, role);
        return SERVER.actor(school, name);
    }

    private Brief glide() {
        return readings.getBrief(reader, "AER-2");
    }

    /// The same school with a brief that was mended.
    private Readings mended() {
        SmallBank bank =
                SmallBank.copiedTo(folder).replace("briefs/AER-2.md", "the same time", "one time");
        return new Readings(SERVER.doors().foundation(), Questions.load(bank.folder()));
    }

    @Test
    void nothingIsReadBeforeSomebodySaysSo() {
        assertThat(readings.listOf(reader, ada))
                .containsOnlyKeys("EQU-1", "AER-2")
                .containsEntry("EQU-1", new Reading.Unread())
                .containsEntry("AER-2", new Reading.Unread());
    }

    @Test
    void aBriefThatIsAcknowledgedIsReadFromThenOn() {
        readings.acknowledge(reader, "AER-2", glide().version());

        assertThat(readings.getOwn(reader, glide())).isInstanceOf(Reading.Current.class);
        assertThat(readings.listOf(reader, ada)).containsEntry("EQU-1", new Reading.Unread());
    }

    @Test
    void theFirstOfTwoAcknowledgementsStands() {
        readings.acknowledge(reader, "AER-2", glide().version());
        Reading first = readings.getOwn(reader, glide());

        readings.acknowledge(reader, "AER-2", glide().version());

        assertThat(readings.getOwn(reader, glide())).isEqualTo(first);
    }

    @Test
    void aBriefThatWasMendedHasChangedSinceItWasReadUntilItIsReadAgain() {
        readings.acknowledge(reader, "AER-2", glide().version());
        Instant read = ((Reading.Current) readings.getOwn(reader, glide())).at();
        Readings mended = mended();
        Brief after = mended.getBrief(reader, "AER-2");

        assertThat(mended.getOwn(reader, after)).isEqualTo(new Reading.Changed(read));
        mended.acknowledge(reader, "AER-2", after.version());

        assertThat(mended.getOwn(reader, after)).isInstanceOf(Reading.Current.class);
        assertThat(readings.getOwn(reader, glide())).isEqualTo(new Reading.Current(read));
    }

    @Test
    void whatIsNoLongerThereCannotBeAcknowledged() {
        String before = glide().version();
        Readings mended = mended();

        assertThatThrownBy(() -> mended.acknowledge(reader, "AER-2", before))
                .isInstanceOf(Refusal.Conflict.class)
                .hasMessageContaining("changed since you opened it");
        assertThat(mended.listOf(reader, ada)).containsEntry("AER-2", new Reading.Unread());
    }

    @Test
    void staffSeeWhatAStudentHasReadAndStudentsOnlyTheirOwn() {
        readings.acknowledge(reader, "AER-2", glide().version());
        Actor ina = given("ina", Role.INSTRUCTOR);
        Actor ben = given("ben", Role.STUDENT);

        assertThat(readings.listOf(ina, ada)).isEqualTo(readings.listOf(reader, ada));
        assertThatThrownBy(() -> readings.listOf(ben, ada)).isInstanceOf(Refusal.NotFound.class);
    }

    @Test
    void anInspectorReadsBriefsAndAcknowledgesNone() {
        Actor ines = given("ines", Role.INSPECTOR);

        assertThat(readings.listBriefs(ines, "AER")).containsExactly(glide());
        assertThatThrownBy(() -> readings.acknowledge(ines, "AER-2", glide().version()))
                .isInstanceOf(Refusal.Forbidden.class);
    }

    @Test
    void whatTheCourseOrTheBankDoesNotHaveIsNotFound() {
        assertThatThrownBy(() -> readings.getBrief(reader, "XYZ-1"))
                .isInstanceOf(Refusal.NotFound.class)
                .hasMessage("The course has no such topic.");
        assertThatThrownBy(() -> readings.listBriefs(reader, "XYZ"))
                .isInstanceOf(Refusal.NotFound.class);
    }
}
