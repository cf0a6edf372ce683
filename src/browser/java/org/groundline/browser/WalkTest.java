package org.groundline.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;

import org.groundline.bank.Shown;
import org.groundline.browser.Chromium.Window;
import org.groundline.database.SubjectId;
import org.groundline.school.Intake;
import org.groundline.school.Role;
import org.groundline.school.School;
import org.groundline.sitting.Item;
import org.groundline.sitting.Openings.NewOpening;
import org.groundline.web.TestServer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/// Each kind of person walks through what they come for.
class WalkTest {
    private static final TestServer SERVER = TestServer.start();
    private static Chromium chromium;

    private final School school =
            SERVER.givenSchool("w" + UUID.randomUUID().toString().substring(0, 8));
    private final SubjectId ada = SERVER.givenPerson(school, "ada", Role.STUDENT);
    private final Intake intake = SERVER.givenIntake(school, "Spring", ada);

    @BeforeAll
    static void start() {
        chromium = new Chromium(SERVER.web().port());
    }

    @AfterAll
    static void stop() {
        chromium.close();
        SERVER.close();
    }

    private UUID givenOpening(String module) {
        if (SERVER.doors().people().listStudents(school, Optional.empty()).stream()
                .noneMatch(p -> p.givenName().equals("ina"))) {
            SERVER.givenPerson(school, "ina", Role.INSTRUCTOR);
        }
        var wish = new NewOpening(module, intake.id(), Duration.ofHours(2), "Hut");
        return SERVER.doors().openings().open(SERVER.actor(school, "ina"), wish).id();
    }

    @Test
    void aStudentPractisesATopicAndIsToldWhy() {
        Window window = chromium.logIn(school, "ada");
        assertThat(window.page.url()).endsWith("/course");

        window.follow(TestServer.bank().course().findTopic("AER-2").orElseThrow().title());
        for (int i = 0; i < 3; i++) {
            if (window.page.locator("input[type=radio]").count() > 0) {
                window.page.locator("label.option").first().click();
            } else {
                window.page.fill("#answer", "12,5");
            }
            window.press("Answer");
            assertThat(window.text()).contains("Why").contains("Source:");
            window.follow("Next question");
        }
        window.page.locator("main form").waitFor();
        assertThat(SERVER.doors().practices().progress(SERVER.actor(school, "ada")).get("AER-2"))
                .satisfies(progress -> assertThat(progress.answered()).isEqualTo(3));
    }

    @Test
    void aStudentSitsATestLeavesComesBackAndHandsIn() {
        UUID opening = givenOpening("AER");
        Window window = chromium.logIn(school, "ada");
        window.go("/tests/" + opening);
        assertThat(window.text()).contains("30").contains("75");
        window.press("Begin the test");
        String sitting = window.page.url().replaceFirst(".*/sittings/([0-9a-f-]+).*", "$1");

        choose(window);
        window.press("Flag");
        window.press("Next");
        choose(window);
        window.press("Next");

        var actor = SERVER.actor(school, "ada");
        UUID id = UUID.fromString(sitting);
        int left = 4;
        SERVER.answer(
                actor,
                id,
                item ->
                        item.position() > 30 - left || item.position() <= 2
                                ? Optional.empty()
                                : Optional.of(SERVER.rightAnswer(school, item.id())));

        window.go("/course");
        window.go("/sittings/" + sitting);
        window.go("/sittings/" + sitting + "/review");
        assertThat(window.page.locator(".numbers .state.open").count()).isEqualTo(left);
        assertThat(window.page.locator(".numbers .state.flagged").count()).isOne();
        window.page.check("#sure");
        window.press("Hand in");

        assertThat(window.page.url()).endsWith("/result");
        assertThat(window.text()).contains("of 30").contains("Glide, speed and wind");
    }

    private static void choose(Window window) {
        if (window.page.locator("input[type=radio]").count() > 0) {
            window.page.locator("label.option").first().click();
        } else {
            window.page.fill("#answer", "12.5");
            window.page.press("#answer", "Tab");
        }
        window.page.locator("#saving").getByText("saved ").waitFor();
    }

    @Test
    void anInstructorTalksWrongAnswersThroughSignsAndReverses() {
        UUID opening = givenOpening("EQU");
        SERVER.givenSitting(school, "ada", opening, this::wrongAtTheFirstSafetyCriticalOne);
        Window window = chromium.logIn(school, "ina");
        assertThat(window.page.url()).endsWith("/board");
        assertThat(window.text()).containsPattern("passed,\\s+1 talk open");

        window.follow("ada Person");
        window.page
                .locator("label", new Page.LocatorOptions().setHasText("explained it back"))
                .click();
        window.press("Record the talk");
        for (int i =
                        TestServer.bank()
                                .course()
                                .findModule("EQU")
                                .orElseThrow()
                                .demonstrations()
                                .size();
                i > 0;
                i--) {
            window.page.locator("input[name=observed]").first().check();
            window.press("Record the demonstration");
        }
        window.page.fill("#password-EQU", "not the password");
        window.pressRefused("Sign off", 400);
        assertThat(window.text()).contains("This is not your password");
        window.page.fill("#password-EQU", TestServer.PASSWORD);
        window.press("Sign off");
        assertThat(window.text()).contains("signed off by ina Person");
        window.follow("Class board");
        assertThat(window.text()).containsPattern("signed\\s+1 May");

        window.follow("ada Person");
        window.page
                .locator("summary", new Page.LocatorOptions().setHasText("Reverse"))
                .first()
                .click();
        window.page.fill("#reason-EQU", "Signed for the wrong student");
        window.page.fill("#reverse-password-EQU", TestServer.PASSWORD);
        window.press("Reverse this sign-off");
        assertThat(window.text())
                .contains("reversed by ina Person")
                .contains("Signed for the wrong student");
        window.follow("Class board");
        assertThat(window.text()).contains("ready");
        window.follow("Tests");
        window.page.fill("#place", "The meadow");
        window.press("Open the test");
        assertThat(window.text()).contains("The meadow");
    }

    @Test
    void anAuthorWritesAQuestionAndASecondPersonApprovesIt() {
        SERVER.givenPerson(school, "ute", Role.AUTHOR);
        SERVER.givenPerson(school, "rita", Role.REVIEWER);
        Window window = chromium.logIn(school, "ute");
        window.follow("Questions");
        window.page.fill("#words", "reserve handle");
        window.press("Show");
        window.follow("Questions");
        window.follow("Write a question");
        window.page.fill("#id", "strap-opened-for-a-photo");
        window.page.selectOption("#objective", "EQU-1.2");
        window.page.fill(
                "#stem", "You opened a leg strap for a photo. What comes before the launch?");
        window.page.fill("#option1", "The whole check again from its start");
        window.page.check("#key1");
        window.page.fill("#option2", "The strap alone, as the rest was checked");
        window.page.fill("#idea2", "earlier-check-counts");
        window.page.fill("#option3", "The launch, as the chest strap is closed");
        window.page.fill("#idea3", "chest-strap-holds-pilot");
        window.page.fill(
                "#rationale",
                "After any unbuckling the check begins again; a chest strap alone holds nobody.");
        window.page.check("#practice");
        window.page.locator("#said").getByText("Nothing stands against it.").waitFor();
        window.press("Check and preview");
        assertThat(window.text()).contains("Nothing stands against it.");
        window.press("Keep as draft");
        window.press("Submit for review");
        assertThat(window.text()).contains("waits for a second person");

        Window second = chromium.logIn(school, "rita");
        second.go("/bank/questions/strap-opened-for-a-photo");
        second.press("Approve");
        assertThat(second.text()).contains("live").contains("rita Person");
        second.follow("Compare editions");
        second.go("/bank/questions/glide-distance-in-wind?instances=20");
        second.go("/bank/lists");
        second.go("/bank/air-law");
    }

    @Test
    void theBoardOfAClassOfTwentyFourPrintsOnOneSheet() {
        for (int i : IntStream.range(1, 24).toArray()) {
            SERVER.givenPerson(school, "student" + i, Role.STUDENT);
        }
        SERVER.givenPerson(school, "ina", Role.INSTRUCTOR);
        Window window = chromium.logIn(school, "ina");
        assertThat(window.page.locator(".board tbody tr").count()).isEqualTo(24);

        byte[] sheet =
                window.page.pdf(new Page.PdfOptions().setFormat("A4").setPreferCSSPageSize(true));

        String pdf = new String(sheet, StandardCharsets.ISO_8859_1);
        assertThat(Pattern.compile("/Type\\s*/Page\\b").matcher(pdf).results().count()).isOne();
    }

    private boolean spoilt;

    private Optional<String> wrongAtTheFirstSafetyCriticalOne(Item item) {
        if (item.safetyCritical() && item.shown() instanceof Shown.Choice && !spoilt) {
            spoilt = true;
            return Optional.of(SERVER.wrongAnswer(school, item.id()));
        }
        return Optional.of(SERVER.rightAnswer(school, item.id()));
    }

    @Test
    void theSchoolLooksAtPassRatesAndKeepsPeopleAndPolicy() {
        UUID opening = givenOpening("AER");
        for (int i : IntStream.range(0, 6).toArray()) {
            SubjectId student = SERVER.givenPerson(school, "s" + i, Role.STUDENT);
            SERVER.doors().people().join(school, Optional.empty(), intake.id(), student);
            SERVER.givenSitting(
                    school,
                    "s" + i,
                    opening,
                    item ->
                            "AER-2".equals(item.topic())
                                    ? Optional.empty()
                                    : Optional.of(SERVER.rightAnswer(school, item.id())));
        }
        SERVER.givenPerson(school, "carl", Role.CHIEF_INSTRUCTOR);
        Window window = chromium.logIn(school, "carl");

        window.follow("Pass rates");
        assertThat(window.text())
                .contains("0 of 6 students reached the mark")
                .contains("6 of 6 students reached the mark");
        assertThat(window.page.locator("svg .dot").count()).isEqualTo(3);
        window.page.selectOption("#intake", intake.id().toString());
        window.press("Show");
        assertThat(window.page.url()).contains("intake=");
        window.follow("People");
        window.page.fill("#name", "Autumn");
        window.page.fill("#startsOn", "2027-09-01");
        window.press("Begin an intake");
        assertThat(window.text()).contains("Autumn");
        window.follow("Policy");
        window.page.fill("#passMark", "80");
        window.press("Enter this version");
        assertThat(window.text()).contains("Version 2").contains("80");
        window.follow("carl Person");
        window.page.fill("#old", TestServer.PASSWORD);
        window.page.fill("#wanted", "another sentence that is long");
        window.press("Change password");
        assertThat(window.text()).contains("Your password is changed");
        window.press("Log out");
        assertThat(window.page.url()).endsWith("/login");
    }
}
