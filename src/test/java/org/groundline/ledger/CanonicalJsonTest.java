package org.groundline.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

class CanonicalJsonTest {

    /// RFC 8785, section 3.2.3: the sample of property names and its sorted order.
    @Test
    void keysStandInTheOrderOfTheirUtf16Units() {
        Map<String, Object> value = new HashMap<>();
        value.put("\u20ac", "Euro Sign");
        value.put("\r", "Carriage Return");
        value.put("\ufb33", "Hebrew Letter Dalet With Dagesh");
        value.put("1", "One");
        value.put("\ud83d\ude00", "Emoji: Grinning Face");
        value.put("\u0080", "Control");
        value.put("\u00f6", "Latin Small Letter O With Diaeresis");
        assertThat(CanonicalJson.of(value))
                .isEqualTo(
                        "{\"\\r\":\"Carriage Return\",\"1\":\"One\",\"\u0080\":\"Control\","
                                + "\"\u00f6\":\"Latin Small Letter O With Diaeresis\","
                                + "\"\u20ac\":\"Euro Sign\","
                                + "\"\ud83d\ude00\":\"Emoji: Grinning Face\","
                                + "\"\ufb33\":\"Hebrew Letter Dalet With Dagesh\"}");
    }

    /// RFC 8785, section 3.2.2: the text of its sample, and how it is serialised.
    @Test
    void aTextHasAsFewEscapesAsPossible() {
        assertThat(CanonicalJson.of("\u20ac$\u000f\nA'B\"\\\\\"/"))
                .isEqualTo("\"\u20ac$\\u000f\\nA'B\\\"\\\\\\\\\\\"/\"");
    }

    /// RFC 8785, section 3.2.2.2: the five control characters with an escape of their own.
    @Test
    void fiveControlCharactersHaveAShortEscape() {
        assertThat(CanonicalJson.of("\b\t\n\f\r")).isEqualTo("\"\\b\\t\\n\\f\\r\"");
    }

    /// RFC 8785, section 3.1: text is kept as it is, not brought into a normal form.
    @Test
    void aLetterWithACombiningRingStaysTwoCharacters() {
        assertThat(CanonicalJson.of("A\u030a")).isEqualTo("\"A\u030a\"");
    }

    @Test
    void valuesNestWithoutSpaces() {
        assertThat(CanonicalJson.of(Map.of("b", List.of("1", true, 2), "a", Map.of())))
                .isEqualTo("{\"a\":{},\"b\":[\"1\",true,2]}");
    }

    /// RFC 8785, appendix D: whole numbers are exact up to 2 to the power of 53.
    @Test
    void wholeNumbersAreWrittenAsFarAsADoubleHoldsThemExactly() {
        assertThat(CanonicalJson.of(List.of(-9_007_199_254_740_992L, 0, 9_007_199_254_740_992L)))
                .isEqualTo("[-9007199254740992,0,9007199254740992]");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("valuesWithoutOneForm")
    void aValueWithoutOneFormIsRefused(Object value) {
        assertThatIllegalArgumentException().isThrownBy(() -> CanonicalJson.of(List.of(value)));
    }

    static List<Object> valuesWithoutOneForm() {
        return List.of(0.5, 1f, new BigDecimal("1.0"), 9_007_199_254_740_993L, 'a');
    }

    /// FIPS 180-4 example: SHA-256 of the three letters abc.
    @Test
    void theDigestIsSha256InSmallHexadecimalDigits() {
        assertThat(Digests.hex("abc"))
                .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    }
}
