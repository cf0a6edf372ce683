package org.groundline.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.options.ColorScheme;

import org.groundline.school.School;
import org.groundline.web.TestServer;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/// The installed Chromium, and what a test does with it. Where none is installed the test fails.
final class Chromium implements AutoCloseable {
    private static final List<String> RULES =
            List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa");
    private static final int PHONE_WIDTH = 390;
    private static final int LAPTOP_WIDTH = 1280;
    private static final int HEIGHT = 900;

    private final Playwright playwright = Playwright.create();
    private final Browser browser;
    private final String root;

    Chromium(int port) {
        Path program = Path.of(System.getProperty("groundline.chromium", "/usr/bin/chromium"));
        assertThat(Files.isExecutable(program))
                .as("%s, from the system's package chromium", program)
                .isTrue();
        this.root = "http://localhost:" + port;
        this.browser =
                playwright
                        .chromium()
                        .launch(
                                new BrowserType.LaunchOptions()
                                        .setExecutablePath(program)
                                        .setArgs(
                                                List.of(
                                                        "--no-sandbox",
                                                        "--disable-gpu",
                                                        "--disable-quic",
                                                        "--no-first-run",
                                                        "--disable-background-networking",
                                                        "--disable-component-update",
                                                        "--disable-sync")));
    }

    /// Opens a window of a person who has logged in by the page.
    Window logIn(School school, String name) {
        BrowserContext context = browser.newContext();
        context.setDefaultTimeout(10_000);
        var window = new Window(context.newPage(), root + "/" + school.code());
        window.go("/login");
        window.page.fill("#email", name + "@" + school.code() + ".example");
        window.page.fill("#password", TestServer.PASSWORD);
        window.press("Log in");
        return window;
    }

    /// One person's window.
    static final class Window {
        final Page page;
        private final String root;
        private final List<String> complaints = new ArrayList<>();

        private Window(Page page, String root) {
            this.page = page;
            this.root = root;
            page.onConsoleMessage(
                    message -> {
                        boolean told = message.text().startsWith("Failed to load resource");
                        if (message.type().equals("error") && !told) {
                            complaints.add(message.text());
                        }
                    });
            page.onResponse(
                    response -> {
                        if (response.status() >= 400) {
                            complaints.add(
                                    response.status()
                                            + " for "
                                            + response.request().method()
                                            + " "
                                            + response.url()
                                            + " "
                                            + response.request().postData());
                        }
                    });
            page.onPageError(complaints::add);
        }

        /// Goes to a page of the school and checks it.
        void go(String path) {
            page.navigate(root + path);
            check();
        }

        /// Presses a button and checks the page that follows.
        void press(String button) {
            page.locator(
                            "button:visible:not(.unseen)",
                            new Page.LocatorOptions().setHasText(button))
                    .first()
                    .click();
            page.waitForLoadState();
            check();
        }

        /// Presses a button whose form is to be refused with a status, and checks the page that
        /// follows.
        void pressRefused(String button, int status) {
            page.locator(
                            "button:visible:not(.unseen)",
                            new Page.LocatorOptions().setHasText(button))
                    .first()
                    .click();
            page.waitForLoadState();
            assertThat(complaints).hasSize(1).allMatch(c -> c.startsWith(status + " for POST"));
            complaints.clear();
            check();
        }

        /// Follows a link and checks the page that follows.
        void follow(String link) {
            page.locator("a:visible", new Page.LocatorOptions().setHasText(link)).first().click();
            page.waitForLoadState();
            check();
        }

        String text() {
            return page.locator("main").innerText();
        }

        /// No violation of WCAG 2.2 AA on a phone in light and on a laptop in dark; nothing wider
        /// than the window; no complaint of the browser.
        void check() {
            look(PHONE_WIDTH, ColorScheme.LIGHT);
            look(LAPTOP_WIDTH, ColorScheme.DARK);
            assertThat(complaints).as("the browser's complaints at %s", page.url()).isEmpty();
        }

        private void look(int width, ColorScheme scheme) {
            page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(scheme));
            page.setViewportSize(width, HEIGHT);
            checkAccessibility(scheme + " " + width);
            Object overflow =
                    page.evaluate(
                            "document.documentElement.scrollWidth - document.documentElement.clientWidth");
            assertThat(overflow)
                    .as("pixels wider than the window: %s at %d", page.url(), width)
                    .isEqualTo(0);
        }

        private void checkAccessibility(String how) {
            var results = new AxeBuilder(page).options(targetSizeOn()).analyze();
            assertThat(results.getViolations().stream().map(v -> v.getId() + ": " + v.getNodes()))
                    .as("accessibility of %s, %s", page.url(), how)
                    .isEmpty();
        }

        private static com.deque.html.axecore.args.AxeRunOptions targetSizeOn() {
            var options = new com.deque.html.axecore.args.AxeRunOptions();
            var rule = new com.deque.html.axecore.args.AxeRuleOptions();
            rule.setEnabled(true);
            options.setRules(java.util.Map.of("target-size", rule));
            var only = new com.deque.html.axecore.args.AxeRunOnlyOptions();
            only.setType("tag");
            only.setValues(RULES);
            options.setRunOnly(only);
            return options;
        }
    }

    @Override
    public void close() {
        browser.close();
        playwright.close();
    }
}
