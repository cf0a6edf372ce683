package org.groundline.school;

import static java.util.Objects.requireNonNull;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/// The permissions file: which role may do what, to whose records.
public final class Permissions {
    /// The file as shipped.
    public static final Permissions SHIPPED = read("/permissions.csv");

    private final Map<Action, Map<Role, Scope>> cells;

    private Permissions(Map<Action, Map<Role, Scope>> cells) {
        this.cells = cells;
    }

    /// Returns how far a role may go with an action.
    public Scope scope(Action action, Role role) {
        return requireNonNull(requireNonNull(cells.get(action)).get(role));
    }

    /// Returns how far the widest of some roles may go.
    Scope widest(Action action, Collection<Role> roles) {
        return roles.stream()
                .map(role -> scope(action, role))
                .max(Scope::compareTo)
                .orElse(Scope.NONE);
    }

    private static Permissions read(String resource) {
        try (InputStream stream = Permissions.class.getResourceAsStream(resource)) {
            if (stream == null) {
                throw new IllegalStateException(resource + " is missing from the program");
            }
            return parse(new String(stream.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new IllegalStateException(resource + " cannot be read", e);
        }
    }

    static Permissions parse(String text) {
        List<List<String>> lines =
                text.lines()
                        .filter(l -> !l.startsWith("#") && !l.isBlank())
                        .map(Permissions::cellsOf)
                        .toList();
        List<Role> roles = lines.get(0).stream().skip(1).map(Permissions::role).toList();
        Map<String, List<String>> byAction =
                lines.stream()
                        .skip(1)
                        .collect(Collectors.toMap(l -> l.get(0), l -> l.subList(1, l.size())));
        Map<Action, Map<Role, Scope>> cells = new EnumMap<>(Action.class);
        for (Action action : Action.values()) {
            cells.put(
                    action, scopes(action, roles, byAction.getOrDefault(action.word(), List.of())));
        }
        if (byAction.size() != cells.size()) {
            throw new IllegalArgumentException(
                    "permissions for unknown actions among " + byAction.keySet());
        }
        return new Permissions(cells);
    }

    private static Map<Role, Scope> scopes(Action action, List<Role> roles, List<String> words) {
        if (words.size() != Role.values().length || roles.size() != words.size()) {
            throw new IllegalArgumentException(
                    "permissions: one cell a role for " + action.word() + ", not " + words);
        }
        Map<Role, Scope> scopes = new EnumMap<>(Role.class);
        for (int i = 0; i < words.size(); i++) {
            scopes.put(roles.get(i), scope(words.get(i)));
        }
        return scopes;
    }

    private static List<String> cellsOf(String line) {
        return Arrays.stream(line.split(",")).map(String::strip).toList();
    }

    private static Role role(String word) {
        return Role.findByWord(word)
                .orElseThrow(() -> new IllegalArgumentException("permissions: no role " + word));
    }

    private static Scope scope(String word) {
        return Arrays.stream(Scope.values())
                .filter(s -> s.word().equals(word))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("permissions: no scope " + word));
    }
}
