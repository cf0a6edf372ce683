package org.groundline.bank;

import org.groundline.bank.file.Nearest;
import org.groundline.bank.file.Rule;
import org.groundline.bank.file.Section;
import org.groundline.bank.file.Yaml;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/// Reads what stands under `source:`, or under another key of the same form.
final class CitationReader {
    private static final String COMMON_PRACTICE = "common practice";
    private static final String FORM =
            "write 'common practice' or {id: a source, at: \"p. 1\"} or a list of such";

    private final Register<Source> sources;
    private final String key;

    CitationReader(Register<Source> sources) {
        this(sources, "source");
    }

    CitationReader(Register<Source> sources, String key) {
        this.sources = sources;
        this.key = key;
    }

    /// The citations, at least one of which must be there.
    List<Citation> citations(Section section) {
        List<Citation> citations = new ArrayList<>();
        List<Yaml> written = section.oneOrMore(key);
        if (written.isEmpty()) {
            section.note(Rule.MISSING, key, "has no '" + key + "'", FORM);
        }
        for (Yaml each : written) {
            citation(section, each).ifPresent(citations::add);
        }
        return citations;
    }

    /// The origin of a worked example as a text: a citation, or the author's word such as
    /// `derived`.
    String origin(Section section) {
        List<String> texts = new ArrayList<>();
        if (!section.has("source")) {
            String remedy = "say where the values come from, such as 'derived'";
            section.note(Rule.MISSING, "source", "has no 'source'", remedy);
        }
        for (Yaml each : section.oneOrMore("source")) {
            if (each instanceof Yaml.Text(String word, int line)) {
                texts.add(word);
            } else {
                citation(section, each).map(Citation::text).ifPresent(texts::add);
            }
        }
        return String.join("; ", texts);
    }

    private Optional<Citation> citation(Section section, Yaml node) {
        return switch (node) {
            case Yaml.Text(String text, int line) -> practice(section, text);
            case Yaml.Fields fields -> cited(section.inner(key, fields));
            case Yaml.Items list -> {
                section.note(Rule.SHAPE, key, "has a list inside the list of sources", FORM);
                yield Optional.empty();
            }
        };
    }

    private Optional<Citation> practice(Section section, String text) {
        if (text.equals(COMMON_PRACTICE)) {
            return Optional.of(new Citation.CommonPractice());
        }
        String remedy = Nearest.remedy(text, List.of(COMMON_PRACTICE), FORM);
        section.note(Rule.SOURCE_UNKNOWN, key, "has the source '" + text + "'", remedy);
        return Optional.empty();
    }

    private Optional<Citation> cited(Section section) {
        section.allowOnly("id", "at");
        String id = section.text("id", "name the source by its id");
        String at = Prose.PLACE.read(section, "at", "say where in the source");
        return sources.refer(section, "id", id).map(source -> new Citation.Cited(source, at));
    }
}
