package org.groundline.command;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import picocli.CommandLine;

import java.io.PrintWriter;
import java.io.StringWriter;

/// The commands that the program answers to.
class GroundlineCommandTest {
    @Test
    void everyCommandIsReachedByItsName() {
        assertThat(new CommandLine(new GroundlineCommand()).getSubcommands())
                .containsOnlyKeys("serve", "migrate", "bank", "theory", "daylight", "bench");
    }

    @Test
    void anUnknownBenchmarkIsRefusedWithTheNamesOfThoseThereAre() {
        StringWriter err = new StringWriter();

        int exit =
                new CommandLine(new GroundlineCommand())
                        .setErr(new PrintWriter(err))
                        .execute("bench", "nothing");

        assertThat(exit).isEqualTo(2);
        assertThat(err.toString())
                .startsWith("There is no benchmark “nothing”; there is posing, loading.");
    }
}
