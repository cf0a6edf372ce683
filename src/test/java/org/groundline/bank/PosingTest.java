package org.groundline.bank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

class PosingTest {
    private final Questions bank = Questions.load(SmallBank.SOUND);
    private final Question straps = bank.question("leg-straps-open-at-launch");
    private final Question rates = bank.question("lowest-sink-rate");
    private final Question glide = bank.question("glide-distance-in-wind");

    @Test
    void theSameSeedPosesTheSameItem() {
        for (Question question : bank.all()) {
            assertThat(bank.pose(question, 42)).isEqualTo(bank.pose(question, 42));
        }
    }

    @Test
    void theKeyIsTheLetterUnderWhichTheRightOptionIsShown() {
        for (long seed = 0; seed < 100; seed++) {
            Posed posed = bank.pose(straps, seed);
            assertThat(shown(posed, key(posed).letter()))
                    .isEqualTo("The pilot can slide out of the harness.");
        }
    }

    @Test
    void everyWrongOptionKeepsTheBeliefBehindIt() {
        for (long seed = 0; seed < 100; seed++) {
            Posed posed = bank.pose(straps, seed);
            Map<String, String> ideas = new HashMap<>();
            key(posed).beliefs().forEach((letter, b) -> ideas.put(shown(posed, letter), b.id()));
            assertThat(ideas)
                    .containsOnly(
                            Map.entry(
                                    "The seat is a little less comfortable.",
                                    "straps-only-for-comfort"),
                            Map.entry(
                                    "Nothing, the seat holds the pilot.",
                                    "harness-holds-by-itself"));
        }
    }

    /// 3,000 draws of three places: the standard deviation of a count is 26.
    @Test
    void theKeyIsAsOftenAtEachPlace() {
        Map<String, Integer> places = new HashMap<>();
        for (long seed = 0; seed < 3_000; seed++) {
            places.merge(key(bank.pose(straps, seed)).letter(), 1, Integer::sum);
        }
        assertThat(places).containsOnlyKeys("A", "B", "C");
        assertThat(places.values()).allSatisfy(n -> assertThat(n).isCloseTo(1_000, within(130)));
    }

    @Test
    void numbersOfOneUnitAreShownInAscendingOrder() {
        for (long seed = 0; seed < 20; seed++) {
            Shown shown = bank.pose(rates, seed).shown();
            assertThat(((Shown.Choice) shown).options())
                    .containsExactly("1.2 m/s", "3.5 m/s", "10 m/s");
        }
    }

    @Test
    void onlyPlainNumbersOfOneUnitCountAsNumbers() {
        assertThat(ascending("10 m", "9,5 m", "−3 m")).containsExactly("−3 m", "9,5 m", "10 m");
        assertThat(ascending("30°", "20°", "10°")).containsExactly("10°", "20°", "30°");
        assertThat(ascending("2 times", "1 times")).containsExactly("1 times", "2 times");
        assertThat(ascending("Mark 10", "Mark 2")).containsExactly("Mark 2", "Mark 10");
        assertThat(ascending("Place R", "Place P")).containsExactly("Place P", "Place R");
        assertThat(ascending("Mark 2", "Place 1")).isEmpty();
        assertThat(ascending("10 m", "9 ft", "3 m")).isEmpty();
        assertThat(ascending("10 m", "about 9 m")).isEmpty();
        assertThat(ascending("10 to 12 m", "9 to 10 m")).isEmpty();
    }

    private static List<String> ascending(String... options) {
        return NumericOrder.find(List.of(options), o -> o).orElse(List.of());
    }

    @Test
    void aPosedNumberKeepsWhatMarkingAndFeedbackNeed() {
        Posed posed = bank.pose(glide, 7);
        Key.Number key = (Key.Number) posed.key();
        assertThat(posed.shown().stem()).contains(posed.drawn().get("wind")).doesNotContain("{");
        assertThat(((Shown.Number) posed.shown()).unit()).isEqualTo("m").isEqualTo(key.unit());
        assertThat(posed.drawn()).containsOnlyKeys("airspeed", "glide_ratio", "wind", "height");
        assertThat(key.answer()).isBetween(key.lowest(), key.highest());
        assertThat(key.mistakes())
                .extracting(m -> m.belief().feedback())
                .startsWith("this leaves the wind out", "this adds the headwind");
        assertThat(key.sources())
                .containsExactly(
                        "A Small Handbook, second edition (An Invented Press, 2024), p. 12");
        assertThat(key.steps()).isNotEmpty();
    }

    @Test
    void aSlipIsNamedWithItsUnitOrFactor() {
        Key.Number key = (Key.Number) bank.pose(glide, 7).key();
        assertThat(beliefAt(key, -3)).isEqualTo("this is the answer in km, not in m");
        assertThat(beliefAt(key, 1)).isEqualTo("this is ten times the answer");
        assertThat(beliefAt(key, 2)).isEqualTo("this is a hundred times the answer");
        assertThat(beliefAt(key, 3)).isEqualTo("this is a thousand times the answer");
        assertThat(beliefAt(key, -1)).isEqualTo("this is a tenth of the answer");
        assertThat(beliefAt(key, -2)).isEqualTo("this is a hundredth of the answer");
        assertThat(key.mistakes())
                .filteredOn(mistake -> mistake.belief().comesFromSlip())
                .hasSize(key.mistakes().size() - 2);
    }

    private static String beliefAt(Key.Number key, int exponent) {
        var given = key.answer().scaleByPowerOfTen(exponent);
        return key.findBelief(given).map(Belief::feedback).orElse("");
    }

    @Test
    void everyPosedItemIsReadBackEqualFromItsFrozenForm() {
        for (Question question : bank.all()) {
            for (long seed = 0; seed < 50; seed++) {
                Posed posed = bank.pose(question, seed);
                assertThat(Frozen.readShown(Frozen.write(posed.shown()))).isEqualTo(posed.shown());
                assertThat(Frozen.readKey(Frozen.write(posed.key()))).isEqualTo(posed.key());
            }
        }
    }

    private static Key.Choice key(Posed posed) {
        return (Key.Choice) posed.key();
    }

    private static String shown(Posed posed, String letter) {
        return ((Shown.Choice) posed.shown()).options().get(letter.charAt(0) - 'A');
    }
}
