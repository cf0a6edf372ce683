package org.groundline.web.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;

/// Reading a brief and saying so.
final class BriefWalk {
    private static final String BRIEF = "/briefs/AER-2";

    private final TaughtSchool taught;
    private final ApiClient iris;
    private final ApiClient ada;

    BriefWalk(TaughtSchool taught, ApiClient stranger) {
        this.taught = taught;
        this.iris = stranger.as(taught.school, "iris");
        this.ada = stranger.as(taught.school, "ada");
    }

    void all() {
        ApiAnswer brief = ada.get(BRIEF);
        assertThat(brief.text("/reading/state")).isEqualTo("unread");
        assertThat(brief.text("/markdown")).contains("{AER-2.1}");
        assertThat(brief.text("/html"))
                .contains("<figure class=\"diagram\"><svg")
                .doesNotContain("{");
        assertThat(brief.at("/figures").size()).isPositive();
        acknowledge(brief.text("/version"));
    }

    private void acknowledge(String version) {
        Map<String, Object> read = Map.of("version", version);
        ApiAnswer first = ada.post(BRIEF + "/acknowledgements", read);

        assertThat(first.text("/state")).isEqualTo("read");
        assertThat(ada.post(BRIEF + "/acknowledgements", read).body()).isEqualTo(first.body());
        assertThat(ada.post(BRIEF + "/acknowledgements", Map.of("version", "0")).status())
                .isEqualTo(409);
        assertThat(ada.get("/briefs").body())
                .isEqualTo(iris.get("/students/" + taught.ada.value() + "/briefs").body())
                .contains("\"topic\":\"AER-2\",\"reading\":{\"state\":\"read\"");
    }
}
