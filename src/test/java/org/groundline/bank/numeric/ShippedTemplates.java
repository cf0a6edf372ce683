package org.groundline.bank.numeric;

import org.groundline.bank.numeric.source.TemplateSource;
import org.groundline.bank.numeric.source.TemplateSource.AnswerSource;
import org.groundline.bank.numeric.source.TemplateSource.ChosenSource;
import org.groundline.bank.numeric.source.TemplateSource.DecideSource;
import org.groundline.bank.numeric.source.TemplateSource.DependentSource;
import org.groundline.bank.numeric.source.TemplateSource.DiagramSource;
import org.groundline.bank.numeric.source.TemplateSource.DrawSource;
import org.groundline.bank.numeric.source.TemplateSource.MistakeSource;
import org.groundline.bank.numeric.source.TemplateSource.OptionSource;
import org.groundline.bank.numeric.source.TemplateSource.StepSource;
import org.groundline.bank.numeric.source.TemplateSource.WorkedSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.schema.FailsafeSchema;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/// The templates of the question bank, straight from their files, every scalar as text.
final class ShippedTemplates {
    private ShippedTemplates() {}

    /// One template with what only its file tells.
    record Shipped(TemplateSource source, String audience, String objective) {
        @Override
        public String toString() {
            return source.id();
        }
    }

    static List<Shipped> all() {
        Path bank = Path.of(System.getProperty("groundline.base", "."), "question-bank");
        try (Stream<Path> files = Files.walk(bank)) {
            return files.filter(f -> f.toString().endsWith("-numbers.yaml"))
                    .sorted()
                    .flatMap(ShippedTemplates::templates)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Stream<Shipped> templates(Path file) {
        var settings = LoadSettings.builder().setSchema(new FailsafeSchema()).build();
        try (var text = Files.newBufferedReader(file)) {
            var root = new Node(new Load(settings).loadFromReader(text));
            return root.get("templates").list().stream().map(ShippedTemplates::shipped);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Shipped shipped(Node node) {
        return new Shipped(source(node), node.text("audience"), node.text("objective"));
    }

    private static TemplateSource source(Node node) {
        return new TemplateSource(
                node.text("id"),
                node.text("stem"),
                draws(node.get("draw")),
                node.find("where"),
                node.has("decide") ? decide(node) : answer(node),
                node.get("steps").list().stream()
                        .map(
                                s ->
                                        new StepSource(
                                                s.text("name"),
                                                s.text("text"),
                                                s.text("formula"),
                                                s.find("unit")))
                        .toList(),
                node.get("worked").list().stream().map(ShippedTemplates::worked).toList(),
                node.text("explain"),
                node.has("diagram") ? Optional.of(diagram(node.get("diagram"))) : Optional.empty());
    }

    private static Map<String, DrawSource> draws(Node node) {
        var draws = new LinkedHashMap<String, DrawSource>();
        node.map().forEach((name, draw) -> draws.put(name, draw(draw)));
        return draws;
    }

    private static DiagramSource diagram(Node node) {
        var values = new LinkedHashMap<String, String>();
        node.get("values").map().forEach((name, formula) -> values.put(name, formula.toString()));
        return new DiagramSource(
                node.text("kind"),
                values,
                node.find("asked"),
                node.has("labels") ? node.get("labels").texts() : List.of(),
                node.find("in-stem").isPresent());
    }

    private static DrawSource draw(Node draw) {
        if (draw.has("formula")) {
            return new DependentSource(draw.text("formula"), draw.text("round"), draw.find("unit"));
        }
        return new ChosenSource(
                draw.find("from"),
                draw.find("to"),
                draw.find("step"),
                draw.has("any-of") ? draw.get("any-of").texts() : List.of(),
                draw.find("unit"));
    }

    private static AnswerSource answer(Node node) {
        Node answer = node.get("answer");
        return new AnswerSource(
                answer.text("formula"),
                answer.find("unit"),
                answer.find("round"),
                answer.find("side"),
                answer.find("tolerance"),
                answer.find("sign"),
                answer.get("between").texts(),
                node.get("mistakes").list().stream()
                        .map(
                                m ->
                                        new MistakeSource(
                                                m.text("misconception"),
                                                m.text("formula"),
                                                m.find("at")))
                        .toList());
    }

    private static DecideSource decide(Node node) {
        Node decide = node.get("decide");
        return new DecideSource(
                decide.text("formula"),
                decide.find("unit"),
                decide.find("tolerance"),
                decide.get("bounds").texts(),
                decide.get("between").texts(),
                node.get("options").list().stream()
                        .map(o -> new OptionSource(o.text("text"), o.text("misconception")))
                        .toList());
    }

    private static WorkedSource worked(Node node) {
        var given = new LinkedHashMap<String, String>();
        node.get("given").map().forEach((name, value) -> given.put(name, value.toString()));
        return new WorkedSource(
                given, node.text("answer"), node.find("within"), node.get("source").toString());
    }

    /// A place in a YAML file that is known to be well formed.
    private record Node(Object value) {
        Map<String, Node> map() {
            var map = new LinkedHashMap<String, Node>();
            ((Map<?, ?>) value).forEach((key, v) -> map.put(key.toString(), new Node(v)));
            return map;
        }

        boolean has(String key) {
            return map().containsKey(key);
        }

        Node get(String key) {
            return Objects.requireNonNull(map().get(key), key);
        }

        String text(String key) {
            return get(key).toString();
        }

        Optional<String> find(String key) {
            return has(key) ? Optional.of(text(key)) : Optional.empty();
        }

        List<Node> list() {
            return ((List<?>) value).stream().map(v -> new Node(v)).toList();
        }

        List<String> texts() {
            return list().stream().map(Node::toString).toList();
        }

        @Override
        public String toString() {
            return value.toString();
        }
    }
}
