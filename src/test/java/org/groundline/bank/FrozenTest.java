package org.groundline.bank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.groundline.diagram.Diagram;
import org.groundline.diagram.Diagrams;
import org.groundline.diagram.Purpose;
import org.junit.jupiter.api.Test;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

class FrozenTest {
    private static final Belief BELIEF =
            new Belief("wind-ignored", "this leaves the wind out", "The wind counts.");
    private static final Shown.Number NUMBER =
            new Shown.Number("How far, “over ground”?", "m", true, List.of());
    private static final Shown.Choice CHOICE =
            new Shown.Choice("Which?", List.of("x", "y", "z"), List.of());
    private static final Key.Choice CHOICE_KEY =
            new Key.Choice(
                    "B",
                    Map.of("A", BELIEF, "C", BELIEF),
                    "Because.",
                    List.of("A book"),
                    List.of(),
                    List.of());
    private static final Key.Number NUMBER_KEY =
            new Key.Number(
                    new BigDecimal("3150"),
                    new BigDecimal("3130.0700"),
                    new BigDecimal("1E+4"),
                    "m",
                    List.of(
                            new Key.Mistake(
                                    BELIEF,
                                    new BigDecimal("5280"),
                                    new BigDecimal("5174.4"),
                                    new BigDecimal("5385.6"),
                                    0)),
                    List.of("Ground speed is 23 km/h."),
                    "So you get 3150 m.",
                    List.of("Common practice, no source"),
                    List.of());
    private static final Figure FIGURE =
            new ComputedFigure(
                    "glide-path",
                    "en",
                    Map.of("height", new BigDecimal("600.0"), "distance", new BigDecimal("4812.5")),
                    Map.of("height", "600 m", "distance", "4800 m"),
                    List.of("distance", "height"),
                    List.of("distance"));

    @Test
    void whatAStudentSeesIsReadBackEqual() {
        assertThat(Frozen.readShown(Frozen.write(NUMBER))).isEqualTo(NUMBER);
        assertThat(Frozen.readShown(Frozen.write(CHOICE))).isEqualTo(CHOICE);
    }

    @Test
    void whatMarkingSeesIsReadBackEqual() {
        assertThat(Frozen.readKey(Frozen.write(CHOICE_KEY))).isEqualTo(CHOICE_KEY);
        assertThat(Frozen.readKey(Frozen.write(NUMBER_KEY))).isEqualTo(NUMBER_KEY);
    }

    /// One item of each kind as the first version of the form had it. Whoever must change one of
    /// these files breaks every record that was ever kept.
    @Test
    void anItemKeptBeforeAComponentWasAddedIsReadWithItsDefault() {
        assertThat(Frozen.readShown(kept("shown-choice"))).isEqualTo(CHOICE);
        assertThat(Frozen.readShown(kept("shown-number"))).isEqualTo(NUMBER);
        assertThat(Frozen.readKey(kept("key-choice"))).isEqualTo(CHOICE_KEY);
        assertThat(Frozen.readKey(kept("key-number"))).isEqualTo(NUMBER_KEY);
    }

    private static String kept(String name) {
        Path file = SmallBank.SOUND.resolveSibling("frozen/" + name + ".json");
        return Schemas.text(file);
    }

    @Test
    void stepsOfAChoiceAreReadBackEqual() {
        Key.Choice key =
                new Key.Choice(
                        "A",
                        Map.of(),
                        "Because.",
                        List.of(),
                        List.of("First.", "Then."),
                        List.of());
        assertThat(Frozen.readKey(Frozen.write(key))).isEqualTo(key);
    }

    @Test
    void theStepOfAMistakeIsReadBackEqual() {
        BigDecimal one = BigDecimal.ONE;
        Key.Number key =
                new Key.Number(
                        one,
                        one,
                        one,
                        "",
                        List.of(new Key.Mistake(BELIEF, one, one, one, 2)),
                        List.of("First.", "Then."),
                        "",
                        List.of(),
                        List.of());
        assertThat(Frozen.readKey(Frozen.write(key))).isEqualTo(key);
    }

    /// Whoever must change more here than add a component breaks every record that was ever kept.
    @Test
    void theFormOfAFrozenItemOnlyGrows() {
        String belief =
                "{'id':'wind-ignored','feedback':'this leaves the wind out',"
                        + "'right':'The wind counts.'}";
        String number =
                "{'kind':'number','stem':'How far, “over ground”?','unit':'m','signed':true,"
                        + "'figures':[]}";
        String choice = "{'kind':'choice','stem':'Which?','options':['x','y','z'],'figures':[]}";
        String choiceKey =
                "{'kind':'choice','letter':'B','beliefs':{'A':BELIEF,'C':BELIEF},"
                        + "'rationale':'Because.','sources':['A book'],'steps':[],'figures':[]}";
        String numberKey =
                "{'kind':'number','answer':'3150','lowest':'3130.0700','highest':'10000',"
                        + "'unit':'m','mistakes':[{'belief':BELIEF,'shown':'5280','lowest':'5174.4',"
                        + "'highest':'5385.6','step':0}],'steps':['Ground speed is 23 km/h.'],"
                        + "'rationale':'So you get 3150 m.',"
                        + "'sources':['Common practice, no source'],'figures':[]}";
        assertThat(Frozen.write(NUMBER)).isEqualTo(quoted(number));
        assertThat(Frozen.write(CHOICE)).isEqualTo(quoted(choice));
        assertThat(Frozen.write(CHOICE_KEY)).isEqualTo(quoted(choiceKey.replace("BELIEF", belief)));
        assertThat(Frozen.write(NUMBER_KEY)).isEqualTo(quoted(numberKey.replace("BELIEF", belief)));
    }

    @Test
    void aFigureIsReadBackEqualAndDrawnAlike() {
        Figure drawn =
                new IllustratedFigure(340, 200, "<path></path>", "A ridge", "From the side.");
        Shown shown = new Shown.Choice("Which?", List.of("x", "y", "z"), List.of(FIGURE, drawn));

        Shown read = Frozen.readShown(Frozen.write(shown));

        assertThat(read).isEqualTo(shown);
        assertThat(read.figures().getFirst().draw(Purpose.SOLUTION, "f"))
                .isEqualTo(FIGURE.draw(Purpose.SOLUTION, "f"));
    }

    /// One figure of each kind as its first version had it: whoever must change this file makes
    /// records that cannot be drawn any more.
    @Test
    void everyFigureThatWasEverKeptCanBeDrawn() {
        Key key = Frozen.readKey(kept("key-with-figures"));

        assertThat(key.figures())
                .filteredOn(ComputedFigure.class::isInstance)
                .extracting(figure -> ((ComputedFigure) figure).kind())
                .containsAll(Diagrams.list().stream().map(Diagram::name).toList());
        assertThat(key.figures())
                .allSatisfy(
                        figure ->
                                assertThat(figure.draw(Purpose.SOLUTION, "f").svg())
                                        .contains("asked\""));
    }

    @Test
    void theOrderOfKeysDoesNotMatter() {
        String turned =
                "{'signed':true,'unit':'m','stem':'How far, “over ground”?','kind':'number'}";
        assertThat(Frozen.readShown(quoted(turned))).isEqualTo(NUMBER);
    }

    @Test
    void anUnknownFieldIsRefused() {
        refuses("{'kind':'number','stem':'How far?','unit':'m','hint':'far'}");
    }

    @Test
    void aFieldLeftOutIsRefused() {
        refuses("{'kind':'number','stem':'How far?'}");
    }

    @Test
    void aNullIsRefused() {
        refuses("{'kind':'number','stem':'How far?','unit':null}");
    }

    @Test
    void anotherKindIsRefused() {
        refuses("{'kind':'essay','stem':'How far?'}");
    }

    @Test
    void aTextAfterTheItemIsRefused() {
        refuses("{'kind':'number','stem':'How far?','unit':'m'} {}");
    }

    @Test
    void aDecimalThatIsNoTextIsRefused() {
        String key = Frozen.write(NUMBER_KEY).replace("\"3150\"", "3150");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Frozen.readKey(key))
                .withMessageContaining("a decimal is kept as a text");
    }

    @Test
    void aDecimalWithAnExponentIsRefused() {
        String key = Frozen.write(NUMBER_KEY).replace("\"3150\"", "\"1e999999999\"");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Frozen.readKey(key))
                .withMessageContaining("not a decimal: '1e999999999'");
    }

    @Test
    void aWrongNumberPointsToTheFirstBeliefThatCoversIt() {
        assertThat(NUMBER_KEY.findBelief(new BigDecimal("5174.40"))).contains(BELIEF);
        assertThat(NUMBER_KEY.findBelief(new BigDecimal("5385.61"))).isEmpty();
    }

    @Test
    void aWrongOptionPointsToItsBelief() {
        assertThat(CHOICE_KEY.findBelief("C")).contains(BELIEF);
        assertThat(CHOICE_KEY.findBelief("B")).isEmpty();
    }

    private static void refuses(String json) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Frozen.readShown(quoted(json)))
                .withMessageStartingWith("not a frozen item: ");
    }

    private static String quoted(String json) {
        return json.replace('\'', '"');
    }
}
