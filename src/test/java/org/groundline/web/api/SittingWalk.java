package org.groundline.web.api;

import static org.assertj.core.api.Assertions.assertThat;

import org.groundline.web.TestServer;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/// Opening a test, sitting it, its result.
final class SittingWalk {
    private final TaughtSchool taught;
    private final ApiClient iris;
    private final ApiClient ada;

    SittingWalk(TaughtSchool taught, ApiClient stranger) {
        this.taught = taught;
        this.iris = stranger.as(taught.school, "iris");
        this.ada = stranger.as(taught.school, "ada");
    }

    void all() {
        UUID sitting = begun();
        sat(sitting);
        handedIn(sitting);
        tooLate();
        annulled();
    }

    private UUID begun() {
        ApiAnswer opening = open(60);
        String begin = "/openings/" + opening.text("/opening") + "/sittings";
        ApiAnswer first = ada.post(begin);
        ApiAnswer again = ada.post(begin);

        assertThat(opening.status()).isEqualTo(201);
        assertThat(first.status()).isEqualTo(201);
        assertThat(again.status()).isEqualTo(200);
        assertThat(again.json()).isEqualTo(first.json());
        assertThat(ada.get(first.header("Location")).id("/sitting"))
                .isEqualTo(first.id("/sitting"));
        assertThat(ada.get("/me/openings").text("/openings/0/sitting"))
                .isEqualTo(first.text("/sitting"));
        assertThat(iris.get("/openings").text("/openings/0/opening"))
                .isEqualTo(opening.text("/opening"));
        return first.id("/sitting");
    }

    private ApiAnswer open(int minutes) {
        return iris.post(
                "/openings",
                Map.of(
                        "module",
                        "EQU",
                        "intake",
                        taught.intake.id(),
                        "windowMinutes",
                        minutes,
                        "place",
                        "Hut"));
    }

    private void sat(UUID sitting) {
        String path = "/sittings/" + sitting;
        List<UUID> items = TaughtSchool.items(ada.get(path));
        UUID item = items.get(0);
        String flag = path + "/flags/" + item;
        var answer = taught.answer(item, 1, 0, taught.right(item));
        ApiClient keyed = ada.withKey(TestServer.newId());

        taught.server.passes(Duration.ofNanos(234_567));
        ApiAnswer first = keyed.post(path + "/answers", answer);
        taught.server.passes(Duration.ofSeconds(5).minusNanos(234_567));
        ApiAnswer again = keyed.post(path + "/answers", answer);

        assertThat(first.status()).isEqualTo(200);
        assertThat(again.json()).isEqualTo(first.json());
        assertThat(
                        keyed.post(path + "/answers", taught.answer(item, 1, 1, taught.wrong(item)))
                                .status())
                .isEqualTo(422);
        assertThat(ada.put(flag).status()).isEqualTo(204);
        assertThat(ada.put(flag).status()).isEqualTo(204);
        assertThat(ada.get(path).at("/items/0/flagged").asBoolean()).isTrue();
        assertThat(ada.delete(flag).status()).isEqualTo(204);
        assertThat(ada.get(path).at("/items/0/flagged").asBoolean()).isFalse();
        assertThat(ada.get(path + "/result").status()).isEqualTo(409);
    }

    private void handedIn(UUID sitting) {
        String path = "/sittings/" + sitting;
        List<UUID> items = TaughtSchool.items(ada.get(path));
        ApiAnswer first = ada.post(path + "/hand-in");
        taught.server.passes(Duration.ofSeconds(5));
        ApiAnswer again = ada.post(path + "/hand-in");
        var late = taught.answer(items.get(1), 1, 9, taught.right(items.get(1)));

        assertThat(first.text("/state")).isEqualTo("handed-in");
        assertThat(again.json()).isEqualTo(first.json());
        assertThat(ada.get(path).status()).isEqualTo(409);
        assertThat(ada.put(path + "/flags/" + items.get(0)).status()).isEqualTo(409);
        assertThat(ada.delete(path + "/flags/" + items.get(0)).status()).isEqualTo(409);
        assertThat(ada.withKey(TestServer.newId()).post(path + "/answers", late).status())
                .isEqualTo(409);
        assertThat(ada.get(path + "/result").at("/marksHundredths").asInt()).isEqualTo(100);
        assertThat(iris.get(path + "/result").at("/items")).hasSize(items.size());
    }

    private void tooLate() {
        ApiAnswer opening = open(1);
        taught.server.passes(Duration.ofMinutes(2));

        assertThat(ada.post("/openings/" + opening.text("/opening") + "/sittings").status())
                .isEqualTo(409);
    }

    private void annulled() {
        UUID sitting = taught.givenSitting(iris, ada, "EQU");
        taught.execute("update sitting set annulled_at = started_at where id = ?", sitting);

        assertThat(ada.post("/sittings/" + sitting + "/hand-in").status()).isEqualTo(409);
    }
}
