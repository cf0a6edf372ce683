package org.groundline.bank;

import org.groundline.bank.file.Section;
import org.groundline.bank.numeric.TemplateSource;
import org.groundline.bank.numeric.TemplateSource.AnswerSource;
import org.groundline.bank.numeric.TemplateSource.DrawSource;
import org.groundline.bank.numeric.TemplateSource.MistakeSource;
import org.groundline.bank.numeric.TemplateSource.StepSource;
import org.groundline.bank.numeric.TemplateSource.WorkedSource;

import java.util.LinkedHashMap;
import java.util.Map;

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
                answer(section.section("answer", "give its formula and unit")),
                section.sections("mistakes", "mistake").stream().map(this::mistake).toList(),
                section.sections("steps", "step").stream().map(TemplateParts::step).toList(),
                section.sections("worked", "worked example").stream().map(this::worked).toList(),
                Prose.RATIONALE.read(
                        section, "explain", "explain the answer with {names} of values"));
    }

    private static Map<String, DrawSource> draws(Section section) {
        Section all = section.section("draw", "name the values to be drawn and their ranges");
        Map<String, DrawSource> draws = new LinkedHashMap<>();
        all.keys().forEach(name -> draws.put(name, draw(all.section(name, ""))));
        return draws;
    }

    private static DrawSource draw(Section draw) {
        draw.allowOnly("from", "to", "step", "any-of", "unit");
        return new DrawSource(
                draw.findText("from"),
                draw.findText("to"),
                draw.findText("step"),
                draw.texts("any-of"),
                draw.findText("unit"));
    }

    private static AnswerSource answer(Section answer) {
        answer.allowOnly("formula", "unit", "round", "side", "tolerance", "between");
        return new AnswerSource(
                answer.text("formula", "say how the answer is computed"),
                answer.findText("unit"),
                answer.findText("round"),
                answer.findText("side"),
                answer.findText("tolerance"),
                answer.texts("between"));
    }

    private MistakeSource mistake(Section mistake) {
        mistake.allowOnly("misconception", "formula");
        String idea = mistake.text("misconception", "name the wrong idea that leads to this");
        misconceptions.refer(mistake, "misconception", idea);
        return new MistakeSource(idea, mistake.text("formula", "say what the wrong idea computes"));
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
