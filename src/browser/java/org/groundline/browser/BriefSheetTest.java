package org.groundline.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;

import org.groundline.bank.Brief;
import org.groundline.bank.Module;
import org.groundline.browser.Chromium.Window;
import org.groundline.school.Role;
import org.groundline.school.School;
import org.groundline.web.TestServer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.UUID;
import java.util.regex.Pattern;

/// The shipped briefs, read on a screen and printed.
class BriefSheetTest {
    private static final TestServer SERVER = TestServer.start();
    private static Chromium chromium;

    private final School school =
            SERVER.givenSchool("b" + UUID.randomUUID().toString().substring(0, 8));

    @BeforeAll
    static void start() {
        chromium = new Chromium(SERVER.web().port());
    }

    @AfterAll
    static void stop() {
        chromium.close();
        SERVER.close();
    }

    private static long sheets(Window window) {
        byte[] print =
                window.page.pdf(new Page.PdfOptions().setFormat("A4").setPreferCSSPageSize(true));
        String pdf = new String(print, StandardCharsets.ISO_8859_1);
        return Pattern.compile("/Type\\s*/Page\\b").matcher(pdf).results().count();
    }

    /// Each page is checked for what keeps somebody from reading it, too, on phone and laptop.
    @Test
    void everyBriefPrintsOnOneSheet() {
        SERVER.givenPerson(school, "ada", Role.STUDENT);
        Window window = chromium.logIn(school, "ada");
        for (Module module : TestServer.bank().course().modules()) {
            List<Brief> briefs = TestServer.bank().briefsOf(module.id());
            for (Brief brief : briefs) {
                window.go("/briefs/" + brief.topic());
                assertThat(sheets(window)).as(brief.topic()).isOne();
            }
            window.go("/modules/" + module.id() + "/briefs");
            assertThat(sheets(window)).as(module.id()).isEqualTo(briefs.size());
        }
    }

    @Test
    void aStudentReadsABriefSaysSoAndPractises() {
        SERVER.givenPerson(school, "ben", Role.STUDENT);
        Window window = chromium.logIn(school, "ben");

        window.follow("Brief:");
        assertThat(window.text()).contains("not read yet");
        window.press("I have read this");
        assertThat(window.text()).contains("read on 1 May");
        window.follow("Practise this topic");
        assertThat(window.page.url()).contains("/practice/");
    }
}
