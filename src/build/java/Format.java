import com.google.googlejavaformat.java.Formatter;
import com.google.googlejavaformat.java.ImportOrderer;
import com.google.googlejavaformat.java.JavaFormatterOptions;
import com.google.googlejavaformat.java.JavaFormatterOptions.Style;
import com.google.googlejavaformat.java.RemoveUnusedImports;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.List;

/// Formats the Java sources that changed since the last build. Where the variable CI is set it
/// changes nothing and fails instead, naming each file.
class Format {
    private static final Formatter FORMATTER =
            new Formatter(JavaFormatterOptions.builder().style(Style.AOSP).build());

    public static void main(String[] args) throws Exception {
        Path base = Path.of(args[0]);
        Path stamp = Path.of(args[1]).resolve("formatted.stamp");
        boolean check = System.getenv("CI") != null;
        FileTime since =
                !check && Files.exists(stamp)
                        ? Files.getLastModifiedTime(stamp)
                        : FileTime.fromMillis(0);
        List<Path> unformatted = new ArrayList<>();
        for (Path file : changed(base.resolve("src"), since)) {
            if (!format(file, check)) {
                unformatted.add(file);
            }
        }
        if (check && !unformatted.isEmpty()) {
            unformatted.forEach(f -> System.err.println("not formatted: " + base.relativize(f)));
            System.err.println("Run the build once without CI set; it formats them.");
            System.exit(1);
        }
        Files.createDirectories(stamp.getParent());
        Files.writeString(stamp, "");
    }

    private static List<Path> changed(Path folder, FileTime since) throws IOException {
        try (var files = Files.walk(folder)) {
            List<Path> changed = new ArrayList<>();
            for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
                if (Files.getLastModifiedTime(file).compareTo(since) > 0) {
                    changed.add(file);
                }
            }
            return changed;
        }
    }

    /// Returns whether the file was formatted already.
    private static boolean format(Path file, boolean check) throws Exception {
        String before = Files.readString(file);
        String ordered = ImportOrderer.reorderImports(before, Style.AOSP);
        String after = FORMATTER.formatSource(RemoveUnusedImports.removeUnusedImports(ordered));
        if (after.equals(before)) {
            return true;
        }
        if (!check) {
            Files.writeString(file, after);
        }
        return false;
    }
}
