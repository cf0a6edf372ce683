package org.groundline.bank;

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
import org.groundline.diagram.Drawing;
import org.groundline.diagram.Purpose;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;

/// What of a question makes its version, and of a brief. A change here changes the hash of every
/// question of the kind, so it comes with a new format number.
///
/// What an item does not depend on is left out: worked examples and the plausible range, which only
/// check a template, topic and module, which the objective tells, and the way numbers and formulas
/// are spaced.
final class Content {
    private static final String FIXED_FORMAT = "1";
    private static final String NUMERIC_FORMAT = "2"; // the second writes the slips out
    private static final String BRIEF_FORMAT = "1";

    private static final Pattern SPACES = Pattern.compile("\\s+");

    private Content() {}

    static Map<String, Object> of(FixedQuestion question) {
        Map<String, Object> content = heading("fixed", FIXED_FORMAT, question);
        content.put("stem", question.stem());
        content.put("options", question.options().stream().map(Content::option).toList());
        content.put("rationale", question.rationale());
        question.jurisdiction().ifPresent(j -> content.put("jurisdiction", j.text()));
        if (!question.figures().isEmpty()) {
            content.put("figures", question.figures().stream().map(Content::figure).toList());
        }
        return content;
    }

    static Map<String, Object> of(NumericQuestion question) {
        TemplateSource source = question.source();
        Map<String, Misconception> ideas = question.misconceptions();
        Map<String, Object> content = heading("numeric", NUMERIC_FORMAT, question);
        content.put("audience", question.audience().word());
        content.put("stem", source.stem());
        content.put("draw", draws(source));
        source.where().ifPresent(w -> content.put("where", formula(w)));
        content.putAll(asked(source.asked(), ideas));
        content.put("steps", source.steps().stream().map(Content::step).toList());
        content.put("explain", source.explain());
        source.diagram().ifPresent(d -> content.put("diagram", diagram(d)));
        return content;
    }

    static Map<String, Object> of(Misconception idea) {
        return Map.of(
                "id", idea.id(),
                "wrong", idea.wrong(),
                "right", idea.right(),
                "feedback", idea.feedback());
    }

    static Map<String, Object> of(Brief brief) {
        Map<String, Object> content = new TreeMap<>();
        content.put("format", BRIEF_FORMAT);
        content.put("kind", "brief");
        content.put("topic", brief.topic());
        content.put("text", brief.text());
        content.put("sources", brief.sources().stream().map(Citation::text).toList());
        Map<String, Object> figures = new TreeMap<>();
        brief.figures().forEach((place, figure) -> figures.put(place, shown(figure)));
        content.put("figures", figures);
        return content;
    }

    /// What a figure tells; a better drawing of the same values is no other content.
    private static Map<String, Object> shown(Figure figure) {
        return switch (figure) {
            case IllustratedFigure drawn ->
                    Map.of(
                            "content", drawn.content(),
                            "title", drawn.title(),
                            "description", drawn.description());
            case ComputedFigure computed -> {
                Map<String, Object> values = new TreeMap<>();
                computed.values().forEach((name, si) -> values.put(name, si.toPlainString()));
                yield Map.of(
                        "kind", computed.kind(),
                        "values", values,
                        "printed", computed.printed(),
                        "labels", computed.labels());
            }
        };
    }

    private static Map<String, Object> heading(String kind, String format, Question question) {
        Map<String, Object> content = new TreeMap<>();
        content.put("format", format);
        content.put("kind", kind);
        content.put("id", question.id());
        content.put("objective", question.objective());
        content.put("level", question.level().word());
        content.put("safetyCritical", question.safetyCritical());
        content.put("sources", question.heading().sourceTexts());
        return content;
    }

    private static Map<String, Object> figure(Figure figure) {
        Drawing drawing = figure.draw(Purpose.STEM, "figure");
        return Map.of(
                "svg", drawing.svg(),
                "title", drawing.title(),
                "description", drawing.description());
    }

    private static Map<String, Object> option(Option option) {
        return switch (option) {
            case Option.Right right -> Map.of("text", right.text(), "key", true);
            case Option.Wrong wrong ->
                    Map.of("text", wrong.text(), "misconception", of(wrong.idea()));
        };
    }

    private static Map<String, Object> draws(TemplateSource source) {
        Map<String, Object> draws = new TreeMap<>();
        source.draw().forEach((name, draw) -> draws.put(name, draw(draw)));
        return draws;
    }

    private static Map<String, Object> draw(DrawSource draw) {
        return switch (draw) {
            case ChosenSource chosen -> chosen(chosen);
            case DependentSource dependent -> dependent(dependent);
        };
    }

    private static Map<String, Object> dependent(DependentSource draw) {
        Map<String, Object> content = new TreeMap<>();
        content.put("formula", formula(draw.formula()));
        content.put("round", decimal(draw.round()));
        put(content, "unit", draw.unit());
        return content;
    }

    private static Map<String, Object> chosen(ChosenSource draw) {
        Map<String, Object> content = new TreeMap<>();
        put(content, "from", draw.from().map(Content::decimal));
        put(content, "to", draw.to().map(Content::decimal));
        put(content, "step", draw.step().map(Content::decimal));
        put(content, "unit", draw.unit());
        content.put("anyOf", draw.anyOf().stream().map(Content::decimal).toList());
        return content;
    }

    private static Map<String, Object> asked(AskedSource asked, Map<String, Misconception> ideas) {
        return switch (asked) {
            case AnswerSource answer ->
                    Map.of(
                            "answer", answer(answer),
                            "mistakes",
                                    answer.mistakes().stream().map(m -> mistake(m, ideas)).toList(),
                            "slips", Belief.SLIPS.stream().map(id -> of(idea(id, ideas))).toList());
            case DecideSource decide ->
                    Map.of(
                            "decide", decide(decide),
                            "options",
                                    decide.options().stream().map(o -> option(o, ideas)).toList());
        };
    }

    private static Map<String, Object> decide(DecideSource decide) {
        Map<String, Object> content = new TreeMap<>();
        content.put("formula", formula(decide.formula()));
        put(content, "unit", decide.unit());
        put(content, "tolerance", decide.tolerance().map(Content::decimal));
        content.put("bounds", decide.bounds().stream().map(Content::decimal).toList());
        return content;
    }

    private static Map<String, Object> option(
            OptionSource option, Map<String, Misconception> ideas) {
        return Map.of(
                "text", option.text(), "misconception", of(idea(option.misconception(), ideas)));
    }

    private static Map<String, Object> answer(AnswerSource answer) {
        Map<String, Object> content = new TreeMap<>();
        content.put("formula", formula(answer.formula()));
        put(content, "unit", answer.unit());
        put(content, "round", answer.round().map(Content::decimal));
        put(content, "side", answer.side());
        put(content, "tolerance", answer.tolerance());
        put(content, "sign", answer.sign());
        return content;
    }

    private static Map<String, Object> mistake(
            MistakeSource mistake, Map<String, Misconception> ideas) {
        Map<String, Object> content = new TreeMap<>();
        content.put("misconception", of(idea(mistake.misconception(), ideas)));
        content.put("formula", formula(mistake.formula()));
        put(content, "at", mistake.at());
        return content;
    }

    private static Misconception idea(String id, Map<String, Misconception> ideas) {
        Misconception idea = ideas.get(id);
        if (idea == null) {
            throw new IllegalStateException("unchecked misconception " + id);
        }
        return idea;
    }

    private static Map<String, Object> step(StepSource step) {
        Map<String, Object> content = new TreeMap<>();
        content.put("name", step.name());
        content.put("text", step.text());
        content.put("formula", formula(step.formula()));
        put(content, "unit", step.unit());
        return content;
    }

    private static Map<String, Object> diagram(DiagramSource diagram) {
        Map<String, Object> content = new TreeMap<>();
        content.put("kind", diagram.kind());
        Map<String, Object> values = new TreeMap<>();
        diagram.values().forEach((name, formula) -> values.put(name, formula(formula)));
        content.put("values", values);
        put(content, "asked", diagram.asked());
        content.put("labels", diagram.labels());
        content.put("inStem", diagram.inStem());
        return content;
    }

    private static void put(Map<String, Object> content, String key, Optional<String> value) {
        value.ifPresent(v -> content.put(key, v));
    }

    private static String formula(String formula) {
        return SPACES.matcher(formula.strip()).replaceAll(" ");
    }

    /// The shortest form of a decimal, so that 0.50 and 0.5 are the same content.
    private static String decimal(String number) {
        return new BigDecimal(number).stripTrailingZeros().toPlainString();
    }
}
