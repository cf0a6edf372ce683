package org.groundline.bank;

import static org.assertj.core.api.Assertions.assertThat;

import org.groundline.diagram.Purpose;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/// The briefs of the small bank; what is wrong with one is told in `broken.yaml`.
class BriefTest {
    private static final String GLIDE = "briefs/AER-2.md";

    @TempDir private Path folder;

    private static Brief glide(SmallBank bank) {
        return bank.load().findBrief("AER-2").orElseThrow();
    }

    @Test
    void aBriefHasItsTextItsSourcesAndItsPictures() {
        Brief brief = glide(new SmallBank(SmallBank.SOUND));

        assertThat(brief.module()).isEqualTo("AER");
        assertThat(brief.text()).startsWith("## Glide is a triangle");
        assertThat(brief.sources())
                .extracting(Citation::text)
                .containsExactly(
                        "A Small Handbook, second edition (An Invented Press, 2024), p. 12",
                        "Common practice, no source");
        assertThat(brief.figures()).containsOnlyKeys("diagram:glide");
    }

    @Test
    void itsDrawingTellsItsValuesAsTheyAreWritten() {
        Brief brief = glide(new SmallBank(SmallBank.SOUND));
        Figure glide = brief.figures().values().iterator().next();

        assertThat(glide.draw(Purpose.SOLUTION, "f").svg())
                .contains("height 500\u202Fm<")
                .contains("distance 4\u202Fkm<");
    }

    @Test
    void aModuleGivesItsBriefsInTheOrderOfItsTopics() {
        Questions bank = new SmallBank(SmallBank.SOUND).load();

        assertThat(bank.briefsOf("EQU")).extracting(Brief::topic).containsExactly("EQU-1");
        assertThat(bank.briefsOf("XYZ")).isEmpty();
        assertThat(bank.findBrief("XYZ-1")).isEmpty();
    }

    @Test
    void anotherTextSourceOrPictureMakesAnotherVersionOfTheBriefAndTheBank() {
        SmallBank bank = SmallBank.copiedTo(folder);
        String version = glide(bank).version();
        String hash = bank.load().hash();

        assertThat(version).matches("[0-9a-f]{64}");
        assertOther(bank, version, hash, "sink rate.", "sinking speed.");
        assertOther(bank, version, hash, "p. 12", "p. 13");
        assertOther(bank, version, hash, "500 m,", "600 m,");
        assertThat(glide(bank).version()).isEqualTo(version);
    }

    private static void assertOther(
            SmallBank bank, String version, String hash, String old, String text) {
        bank.replace(GLIDE, old, text);
        assertThat(glide(bank).version()).isNotEqualTo(version);
        assertThat(bank.load().hash()).isNotEqualTo(hash);
        bank.replace(GLIDE, text, old);
    }

    @Test
    void lineEndsOfAnotherSystemAreNoOtherVersion() {
        SmallBank bank = SmallBank.copiedTo(folder);
        String version = glide(bank).version();

        bank.write(GLIDE, bank.read(GLIDE).replace("\n", "\r\n"));

        assertThat(glide(bank).version()).isEqualTo(version);
    }

    @Test
    void aBriefThatIsMissingIsWorthALookAndNoError() {
        SmallBank bank = SmallBank.copiedTo(folder).remove(GLIDE);

        assertThat(bank.findings())
                .containsExactly(
                        "syllabus.yaml:23: warning: topic AER-2 has no brief; write one in the"
                                + " folder briefs (topic-without-brief)");
        assertThat(bank.load().findBrief("AER-2")).isEmpty();
    }

    @Test
    void aBriefForNoTopicIsAnError() {
        SmallBank bank = SmallBank.copiedTo(folder);
        bank.write("briefs/AER-9.md", bank.read(GLIDE).replace("AER-2", "AER-9"));

        assertThat(bank.findings())
                .containsExactly(
                        "briefs/AER-9.md:2: error: the brief names the unknown topic 'AER-9'; did"
                                + " you mean 'AER-2'? (topic-unknown)");
    }

    @Test
    void anIllustrationThatOnlyABriefShowsIsUsed() {
        String ridge =
                """
                <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 340 200">
                  <title>A ridge</title>
                  <desc>A ridge from the side.</desc>
                  <path d="M10 180L170 60L330 180"/>
                </svg>
                """;
        SmallBank bank =
                SmallBank.copiedTo(folder)
                        .write("illustrations/ridge.svg", ridge)
                        .replace(
                                GLIDE,
                                "(diagram:glide)\n",
                                "(diagram:glide)\n\n![A *ridge*](../illustrations/ridge.svg) {AER-2.1}\n");

        assertThat(bank.findings()).isEmpty();
        assertThat(glide(bank).figures())
                .containsOnlyKeys("diagram:glide", "../illustrations/ridge.svg");
    }

    @Test
    void markdownNestedWithoutEndIsReadWithoutHarm() {
        SmallBank bank = SmallBank.copiedTo(folder);
        String sound = bank.read(GLIDE);
        List<String> findings = new ArrayList<>();
        for (String nest : new String[] {"> ", "- ", "*a ", "**a ", "[", "![", "{", "| "}) {
            bank.write(GLIDE, sound + "\n" + nest.repeat(4_000 / nest.length()));
            findings.addAll(bank.findings());
        }
        assertThat(findings).anyMatch(finding -> finding.contains("BlockQuote"));
    }
}
