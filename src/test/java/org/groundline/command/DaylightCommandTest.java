package org.groundline.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import picocli.CommandLine;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.Arrays;

class DaylightCommandTest {
    private static final String COLOGNE = "50.938056,6.956944";
    private static final String ARCTIC = "70,25";

    private record Run(int exit, String out, String err) {}

    private static Run run(String place, String date, String zone, String... more) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        CommandLine command =
                new CommandLine(new DaylightCommand())
                        .setOut(new PrintWriter(out))
                        .setErr(new PrintWriter(err));
        String[] given = {"--place", place, "--date", date, "--zone", zone};
        String[] all = Arrays.copyOf(given, given.length + more.length);
        System.arraycopy(more, 0, all, given.length, more.length);
        return new Run(command.execute(all), out.toString(), err.toString());
    }

    /// The check values of theory, SUN-1 to SUN-4 (minutes after midnight UTC): dawn 214.02,
    /// sunrise 251.82, sunset 1142.33, dusk 1180.22. The clock is two hours ahead of UTC in a
    /// German summer; minutes are taken on the dark side: up in the morning, down in the evening.
    @Test
    void aDayIsToldToPeopleByTheClockOfThePlace() {
        Run run = run(COLOGNE, "2017-08-10", "Europe/Berlin");
        assertThat(run.exit()).isZero();
        assertThat(run.err()).isEmpty();
        assertThat(run.out())
                .isEqualTo(
                        """
                        2017-08-10, Europe/Berlin
                        civil dawn: 05:35
                        sunrise: 06:12
                        sunset: 21:02
                        civil dusk: 21:40
                        over a flat horizon; mountains hide the sun sooner, and local rules say what daylight is
                        """);
    }

    @Test
    void aDayIsToldToProgramsInJson() throws Exception {
        Run run = run(COLOGNE, "2017-08-10", "UTC", "--format", "json");
        JsonNode expected =
                new ObjectMapper()
                        .readTree(
                                """
                                {"latitudeDeg": 50.938056, "longitudeDeg": 6.956944, "zone": "UTC",
                                 "date": "2017-08-10",
                                 "times": {"civil dawn": "2017-08-10T03:35Z",
                                           "sunrise": "2017-08-10T04:12Z",
                                           "sunset": "2017-08-10T19:02Z",
                                           "civil dusk": "2017-08-10T19:40Z"},
                                 "none": {}}
                                """);
        assertThat(new ObjectMapper().readTree(run.out())).isEqualTo(expected);
    }

    @Test
    void inAPolarSummerItIsSaidThatTheSunStaysUp() {
        Run run = run(ARCTIC, "2025-06-21", "Europe/Oslo");
        assertThat(run.exit()).isZero();
        assertThat(run.out())
                .contains("sunrise: none, the sun stays above the horizon\n")
                .contains("civil dusk: none, the sun stays above 6° below the horizon\n");
    }

    @Test
    void inAPolarWinterItIsSaidThatTheSunStaysDown() throws Exception {
        Run run = run(ARCTIC, "2025-12-21", "Europe/Oslo", "--format", "json");
        JsonNode json = new ObjectMapper().readTree(run.out());
        assertThat(json.path("none").path("sunset").asText())
                .isEqualTo("the sun stays below the horizon");
        assertThat(json.path("times").has("civil dusk")).isTrue();
    }

    @Test
    void aDuskAfterMidnightIsToldWithItsDay() {
        assertThat(run("60,10", "2025-06-21", "Europe/Oslo").out())
                .containsPattern("civil dusk: 00:\\d\\d on 2025-06-22\n");
    }

    @Test
    void aPlaceInTheSouthAndWestIsReadThoughItBeginsWithAMinus() {
        Run run = run("-33.74, -151.23", "2019-07-03", "Pacific/Tahiti");
        assertThat(run.exit()).isZero();
        assertThat(run.out()).startsWith("2019-07-03, Pacific/Tahiti\ncivil dawn: ");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    47.27;11.39 | 2025-06-21   | UTC    | --place: “47.27;11.39” is no place. Write latitude and
                    47,27,11,39 | 2025-06-21   | UTC    | --place: “47,27,11,39” is no place.
                    91,11       | 2025-06-21   | UTC    | --place: the latitude 91 is not from -90 to 90. The latitude comes first.
                    11,-181     | 2025-06-21   | UTC    | --place: the longitude -181 is not from -180 to 180.
                    47,11       | 21.6.2025    | UTC    | --date: “21.6.2025” is no date. Write year, month and day, such as 2025-06-21.
                    47,11       | 2025-02-29   | UTC    | --date: “2025-02-29” is no date.
                    47,11       | 0025-06-21   | UTC    | --date: 0025-06-21 is not in the years 1900 to 2100.
                    47,11       | 2025-06-21   | vienna | --zone: “vienna” is no time zone. Did you mean Europe/Vienna?
                    47,11       | 2025-06-21   | Alps   | --zone: “Alps” is no time zone. Write one such as Europe/Vienna or UTC.
                    """)
    void whatCannotBeReadIsRefusedWithTheRemedy(
            String place, String date, String zone, String message) {
        Run run = run(place, date, zone);
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith(message);
    }
}
