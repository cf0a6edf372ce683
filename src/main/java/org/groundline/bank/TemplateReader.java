package org.groundline.bank;

import org.groundline.bank.Lists.TopicPlace;
import org.groundline.bank.file.Rule;
import org.groundline.bank.file.Section;
import org.groundline.bank.numeric.Checked;
import org.groundline.bank.numeric.NumericTemplate;
import org.groundline.bank.numeric.source.Fault;
import org.groundline.bank.numeric.source.TemplateSource;
import org.groundline.bank.numeric.source.TemplateSource.AnswerSource;
import org.groundline.bank.numeric.source.TemplateSource.DecideSource;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;

/// Reads a numeric template and has it checked.
final class TemplateReader {
    private static final Pattern INDEX = Pattern.compile("\\[(\\d{1,4})]");

    private final Lists lists;
    private final KnownSound known;
    private final HeadingReader headings;
    private final TemplateParts parts;

    TemplateReader(Lists lists, KnownSound known) {
        this.lists = lists;
        this.known = known;
        this.headings = new HeadingReader(lists);
        this.parts = new TemplateParts(lists);
    }

    Draft read(Section section, TopicPlace place, String file) {
        long before = section.errors();
        section.allowOnly(
                "id",
                "objective",
                "level",
                "safety-critical",
                "audience",
                "stem",
                "draw",
                "where",
                "answer",
                "mistakes",
                "decide",
                "options",
                "steps",
                "worked",
                "explain",
                "diagram",
                "source");
        Claim claim = Claim.read(section, file);
        Heading heading = headings.read(claim.id(), section, place);
        Audience audience = section.choice("audience", Audience.values(), Audience::word);
        TemplateSource source = parts.source(section, heading.id());
        checkLevel(section, heading, source);
        if (section.errors() > before) {
            return new Draft(claim, Optional.empty());
        }
        Map<String, Misconception> ideas = misconceptions(source);
        return new Draft(
                claim,
                check(section, source)
                        .map(
                                sound ->
                                        new NumericQuestion(
                                                heading, audience, source, sound, ideas)));
    }

    private static void checkLevel(Section section, Heading heading, TemplateSource source) {
        if (source.asked() instanceof DecideSource && heading.level() != Level.JUDGE) {
            section.note(
                    Rule.VALUE,
                    "level",
                    "decides and has the level " + heading.level().word(),
                    "write judge: whoever decides in a situation judges it");
        }
    }

    private Map<String, Misconception> misconceptions(TemplateSource source) {
        Map<String, Misconception> ideas = new TreeMap<>();
        source.misconceptions().forEach(id -> ideas.put(id, lists.idea(id)));
        switch (source.asked()) {
            case AnswerSource answer -> Belief.SLIPS.forEach(id -> ideas.put(id, lists.idea(id)));
            case DecideSource decide -> {} // a letter is chosen, no number typed
        }
        return ideas;
    }

    private Optional<NumericTemplate> check(Section section, TemplateSource source) {
        return switch (known.check(source)) {
            case Checked.Sound sound -> Optional.of(sound.template());
            case Checked.Faulty faulty -> {
                faulty.faults().forEach(fault -> note(section, fault));
                yield Optional.empty();
            }
        };
    }

    private static void note(Section section, Fault fault) {
        String problem = "at " + place(fault.at()) + ": " + fault.problem();
        section.noteAt(Rule.TEMPLATE, fault.at(), problem, fault.remedy());
    }

    /// The path as an author reads it: `mistakes[1].formula` is `mistakes 2, formula`.
    private static String place(String path) {
        return INDEX.matcher(path)
                .replaceAll(index -> " " + (Integer.parseInt(index.group(1)) + 1))
                .replace(".", ", ");
    }
}
