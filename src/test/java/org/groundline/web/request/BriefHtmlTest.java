package org.groundline.web.request;

import static org.assertj.core.api.Assertions.assertThat;

import org.groundline.bank.Brief;
import org.groundline.bank.Questions;
import org.groundline.bank.SmallBank;
import org.groundline.web.TestServer;
import org.junit.jupiter.api.Test;

import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/// Briefs as HTML.
class BriefHtmlTest {
    private static Brief brief(String text) {
        return new Brief("AER-2", "AER", text, Map.of(), List.of());
    }

    private static String html(String text) {
        return BriefHtml.of(brief(text), 0, "Objectives");
    }

    @Test
    void aHeadingCarriesItsMarksApartFromItsText() {
        assertThat(html("## Glide {AER-2.1} {AER-2.2}\n"))
                .isEqualTo(
                        "<h2>Glide <span class=\"objectives\"><span class=\"unseen\">Objectives"
                                + " </span>AER-2.1 AER-2.2</span></h2>\n");
    }

    @Test
    void onAPageOfSeveralBriefsHeadingsStandLower() {
        assertThat(BriefHtml.of(brief("## A\n\n### B\n"), 1, ""))
                .isEqualTo("<h3>A</h3>\n<h4>B</h4>\n");
    }

    @Test
    void aHeadingOfATableTellsThatItHeadsAColumn() {
        assertThat(html("| part | when |\n|---|:-:|\n| strap | first |\n"))
                .contains("<th scope=\"col\">part</th>")
                .contains("<th scope=\"col\">when</th>")
                .contains("<td>first</td>");
    }

    @Test
    void aNumberAndItsUnitStayOnOneLine() {
        assertThat(html("36 km/h for 400 s, at 5.5 m/s, 12 °C; 2 mistakes of 3 made in 2024"))
                .isEqualTo(
                        "<p>36\u202Fkm/h for 400\u202Fs, at 5.5\u202Fm/s, 12\u202F°C; 2 mistakes of 3"
                                + " made in 2024</p>\n");
    }

    @Test
    void whatTheReaderOfTheBankWouldRefuseCanDoNothingHereEither() {
        assertThat(html("a <b>c</b> [d](javascript:e)"))
                .doesNotContain("<b>")
                .doesNotContain("javascript");
    }

    @Test
    void aPictureStandsWithItsCaptionWhereTheTextHasIt() {
        Brief glide = Questions.load(SmallBank.SOUND).findBrief("AER-2").orElseThrow();

        assertThat(BriefHtml.of(glide, 0, ""))
                .contains("<figure class=\"diagram\"><svg")
                .contains("<figcaption>From 500 metres above the ground")
                .doesNotContain("<img");
    }

    /// Two drawings with one id would be told by each other's words.
    @Test
    void noTwoPicturesOfTheWholeBankShareAnId() {
        Questions bank = TestServer.bank();
        List<String> ids =
                bank.course().modules().stream()
                        .flatMap(module -> bank.briefsOf(module.id()).stream())
                        .map(brief -> BriefHtml.of(brief, 0, "Objectives"))
                        .flatMap(
                                html -> Pattern.compile(" id=\"([^\"]+)\"").matcher(html).results())
                        .map((MatchResult found) -> found.group(1))
                        .toList();

        assertThat(ids).hasSizeGreaterThan(40).doesNotHaveDuplicates();
    }
}
