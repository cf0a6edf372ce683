package org.groundline.bank;

import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.junit.FuzzTest;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;

import java.nio.file.Path;

/// Whatever stands in a file of the bank, the check ends, with a report.
class LoaderFuzzTest {
    @TempDir private static Path folder;
    private static SmallBank bank;

    @BeforeAll
    static void copy() {
        bank = SmallBank.copiedTo(folder);
    }

    @FuzzTest(maxDuration = "10m")
    void whateverStandsInATopicFileIsReported(byte[] file) {
        bank.write(SmallBank.NUMERIC, file);

        BankReport report = Questions.check(bank.folder());

        assertThat(report.findings())
                .allSatisfy(
                        finding -> {
                            assertThat(finding.file()).isNotBlank();
                            assertThat(finding.line()).isPositive();
                            assertThat(finding.message()).isNotBlank();
                        });
    }
}
