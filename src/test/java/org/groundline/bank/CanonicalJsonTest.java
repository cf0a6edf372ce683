package org.groundline.bank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

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
        assertThat(CanonicalJson.write(value).replaceAll("\"[^\"]*\":", ""))
                .isEqualTo(
                        "{\"Carriage Return\",\"One\",\"Control\","
                                + "\"Latin Small Letter O With Diaeresis\",\"Euro Sign\","
                                + "\"Emoji: Grinning Face\",\"Hebrew Letter Dalet With Dagesh\"}");
    }

    /// RFC 8785, section 3.2.2: the text of its sample, and how it is serialised.
    @Test
    void aTextHasAsFewEscapesAsPossible() {
        assertThat(CanonicalJson.write("\u20ac$\u000f\nA'B\"\\\\\"/"))
                .isEqualTo("\"\u20ac$\\u000f\\nA'B\\\"\\\\\\\\\\\"/\"");
    }

    @Test
    void valuesNestWithoutSpaces() {
        assertThat(CanonicalJson.write(Map.of("b", List.of("1", true), "a", Map.of())))
                .isEqualTo("{\"a\":{},\"b\":[\"1\",true]}");
    }

    @Test
    void aNumberIsRefusedAsItWouldPassThroughADouble() {
        assertThatIllegalArgumentException().isThrownBy(() -> CanonicalJson.write(List.of(1)));
    }

    /// FIPS 180-4 example: SHA-256 of the three letters abc.
    @Test
    void theHashIsSha256InSmallHexadecimalDigits() {
        assertThat(CanonicalJson.hash("abc"))
                .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    }
}
