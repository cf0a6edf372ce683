package org.groundline.measure;

import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.api.FuzzedDataProvider;
import com.code_intelligence.jazzer.junit.FuzzTest;

/// Whatever is typed, the reader of numbers answers.
class TypedNumberFuzzTest {
    @FuzzTest(maxDuration = "10m")
    void whateverIsTypedIsReadOrRefusedInWords(FuzzedDataProvider data) {
        Unit expected = data.pickValue(Units.all());
        DecimalConvention convention = data.pickValue(DecimalConvention.values());
        String typed = data.consumeRemainingAsString();

        switch (TypedNumber.read(typed, expected, convention)) {
            case Reading.Read read -> {
                assertThat(read.value().precision()).isLessThanOrEqualTo(128);
                assertThat(read.echo()).isNotBlank();
            }
            case Reading.Unreadable unreadable -> assertThat(unreadable.why()).isNotBlank();
        }
    }
}
