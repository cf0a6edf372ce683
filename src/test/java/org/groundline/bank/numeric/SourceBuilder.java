package org.groundline.bank.numeric;

import org.groundline.bank.numeric.source.TemplateSource;
import org.groundline.bank.numeric.source.TemplateSource.AnswerSource;
import org.groundline.bank.numeric.source.TemplateSource.AskedSource;
import org.groundline.bank.numeric.source.TemplateSource.ChosenSource;
import org.groundline.bank.numeric.source.TemplateSource.DecideSource;
import org.groundline.bank.numeric.source.TemplateSource.DependentSource;
import org.groundline.bank.numeric.source.TemplateSource.DiagramSource;
import org.groundline.bank.numeric.source.TemplateSource.DrawSource;
import org.groundline.bank.numeric.source.TemplateSource.MistakeSource;
import org.groundline.bank.numeric.source.TemplateSource.OptionSource;
import org.groundline.bank.numeric.source.TemplateSource.StepSource;
import org.groundline.bank.numeric.source.TemplateSource.WorkedSource;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/// A sound template (the glide into a headwind), of which each test spoils or changes one thing.
final class SourceBuilder {
    private final Map<String, DrawSource> draw = new LinkedHashMap<>();
    private final List<MistakeSource> mistakes = new ArrayList<>();
    private final List<StepSource> steps = new ArrayList<>();
    private final List<WorkedSource> worked = new ArrayList<>();
    private String stem = "Fly at {airspeed}, {glide_ratio} to 1, wind {wind}, height {height}.";
    private String explain = "Over ground {ground_speed}: {answer}.";
    private Optional<String> where = Optional.of("wind < 0.6 * airspeed");
    private String formula = "height * glide_ratio * ground_speed / airspeed";
    private Optional<String> unit = Optional.of("m");
    private Optional<String> round = Optional.of("50");
    private Optional<String> side = Optional.of("down");
    private Optional<String> tolerance = Optional.of("2 %");
    private Optional<String> sign = Optional.empty();
    private Optional<DiagramSource> diagram = Optional.empty();
    private List<String> bounds = List.of();
    private List<OptionSource> options = List.of();
    private List<String> between = List.of("200", "8000");

    SourceBuilder() {
        range("airspeed", "34", "42", "1", "km/h");
        range("glide_ratio", "7", "9", "0.5", "");
        range("wind", "5", "20", "5", "km/h");
        range("height", "200", "800", "50", "m");
        mistake("wind-ignored", "height * glide_ratio");
        mistake("wind-added", "height * glide_ratio * (airspeed + wind) / airspeed");
        step("ground_speed", "Ground speed is airspeed minus headwind.", "airspeed - wind", "km/h");
        worked(
                Map.of(
                        "airspeed", "38 km/h",
                        "glide_ratio", "8.8",
                        "wind", "15 km/h",
                        "height", "600 m"),
                "3196 m",
                "5 m");
    }

    SourceBuilder range(String name, String from, String to, String step, String unit) {
        draw.put(
                name,
                new ChosenSource(
                        Optional.of(from),
                        Optional.of(to),
                        Optional.of(step),
                        List.of(),
                        Optional.of(unit)));
        return this;
    }

    SourceBuilder list(String name, List<String> values, String unit) {
        draw.put(
                name,
                new ChosenSource(
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        values,
                        Optional.of(unit)));
        return this;
    }

    SourceBuilder dependent(String name, String formula, String round, String unit) {
        draw.put(name, new DependentSource(formula, round, Optional.of(unit)));
        return this;
    }

    SourceBuilder mistake(String misconception, String formula) {
        mistakes.add(new MistakeSource(misconception, formula, Optional.empty()));
        return this;
    }

    SourceBuilder mistakeAt(String step, String misconception, String formula) {
        mistakes.add(new MistakeSource(misconception, formula, Optional.of(step)));
        return this;
    }

    SourceBuilder step(String name, String text, String formula, String unit) {
        steps.add(new StepSource(name, text, formula, Optional.of(unit)));
        return this;
    }

    SourceBuilder worked(Map<String, String> given, String answer, String within) {
        worked.add(new WorkedSource(given, answer, Optional.of(within), "derived"));
        return this;
    }

    SourceBuilder onlyWorked(Map<String, String> given, String answer, String within) {
        worked.clear();
        return worked(given, answer, within);
    }

    SourceBuilder withoutWorked() {
        worked.clear();
        return this;
    }

    SourceBuilder stem(String text) {
        stem = text;
        return this;
    }

    SourceBuilder explain(String text) {
        explain = text;
        return this;
    }

    SourceBuilder where(String condition) {
        where = Optional.of(condition);
        return this;
    }

    SourceBuilder formula(String text) {
        formula = text;
        return this;
    }

    SourceBuilder unit(String symbol) {
        unit = Optional.of(symbol);
        return this;
    }

    SourceBuilder round(String step) {
        round = Optional.of(step);
        return this;
    }

    SourceBuilder side(String text) {
        side = Optional.of(text);
        return this;
    }

    SourceBuilder tolerance(String text) {
        tolerance = Optional.of(text);
        return this;
    }

    SourceBuilder sign(String text) {
        sign = Optional.of(text);
        return this;
    }

    SourceBuilder between(String... ends) {
        between = List.of(ends);
        return this;
    }

    /// Turns the template into one that decides: whether the distance is short, middling or long.
    SourceBuilder decides() {
        decision(List.of("1900", "3900"), "Short.", "From {height} middling.", "Long.");
        return tolerance("50");
    }

    /// A drawing that only explains the answer.
    SourceBuilder diagram(String kind, Map<String, String> values) {
        return diagram(new DiagramSource(kind, values, Optional.empty(), List.of(), false));
    }

    SourceBuilder diagram(DiagramSource source) {
        diagram = Optional.of(source);
        return this;
    }

    SourceBuilder decision(List<String> ends, String... texts) {
        bounds = ends;
        options = Stream.of(texts).map(text -> new OptionSource(text, "idea " + text)).toList();
        return this;
    }

    private AskedSource asked() {
        return options.isEmpty()
                ? new AnswerSource(formula, unit, round, side, tolerance, sign, between, mistakes)
                : new DecideSource(formula, unit, tolerance, bounds, between, options);
    }

    TemplateSource source() {
        return new TemplateSource(
                "glide-in-wind", stem, draw, where, asked(), steps, worked, explain, diagram);
    }
}
