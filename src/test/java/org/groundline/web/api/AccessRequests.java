package org.groundline.web.api;

import org.groundline.web.TestServer;
import org.groundline.web.request.Routes.Route;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/// What is sent to each route that changes something, as templates; names in braces stand for ids.
/// JSON below the API, forms elsewhere. A route that is not listed is sent nothing.
final class AccessRequests {
    private static final Pattern ID =
            Pattern.compile("\\{(subject|sitting|item|opening|signOff|intake|edition)}");

    private static final Map<String, String> BODIES = new LinkedHashMap<>();

    static {
        String practised = "{'item':'{item}','seat':1,'sequence':0,'answer':'A'}";
        api("PUT /me/password", "{'password':'{password}','newPassword':'{password}'}");
        api("POST /briefs/{topic}/acknowledgements", "{'version':'{brief}'}");
        api("PUT /me/question-language", "{'language':'en'}");
        api("POST /practices", "{'topic':'AER-2'}");
        api("POST /practices/{sitting}/answers", practised);
        api("POST /openings", "{'module':'EQU','intake':'{intake}','windowMinutes':60}");
        api("POST /sittings/{sitting}/answers", practised);
        api(
                "POST /students/{subject}/debriefs",
                "{'item':'{item}','outcome':'not yet understood'}");
        api("POST /students/{subject}/demonstrations", "{'demonstration':'{demonstration}'}");
        api("POST /students/{subject}/sign-offs", "{'module':'EQU','password':'{password}'}");
        api(
                "POST /students/{subject}/sign-offs/{signOff}/reversal",
                "{'reason':'A test.','password':'{password}'}");
        api(
                "POST /people",
                "{'givenName':'New','familyName':'Person','email':'{unique}@x.example',"
                        + "'password':'{password}','roles':['student']}");
        api(
                "POST /people/{subject}/authorisations",
                "{'number':'T-2','launchMethods':['foot'],'issuer':'Test office',"
                        + "'validFrom':'2027-01-01','validUntil':'2029-12-31'}");
        api("POST /intakes", "{'name':'{unique}','startsOn':'2027-06-01'}");
        api(
                "PUT /policy",
                "{'passMarkPercent':'75','topicItems':10,'numericSharePercent':15,'studentsToSpeak':5}");

        String answered = "item={item}&clientId={uuid}&seat=1&sequence=0&answer=A&go=stay";
        page("POST /account/password", "old={password}&wanted={password}");
        page("POST /briefs/{topic}", "version={brief}");
        page("POST /account/question-language", "language=en");
        page("POST /practice/{topic}", "sitting={sitting}&" + answered);
        page("POST /sittings/{sitting}/answers", answered);
        page("POST /sittings/{sitting}/hand-in", "sure=yes");
        page("POST /students/{subject}/debriefs", "item={item}&outcome=not yet understood");
        page(
                "POST /students/{subject}/demonstrations",
                "demonstration={demonstration}&observed=today");
        page("POST /students/{subject}/sign-offs", "module=EQU&password={password}");
        page(
                "POST /students/{subject}/sign-offs/{signOff}/reversal",
                "reason=A test.&password={password}");
        page("POST /tests", "module=EQU&intake={intake}&hours=1");
        page(
                "POST /people",
                "givenName=New&familyName=Person&email={unique}@x.example&password={password}&role=student");
        page("POST /intakes", "name={unique}&startsOn=2027-06-01");
        page("POST /intakes/{intake}/members", "student={subject}");
        page(
                "POST /policy",
                "version=1&passMark=75&topicItems=10&numericShare=15&studentsToSpeak=5");
        bank();
    }

    private static void bank() {
        page("POST /bank/check", "text=topic: EQU-1");
        page(
                "POST /bank/drafts",
                "deed=keep&change=substantive&since=0&text={topic: EQU-1, questions: [{id: {unique}}]}");
        String question = "POST /bank/questions/{question}";
        page(question + "/submitted", "edition={edition}");
        page(question + "/approved", "edition={edition}&version=none&from=2027-06-01");
        page(question + "/sent-back", "edition={edition}&reason=A test.");
        page(question + "/retired", "edition={edition}&reason=A test.");
        page(question + "/withdrawn", "reason=A test.");
        page(question + "/restored", "reason=A test.");
        page(question + "/remarks", "remark=A test.");
        page("POST /bank/air-law", "country=XA");
        page(
                "POST /bank/lists/misconceptions",
                "id={unique}&wrong=The wrong idea.&right=The right idea.&feedback=this is a test");
        page(
                "POST /bank/lists/sources",
                "sourceId={unique}&title=An act on flight&publisher=An office&year=2027&read=verified");
    }

    private AccessRequests() {}

    private static void api(String route, String json) {
        BODIES.put(route.replace(" ", " /api/v1/schools/{school}"), json.replace('\'', '"'));
    }

    private static void page(String route, String form) {
        BODIES.put(route.replace(" ", " /{school}"), form);
    }

    private static String template(Route route) {
        return BODIES.getOrDefault(route.method() + " " + route.path(), "");
    }

    /// The routes of the API that have a template.
    static Set<String> known() {
        return BODIES.keySet().stream()
                .filter(route -> route.contains(" /api/"))
                .collect(Collectors.toSet());
    }

    /// The ids that a request to a route names, in its address or in what is sent.
    static List<String> ids(Route route) {
        return ID.matcher(query(route) + route.path() + template(route))
                .results()
                .map(MatchResult::group)
                .distinct()
                .toList();
    }

    /// Addresses that take an intake in their query.
    private static String query(Route route) {
        return route.path().matches(".*/(board|rates)") ? "?intake={intake}" : "";
    }

    static String address(Route route, AccessWorld.Things things) {
        return filled(route, route.path() + query(route), things);
    }

    static String body(Route route, AccessWorld.Things things) {
        return filled(route, template(route), things);
    }

    /// A form by its fields.
    static Map<String, String> form(Route route, AccessWorld.Things things) {
        Map<String, String> fields = new LinkedHashMap<>();
        for (String field : new ArrayList<>(List.of(body(route, things).split("&")))) {
            String[] parts = field.split("=", 2);
            if (parts.length == 2) {
                fields.put(parts[0], parts[1]);
            }
        }
        return fields;
    }

    private static String filled(Route route, String template, AccessWorld.Things things) {
        String text = template;
        for (var id : things.of(route).entrySet()) {
            text = text.replace("{" + id.getKey() + "}", id.getValue());
        }
        return text.replace("{password}", TestServer.PASSWORD)
                .replace("{uuid}", TestServer.newId().toString())
                .replace("{unique}", "u" + TestServer.newId())
                .replace("{question}", TestServer.bank().ofTopic("EQU-1").getFirst().id())
                .replace("{brief}", TestServer.bank().findBrief("AER-2").orElseThrow().version())
                .replace("{module}", "AER")
                .replace("{topic}", "AER-2");
    }
}
