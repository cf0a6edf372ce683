package org.groundline.command;

import org.groundline.daylight.Place;
import org.groundline.error.Refusal;
import org.jspecify.annotations.NullMarked;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

import java.io.PrintWriter;
import java.util.concurrent.Callable;

/// `daylight`: when a day begins and ends at a place.
@NullMarked
@Command(
        name = "daylight",
        mixinStandardHelpOptions = true,
        description = {
            "Computes civil dawn, sunrise, sunset and civil dusk of a day at a place, over a flat"
                    + " horizon, to the minute on the dark side.",
            "What counts as daylight for flying is a matter of local rules; mountains hide the sun"
                    + " sooner."
        })
final class DaylightCommand implements Callable<Integer> {
    private static final String CAUTION =
            "over a flat horizon; mountains hide the sun sooner, and local rules say what daylight is";

    @Spec private CommandSpec spec = CommandSpec.create();

    @Option(
            names = "--place",
            paramLabel = "LAT,LON",
            required = true,
            description = "Degrees with a decimal point, south and west negative: 47.27,11.39.")
    private String place = "";

    @Option(
            names = "--date",
            paramLabel = "YYYY-MM-DD",
            required = true,
            description = "The day, by the clock of the zone.")
    private String date = "";

    @Option(
            names = "--zone",
            paramLabel = "ZONE",
            required = true,
            description = "The time zone of the place, such as Europe/Vienna.")
    private String zone = "";

    @Option(
            names = "--format",
            paramLabel = "text|json",
            converter = OutputFormat.Reader.class,
            description = "How to write the result; left out, text.")
    private OutputFormat format = OutputFormat.TEXT;

    @Override
    public Integer call() {
        try {
            Place at = DaylightInput.place(place, zone);
            print(DayTimes.of(at, DaylightInput.date(date)));
            return 0;
        } catch (Refusal.Invalid refusal) {
            throw new ParameterException(spec.commandLine(), String.valueOf(refusal.getMessage()));
        }
    }

    private void print(DayTimes times) {
        PrintWriter out = spec.commandLine().getOut();
        switch (format) {
            case JSON -> out.println(OutputFormat.json(times));
            case TEXT -> {
                times.lines().forEach(out::println);
                out.println(CAUTION);
            }
        }
        out.flush();
    }
}
