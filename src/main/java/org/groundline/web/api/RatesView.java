package org.groundline.web.api;

import org.groundline.bank.Topic;
import org.groundline.insight.PassRates.Rates;
import org.groundline.insight.TopicRate;
import org.groundline.psychometrics.Interval;
import org.groundline.web.request.Percent;

import java.util.List;
import java.util.Optional;

/// Pass rates, in the order of the course.
record RatesView(String passMarkPercent, List<RateView> topics) {
    /// What may be said about a topic.
    ///
    /// @param kind `reached`: the share of students who reached the mark; `missed`: the share of
    ///   items missed, where students had too few items each; `silent`: too few students
    /// @param students different ones, each in the first counted sitting
    /// @param sharePercent with the ends of its interval of 95 %
    record RateView(
            String topic,
            String title,
            String kind,
            int students,
            Optional<Integer> studentsReached,
            Optional<Integer> items,
            Optional<Integer> itemsMissed,
            Optional<String> sharePercent,
            Optional<String> lowPercent,
            Optional<String> highPercent) {}

    static RatesView of(Rates rates) {
        return new RatesView(
                Percent.markText(rates.passMark()),
                rates.topics().stream().map(RatesView::of).toList());
    }

    private static RateView of(TopicRate rate) {
        return switch (rate) {
            case TopicRate.Reached(Topic topic, int students, int reached, Interval interval) ->
                    new RateView(
                            topic.id(),
                            topic.title(),
                            "reached",
                            students,
                            Optional.of(reached),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.of(Percent.shareText(reached, students)),
                            Optional.of(Percent.shareText(interval.low())),
                            Optional.of(Percent.shareText(interval.high())));
            case TopicRate.Missed(
                            Topic topic,
                            int students,
                            int items,
                            int missed,
                            Interval interval) ->
                    new RateView(
                            topic.id(),
                            topic.title(),
                            "missed",
                            students,
                            Optional.empty(),
                            Optional.of(items),
                            Optional.of(missed),
                            Optional.of(Percent.shareText(missed, items)),
                            Optional.of(Percent.shareText(interval.low())),
                            Optional.of(Percent.shareText(interval.high())));
            case TopicRate.Silent(Topic topic, int students) ->
                    new RateView(
                            topic.id(),
                            topic.title(),
                            "silent",
                            students,
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty());
        };
    }
}
