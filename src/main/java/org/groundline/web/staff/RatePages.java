package org.groundline.web.staff;

import io.javalin.http.Context;

import org.groundline.insight.PassRates.Rates;
import org.groundline.insight.TopicRate;
import org.groundline.psychometrics.Interval;
import org.groundline.school.Action;
import org.groundline.school.Actor;
import org.groundline.web.Doors;
import org.groundline.web.request.Form;
import org.groundline.web.request.Frame;
import org.groundline.web.request.Percent;
import org.groundline.web.request.Routes;
import org.groundline.web.staff.words.RateWords;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/// Pass rates by topic, as a picture and as a table.
public final class RatePages {
    private final Doors doors;

    RatePages(Doors doors) {
        this.doors = doors;
    }

    /// @param markText the pass mark in force. It is told in words and not drawn: it is a share of
    ///   marks, the axis a share of students
    public record RatesPage(
            Frame frame, RateWords words, IntakeFilter filter, String markText, List<Line> lines) {}

    /// One topic.
    ///
    /// @param dot where the share stands on the axis, such as `53.33%`; empty where nothing is
    ///   drawn
    /// @param said in words, for those who do not see the picture, and where nothing is drawn
    /// @param missed whether the share is of items missed instead of students who reached the mark
    public record Line(
            String topic,
            String counted,
            String dot,
            String low,
            String high,
            String share,
            String range,
            String said,
            boolean missed) {
        public boolean drawn() {
            return !dot.isEmpty();
        }
    }

    void addTo(Routes routes) {
        routes.get("/{school}/rates", Action.READ_RATES, this::show);
    }

    private void show(Context ctx, Actor actor) {
        Optional<UUID> intake = Form.queryId(ctx, "intake");
        Rates rates = doors.rates().byTopic(actor, intake);
        RateWords words = RateWords.in(actor.school().language());
        Frame frame = Frame.of(ctx, actor, words.passRates());
        var page =
                new RatesPage(
                        frame,
                        words,
                        IntakeFilter.on(frame, doors, actor, intake),
                        Percent.mark(rates.passMark()),
                        rates.topics().stream().map(rate -> line(rate, words)).toList());
        ctx.render("staff/rates.jte", Map.of("page", page));
    }

    private static Line line(TopicRate rate, RateWords words) {
        String topic = rate.topic().title();
        return switch (rate) {
            case TopicRate.Silent silent ->
                    new Line(
                            topic,
                            words.students(silent.students()),
                            "",
                            "",
                            "",
                            "",
                            "",
                            words.tooFew(silent.students()),
                            false);
            case TopicRate.Reached reached ->
                    drawn(
                            topic,
                            words.students(reached.students()),
                            new Share(
                                    (double) reached.reached() / reached.students(),
                                    reached.interval(),
                                    false),
                            words.reached(reached.reached(), reached.students()));
            case TopicRate.Missed missed ->
                    drawn(
                            topic,
                            words.students(missed.students()),
                            new Share(
                                    (double) missed.missed() / missed.items(),
                                    missed.interval(),
                                    true),
                            words.missed(missed.missed(), missed.items()));
        };
    }

    private record Share(double value, Interval interval, boolean missed) {}

    private static Line drawn(String topic, String counted, Share share, String said) {
        Interval interval = share.interval();
        return new Line(
                topic,
                counted,
                position(share.value()),
                position(interval.low()),
                position(interval.high()),
                Percent.whole(share.value()),
                Percent.whole(interval.low()) + " – " + Percent.whole(interval.high()),
                said,
                share.missed());
    }

    private static String position(double share) {
        return String.format(Locale.ROOT, "%.2f%%", 100 * share);
    }
}
