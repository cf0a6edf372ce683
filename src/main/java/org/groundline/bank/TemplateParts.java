package org.groundline.bank;

import org.groundline.bank.file.Rule;
import org.groundline.bank.file.Section;
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

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/// Takes a template's texts out of its section; what they mean is checked elsewhere.
final class TemplateParts {
    private final Register<Misconception> misconceptions;
    private final CitationReader citations;

    TemplateParts(Lists lists) {
        this.misconceptions = lists.misconceptions();
        this.citations = new CitationReader(lists.sources());
    }

    TemplateSource source(Section section, String id) {
        return new TemplateSource(
                id,
                Prose.STEM.read(
                        section, "stem", "write what is asked, with {names} of drawn values"),
                draws(section),
                section.findText("where"),
                asked(section),
                section.sections("steps", "step").stream().map(TemplateParts::step).toList(),
                section.sections("worked", "worked example").stream().map(this::worked).toList(),
                Prose.RATIONALE.read(
                        section, "explain", "explain the answer with {names} of values"),
                diagram(section));
    }

    private static Optional<DiagramSource> diagram(Section section) {
        if (!section.has("diagram")) {
            return Optional.empty();
        }
        Section diagram = section.section("diagram", "");
        diagram.allowOnly("kind", "values", "asked", "labels", "in-stem");
        return Optional.of(
                new DiagramSource(
                        diagram.text("kind", "name the kind of drawing"),
                        diagram.section("values", "give a formula for each value of the drawing")
                                .textsByKey(),
                        diagram.findText("asked"),
                        diagram.texts("labels"),
                        diagram.flag("in-stem")));
    }

    private static Map<String, DrawSource> draws(Section section) {
        Section all = section.section("draw", "name the values to be drawn and their ranges");
        Map<String, DrawSource> draws = new LinkedHashMap<>();
        all.keys().forEach(name -> draws.put(name, draw(all.section(name, ""))));
        return draws;
    }

    private static DrawSource draw(Section draw) {
        draw.allowOnly("from", "to", "step", "any-of", "formula", "round", "unit");
        return draw.has("formula") || draw.has("round") ? dependent(draw) : chosen(draw);
    }

    private static DrawSource dependent(Section draw) {
        for (String other : List.of("from", "to", "step", "any-of")) {
            if (draw.has(other)) {
                draw.note(
                        Rule.VALUE,
                        other,
                        "has '" + other + "' beside what computes it",
                        "keep either formula and round, or a range or list");
            }
        }
        return new DependentSource(
                draw.text("formula", "say how it is computed from other drawn values"),
                draw.text("round", "give the step of the printed value, such as 50 or 0.1"),
                draw.findText("unit"));
    }

    private static DrawSource chosen(Section draw) {
        return new ChosenSource(
                draw.findText("from"),
                draw.findText("to"),
                draw.findText("step"),
                draw.texts("any-of"),
                draw.findText("unit"));
    }

    private AskedSource asked(Section section) {
        if (!section.has("decide") && !section.has("options")) {
            return answer(section);
        }
        for (String other : List.of("answer", "mistakes")) {
            if (section.has(other)) {
                section.note(
                        Rule.VALUE,
                        other,
                        "has '" + other + "' beside what decides",
                        "keep either answer and mistakes, or decide and options");
            }
        }
        return decide(section);
    }

    private DecideSource decide(Section section) {
        Section decide = section.section("decide", "give the formula, its unit and the bounds");
        decide.allowOnly("formula", "unit", "tolerance", "bounds", "between");
        List<Section> options = section.someSections("options", "option");
        List<OptionSource> read = options.stream().map(this::option).toList();
        OptionRules.checkTexts(options, read.stream().map(OptionSource::text).toList());
        return new DecideSource(
                decide.text("formula", "say how the value that decides is computed"),
                decide.findText("unit"),
                decide.findText("tolerance"),
                decide.texts("bounds"),
                decide.texts("between"),
                read);
    }

    private OptionSource option(Section option) {
        option.allowOnly("text", "misconception");
        String text = Prose.OPTION.read(option, "text", "write the decision");
        String idea = option.text("misconception", "name the wrong idea that leads to it");
        misconceptions.refer(option, "misconception", idea);
        return new OptionSource(text, idea);
    }

    private AnswerSource answer(Section section) {
        SlipIdeas.use(misconceptions);
        Section answer = section.section("answer", "give its formula and unit");
        answer.allowOnly("formula", "unit", "round", "side", "tolerance", "sign", "between");
        return new AnswerSource(
                answer.text("formula", "say how the answer is computed"),
                answer.findText("unit"),
                answer.findText("round"),
                answer.findText("side"),
                answer.findText("tolerance"),
                answer.findText("sign"),
                answer.texts("between"),
                section.sections("mistakes", "mistake").stream().map(this::mistake).toList());
    }

    private MistakeSource mistake(Section mistake) {
        mistake.allowOnly("misconception", "formula", "at");
        String idea = mistake.text("misconception", "name the wrong idea that leads to this");
        misconceptions.refer(mistake, "misconception", idea);
        return new MistakeSource(
                idea,
                mistake.text("formula", "say what the wrong idea computes"),
                mistake.findText("at"));
    }

    private static StepSource step(Section step) {
        step.allowOnly("name", "text", "formula", "unit");
        return new StepSource(
                step.text("name", "give the step a name that later formulas can use"),
                step.text("text", "say what the step does"),
                step.text("formula", "say how it is computed"),
                step.findText("unit"));
    }

    private WorkedSource worked(Section worked) {
        worked.allowOnly("given", "answer", "within", "source");
        return new WorkedSource(
                worked.section("given", "give all drawn values").textsByKey(),
                worked.text("answer", "give the known answer with its unit"),
                worked.findText("within"),
                citations.origin(worked));
    }
}
