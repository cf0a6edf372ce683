package org.groundline.bank;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import java.nio.file.Path;
import java.util.List;
import java.util.SplittableRandom;

/// Files spoilt at random: whatever an author's slip makes of a file, the check ends with findings
/// or without, never with an exception.
class SpoiltBankTest {
    private static final List<String> FILES =
            List.of(
                    SmallBank.FIXED,
                    SmallBank.NUMERIC,
                    "syllabus.yaml",
                    "misconceptions.yaml",
                    "sources.yaml",
                    "briefs/AER-2.md");
    private static final List<String> SCRAPS =
            List.of(
                    "",
                    " ",
                    "\n",
                    "\n  ",
                    "- ",
                    ": ",
                    "[",
                    "]",
                    "{",
                    "}",
                    "\"",
                    "'",
                    "#",
                    "&a ",
                    "*a",
                    "!x ",
                    "|",
                    ">",
                    "0",
                    "-1",
                    "1e999",
                    "NaN",
                    "%",
                    "^",
                    "/ 0",
                    "(",
                    ")",
                    "true",
                    "null",
                    "~",
                    "---\n",
                    "\t",
                    "\u0007",
                    "\uFEFF",
                    "é",
                    "😀",
                    "topic: ",
                    "![",
                    "](",
                    "<",
                    "{AER-2.1}",
                    "\n|a|b|\n|-|-|\n",
                    "\n\n> ",
                    "\n\n# ");

    @TempDir private Path folder;

    @Test
    void noSlipOfAnAuthorEndsInAnException() {
        SmallBank bank = SmallBank.copiedTo(folder);
        SplittableRandom chance = new SplittableRandom(20_261_125);
        int found = 0;
        for (int round = 0; round < 300; round++) {
            String file = FILES.get(round % FILES.size());
            String sound = bank.read(file);
            String spoilt = spoil(sound, chance);
            bank.write(file, spoilt);
            found += check(spoilt).findings().isEmpty() ? 0 : 1;
            bank.write(file, sound);
        }
        assertThat(found).isGreaterThan(100);
    }

    private BankReport check(String spoilt) {
        try {
            return Questions.check(folder);
        } catch (RuntimeException e) {
            throw new AssertionError("the check did not survive this file:\n" + spoilt, e);
        }
    }

    private static String spoil(String text, SplittableRandom chance) {
        int from = chance.nextInt(text.length());
        int to = Math.min(text.length(), from + chance.nextInt(12));
        String scrap = SCRAPS.get(chance.nextInt(SCRAPS.size()));
        return text.substring(0, from) + scrap + text.substring(to);
    }
}
