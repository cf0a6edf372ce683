package org.groundline.school;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import java.util.Base64;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;

class TokensTest {
    @Test
    void tokensAre256BitsInLettersOfAnAddressAndNeverTheSame() {
        var tokens = new Tokens();

        List<String> made = Stream.generate(tokens::next).limit(1_000).toList();

        assertThat(made).doesNotHaveDuplicates().allMatch(t -> t.matches("[A-Za-z0-9_-]{43}"));
        assertThat(Base64.getUrlDecoder().decode(made.get(0))).hasSize(32);
    }

    /// FIPS 180-2, appendix B.1, the one-block message "abc" (value from memory; GNU sha256sum
    /// gives the same).
    @Test
    void theDigestIsSha256() {
        assertThat(HexFormat.of().formatHex(Tokens.digest("abc")))
                .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    }
}
