package org.groundline.web.api;

import static org.assertj.core.api.Assertions.assertThat;

import org.groundline.school.Permissions;
import org.groundline.school.Role;
import org.groundline.school.Scope;
import org.groundline.web.TestServer;
import org.groundline.web.api.AccessWorld.Person;
import org.groundline.web.api.AccessWorld.Things;
import org.groundline.web.request.Routes.Route;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/// Every route, asked by every role for its own, for another student's and for another school's
/// records. What is expected follows from the permissions file alone.
class AccessTest {
    private static final TestServer SERVER = TestServer.start();
    private static final AccessWorld WORLD = new AccessWorld(SERVER);

    /// The routes that need no log-in; there are no others.
    private static final Set<String> OPEN =
            Set.of(
                    "GET /",
                    "GET /health",
                    "GET /ready",
                    "GET /set-up/{token}",
                    "POST /set-up/{token}",
                    "GET /{school}/login",
                    "POST /{school}/login",
                    "GET /api/v1/openapi.yaml",
                    "GET /api/v1/openapi.json",
                    "GET /api/v1/theory",
                    "GET /api/v1/theory/{name}",
                    "POST /api/v1/schools/{school}/sessions");

    @AfterAll
    static void stop() {
        SERVER.close();
    }

    @Test
    void onlyTheseRoutesAreOpenToEverybody() {
        assertThat(SERVER.web().routes().stream().filter(r -> r.action().isEmpty()))
                .extracting(AccessTest::name)
                .containsExactlyInAnyOrderElementsOf(OPEN);
    }

    @Test
    void whatIsSentIsSentToRoutesThatThereAre() {
        assertThat(SERVER.web().routes())
                .extracting(AccessTest::name)
                .containsAll(AccessRequests.known());
        assertThat(
                        ApiDocument.SHIPPED.operations().stream()
                                .filter(o -> o.takesBody() && !o.isOpen())
                                .map(o -> o.method() + " " + o.path()))
                .isSubsetOf(AccessRequests.known());
    }

    /// Reading before changing, so that what is read is still as it was made; handing in after what
    /// needs an open sitting; what ends sessions last.
    @TestFactory
    Stream<DynamicTest> everyRouteAnswersEachRoleAsThePermissionsSay() {
        return closed().sorted(Comparator.comparing(AccessTest::rank))
                .map(route -> DynamicTest.dynamicTest(name(route), () -> ask(route)));
    }

    private static int rank(Route route) {
        if (AccessWorld.endsSessions(route)) {
            return 3;
        }
        return route.path().endsWith("/hand-in") ? 2 : route.method().equals("GET") ? 0 : 1;
    }

    @TestFactory
    Stream<DynamicTest> everyRouteSendsAwayWhoIsNotLoggedInToThisSchool() {
        return closed().map(
                        route -> DynamicTest.dynamicTest(name(route), () -> askFromOutside(route)));
    }

    private static Stream<Route> closed() {
        return SERVER.web().routes().stream().filter(r -> r.action().isPresent());
    }

    private static String name(Route route) {
        return route.method() + " " + route.path();
    }

    /// What may be expected of an answer.
    private enum Expected {
        CARRIED_OUT,
        NOT_ALLOWED,
        NOT_FOUND
    }

    /// Whose records a request is about.
    private record Case(String whose, Things things, Expected expected) {}

    private static void ask(Route route) {
        for (Role role : Role.values()) {
            Person person = WORLD.person(route, role);
            for (Case each : cases(route, role, person)) {
                var answer = send(route, person, each.things());
                assertThat(outcome(route, answer))
                        .as("%s asks %s for %s: %s", role, name(route), each, answer.body())
                        .isEqualTo(each.expected());
            }
        }
    }

    private static List<Case> cases(Route route, Role role, Person person) {
        Scope scope = Permissions.SHIPPED.scope(route.action().orElseThrow(), role);
        boolean none = scope == Scope.NONE;
        List<String> ids = AccessRequests.ids(route);
        Expected mine = none ? Expected.NOT_ALLOWED : Expected.CARRIED_OUT;
        Expected elsewhere = none ? Expected.NOT_ALLOWED : Expected.NOT_FOUND;
        List<Case> cases = new ArrayList<>();
        cases.add(new Case("their own", person.own(), mine));
        if (!ids.isEmpty()) {
            Expected others = scope == Scope.OWN ? elsewhere : mine;
            cases.add(new Case("another student's", WORLD.anothers(), others));
            Things reachable = scope == Scope.OWN ? person.own() : WORLD.anothers();
            for (String id : ids) {
                String word = id.substring(1, id.length() - 1);
                cases.add(
                        new Case(
                                "another school's " + word,
                                reachable.with(WORLD.foreign(), word),
                                elsewhere));
            }
        }
        return cases;
    }

    private static HttpResponse<String> send(Route route, Person person, Things things) {
        String address = AccessRequests.address(route, things);
        String code = WORLD.here().school.code();
        if (route.isApi()) {
            String body = AccessRequests.body(route, things);
            return person.api()
                    .withKey(TestServer.newId())
                    .with("If-Match", "*")
                    .send(
                            route.method(),
                            address,
                            Optional.of(body).filter(text -> !text.isEmpty()))
                    .response();
        }
        String page = address.substring(code.length() + 1);
        return route.method().equals("GET")
                ? person.browser().get(page)
                : person.browser().post(page, AccessRequests.form(route, things));
    }

    /// A change whose time has passed, or that rests on an older state, is told so to those only
    /// who may make it.
    private static Expected outcome(Route route, HttpResponse<String> answer) {
        int status = answer.statusCode();
        boolean read = route.method().equals("GET");
        if (status == 403 || status == 404) {
            return status == 403 ? Expected.NOT_ALLOWED : Expected.NOT_FOUND;
        }
        assertThat(status < 400 || (!read && Set.of(409, 412).contains(status)))
                .as("%s: %d %s", name(route), status, answer.body())
                .isTrue();
        assertThat(isLogin(answer) && !route.path().endsWith("/logout"))
                .as("%s leads to the log-in", name(route))
                .isFalse();
        return Expected.CARRIED_OUT;
    }

    private static boolean isLogin(HttpResponse<String> answer) {
        return answer.headers().firstValue("Location").orElse("").contains("/login");
    }

    private static void askFromOutside(Route route) {
        var here = WORLD.here();
        String token = SERVER.token(WORLD.there().school, "cleo");
        for (String sent :
                List.of(
                        "",
                        WORLD.there().school.code() + "." + token,
                        here.school.code() + "." + token)) {
            var answer = sendAs(route, sent);
            if (route.isApi()) {
                assertThat(answer.statusCode()).as(name(route)).isEqualTo(401);
            } else {
                assertThat(answer.statusCode()).as(name(route)).isEqualTo(302);
                assertThat(isLogin(answer)).as(name(route)).isTrue();
            }
        }
    }

    private static HttpResponse<String> sendAs(Route route, String token) {
        var here = WORLD.here();
        String address = AccessRequests.address(route, WORLD.anothers());
        if (route.isApi()) {
            ApiClient client = here.stranger().with("Authorization", "Bearer " + token);
            return client.send(route.method(), address, Optional.empty()).response();
        }
        var browser = SERVER.stranger(here.school);
        var request =
                browser.request(address)
                        .header("Cookie", "__Host-groundline-" + here.school.code() + "=" + token)
                        .method(route.method(), java.net.http.HttpRequest.BodyPublishers.noBody());
        return browser.send(request.build());
    }
}
