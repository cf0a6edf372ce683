package org.groundline.bank;

import org.groundline.bank.Lists.TopicPlace;
import org.groundline.bank.file.Rule;
import org.groundline.bank.file.Section;
import org.groundline.diagram.Illustration;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/// Reads a fixed question.
final class FixedReader {
    private final Lists lists;
    private final HeadingReader headings;

    FixedReader(Lists lists) {
        this.lists = lists;
        this.headings = new HeadingReader(lists);
    }

    Draft read(Section section, TopicPlace place, String file) {
        long before = section.errors();
        section.allowOnly(
                "id",
                "objective",
                "level",
                "safety-critical",
                "stem",
                "options",
                "rationale",
                "source",
                "jurisdiction",
                "illustration");
        Claim claim = Claim.read(section, file);
        Heading heading = headings.read(claim.id(), section, place);
        String stem = Prose.STEM.read(section, "stem", "write what is asked");
        StemRules.check(section, stem);
        List<Option> options = options(section);
        String rationale =
                Prose.RATIONALE.read(
                        section,
                        "rationale",
                        "say why the key is right and why each distractor is not");
        OptionRules.checkRationale(section, rationale);
        Optional<Jurisdiction> jurisdiction = jurisdiction(section);
        Optional<Illustration> illustration = illustration(section);
        return new Draft(
                claim,
                section.errors() > before
                        ? Optional.empty()
                        : Optional.of(
                                new FixedQuestion(
                                        heading,
                                        stem,
                                        options,
                                        rationale,
                                        jurisdiction.orElse(null),
                                        illustration)));
    }

    private static Optional<Jurisdiction> jurisdiction(Section section) {
        Optional<String> text = section.findText("jurisdiction");
        Optional<Jurisdiction> found = text.flatMap(Jurisdiction::find);
        if (text.isPresent() && found.isEmpty()) {
            section.note(
                    Rule.VALUE,
                    "jurisdiction",
                    "has the jurisdiction '" + text.get() + "'",
                    "write the code of the country or EU, a colon, and the regulation with its edition,"
                            + " such as \"EU: Regulation (EU) 923/2012, text of December 2024\"");
        }
        return found;
    }

    private Optional<Illustration> illustration(Section section) {
        return section.findText("illustration")
                .flatMap(id -> lists.illustrations().refer(section, "illustration", id));
    }

    private List<Option> options(Section section) {
        List<Section> written = section.sections("options", "option");
        if (!section.has("options") || written.size() < 3 || written.size() > 4) {
            String problem = "has " + written.size() + " options";
            section.note(Rule.OPTION_COUNT, "options", problem, "give it 3 or 4");
        }
        List<Option> options = new ArrayList<>();
        for (Section option : written) {
            options.add(option(option));
        }
        OptionRules.check(section, written, options);
        return options;
    }

    private Option option(Section section) {
        section.allowOnly("text", "key", "misconception");
        String text = Prose.OPTION.read(section, "text", "write the answer to choose");
        if (section.flag("key")) {
            refuseMisconception(section);
            return new Option.Right(text);
        }
        String id = section.text("misconception", "name the wrong idea that leads to this answer");
        lists.misconceptions().refer(section, "misconception", id);
        return new Option.Wrong(text, lists.idea(id));
    }

    private static void refuseMisconception(Section section) {
        if (section.has("misconception")) {
            section.note(
                    Rule.KEY_MISCONCEPTION,
                    "misconception",
                    "is the key and has a misconception",
                    "remove the misconception, or the line 'key: true'");
        }
    }
}
