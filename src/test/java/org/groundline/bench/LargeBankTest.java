package org.groundline.bench;

import static org.assertj.core.api.Assertions.assertThat;

import org.groundline.bank.BankReport;
import org.groundline.bank.Questions;
import org.junit.jupiter.api.Test;

import java.nio.file.Files;
import java.nio.file.Path;

class LargeBankTest {
    @Test
    void aLargeBankIsSoundMixedLikeTheShippedOneAndLeavesNothingBehind() throws Exception {
        BankReport shipped = Questions.check(Path.of("question-bank"));
        int twice = 2 * (shipped.fixed() + shipped.numeric());
        Path folder;
        try (LargeBank large = LargeBank.make(twice)) {
            folder = large.folder();
            BankReport report = Questions.check(LargeBank.bank(folder));
            assertThat(report.errors()).isEmpty();
            assertThat(report.fixed()).isEqualTo(2 * shipped.fixed());
            assertThat(report.numeric()).isEqualTo(2 * shipped.numeric());
            assertThat(LargeBank.data(folder)).isNotEmptyDirectory();
        }
        assertThat(folder).matches(Files::notExists);
    }
}
