package org.groundline.bank;

import static org.assertj.core.api.Assertions.assertThat;

import org.groundline.bank.file.Finding;
import org.junit.jupiter.api.Test;

import java.util.List;
import java.util.Set;

/// Reading one question at a time against a loaded bank, and using a bank as a school does.
class ManuscriptTest {
    private static final Questions BANK = Questions.load(SmallBank.SOUND);
    private static final String NEW =
            """
            topic: EQU-1
            questions:
              - id: buckle-opened-for-the-radio
                objective: EQU-1.1
                level: judge
                stem: You opened one leg strap to reach your radio. What do you do before you launch?
                options:
                  - text: Close it and check every connection again
                    key: true
                  - text: Close it and launch, the rest was checked
                    misconception: straps-only-for-comfort
                  - text: Launch, the chest strap holds you
                    misconception: straps-only-for-comfort
                rationale: Any unbuckling means the whole check again; the chest strap holds nobody.
                source: common practice
            """;

    private static Manuscript read(String text) {
        return BANK.read(text, OwnLists.NONE);
    }

    private static List<String> told(Manuscript manuscript) {
        return manuscript.findings().stream().map(Finding::text).toList();
    }

    @Test
    void aSoundTextIsAQuestion() {
        Manuscript read = read(NEW);

        assertThat(told(read)).isEmpty();
        assertThat(read.question())
                .hasValueSatisfying(q -> assertThat(q.module()).isEqualTo("EQU"));
        assertThat(read.id()).isEqualTo("buckle-opened-for-the-radio");
    }

    @Test
    void everyShippedQuestionIsReadAgainFromItsOwnTextAsTheSameVersion() {
        assertThat(BANK.all()).hasSize(3);
        assertThat(BANK.all())
                .allSatisfy(
                        question ->
                                assertThat(
                                                read(BANK.findText(question.id()).orElseThrow())
                                                        .question())
                                        .map(Question::version)
                                        .hasValue(question.version()));
    }

    @Test
    void whatIsWrongIsToldWithItsLineAndThereIsNoQuestion() {
        Manuscript read = read(NEW.replace("level: judge", "level: guess"));

        assertThat(read.question()).isEmpty();
        assertThat(told(read))
                .singleElement()
                .asString()
                .startsWith("text:5: error: question buckle");
    }

    @Test
    void aTextThatIsNoYamlIsToldAsSuch() {
        assertThat(told(read("topic: ["))).singleElement().asString().contains("this is not YAML");
        assertThat(told(read(""))).singleElement().asString().contains("empty");
        assertThat(read("- a list").question()).isEmpty();
    }

    @Test
    void anUnknownTopicIsToldOnce() {
        assertThat(told(read(NEW.replace("topic: EQU-1", "topic: EQU-9"))))
                .filteredOn(finding -> finding.contains("file-place"))
                .isEmpty();
        assertThat(told(read(NEW.replace("topic: EQU-1", "topic: EQU-9"))))
                .anySatisfy(finding -> assertThat(finding).contains("EQU-9"));
    }

    @Test
    void twoQuestionsInOneTextAreRefused() {
        String second = NEW.substring(NEW.indexOf("  - id:")).replace("for-the-radio", "again");

        Manuscript read = read(NEW + second);

        assertThat(read.question()).isEmpty();
        assertThat(told(read))
                .singleElement()
                .asString()
                .startsWith("text:16: error: the text holds more");
    }

    @Test
    void aSchoolsOwnMisconceptionMayBeNamed() {
        var idea =
                new Misconception(
                        "radio-first",
                        "The radio matters more than the straps.",
                        "Straps come first, always.",
                        "the radio can wait");
        String text =
                NEW.replaceFirst(
                        "misconception: straps-only-for-comfort", "misconception: radio-first");

        assertThat(read(text).question()).isEmpty();
        assertThat(BANK.read(text, new OwnLists(List.of(idea), List.of())).question()).isPresent();
    }

    @Test
    void anOwnQuestionIsAskedBesideTheShippedOnesOrInPlaceOfOne() {
        Question own = read(NEW).question().orElseThrow();
        Question shipped = BANK.ofTopic("EQU-1").getFirst();
        Question instead =
                read(NEW.replace("buckle-opened-for-the-radio", shipped.id()))
                        .question()
                        .orElseThrow();

        Questions beside = BANK.usedAs(new SchoolUse(List.of(own), Set.of(), Set.of()));
        Questions replaced = BANK.usedAs(new SchoolUse(List.of(instead), Set.of(), Set.of()));

        assertThat(beside.ofTopic("EQU-1")).hasSize(BANK.ofTopic("EQU-1").size() + 1).contains(own);
        assertThat(replaced.ofTopic("EQU-1"))
                .hasSize(BANK.ofTopic("EQU-1").size())
                .contains(instead)
                .doesNotContain(shipped);
        assertThat(beside.hash()).isNotEqualTo(BANK.hash());
    }

    @Test
    void aWithdrawnQuestionIsAskedNoMoreAndCanStillBeRead() {
        Question shipped = BANK.ofTopic("EQU-1").getFirst();

        Questions without = BANK.usedAs(new SchoolUse(List.of(), Set.of(shipped.id()), Set.of()));

        assertThat(without.ofTopic("EQU-1")).doesNotContain(shipped);
        assertThat(without.question(shipped.id())).isEqualTo(shipped);
        assertThat(without.hash()).isNotEqualTo(BANK.hash());
    }

    @Test
    void aRuleOfOneCountryIsAskedWhereTheSchoolHasChosenIt() {
        String national =
                NEW.replace(
                        "source: common practice",
                        "source: common practice\n    jurisdiction: \"XA: Act on free flight, 2026\"");
        Question own = read(national).question().orElseThrow();

        assertThat(BANK.usedAs(new SchoolUse(List.of(own), Set.of(), Set.of())).ofTopic("EQU-1"))
                .doesNotContain(own);
        assertThat(
                        BANK.usedAs(new SchoolUse(List.of(own), Set.of(), Set.of("XA")))
                                .ofTopic("EQU-1"))
                .contains(own);
    }
}
