package org.groundline.bank;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;

import org.groundline.bank.numeric.Checked;
import org.groundline.bank.numeric.NumericTemplate;
import org.groundline.bank.numeric.source.TemplateSource;
import org.groundline.ledger.Digests;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/// Sound templates in a text file: what the file is, the hash of the program that examined them,
/// then the hash of each. A file that is missing, damaged or of another program tells nothing, and
/// one that cannot be written costs the next start its time; neither stops this one.
final class KnownFile implements KnownSound {
    static final String NAME = "sound-templates.txt";
    static final String HEAD = "Groundline: numeric templates found sound. May be deleted.";

    private static final Logger LOG = LoggerFactory.getLogger(KnownFile.class);
    private static final Pattern HASH = Pattern.compile("[0-9a-f]{64}");

    /// All parts of a record are written, each under its name, so that two sources with the same
    /// text are the same, and a new part cannot be forgotten here.
    private static final JsonMapper JSON = JsonMapper.builder().addModule(new Jdk8Module()).build();

    private final Path file;
    private final String program;
    private final List<String> before;
    private final Set<String> known;
    private final Set<String> sound = ConcurrentHashMap.newKeySet();
    private final AtomicInteger examined = new AtomicInteger();

    KnownFile(Path folder, String program) {
        this.file = folder.resolve(NAME);
        this.program = program;
        this.before = read();
        this.known = known();
    }

    private List<String> read() {
        try {
            return Files.readAllLines(file);
        } catch (NoSuchFileException none) {
            return List.of();
        } catch (IOException e) {
            LOG.warn("{} cannot be read, so all templates are examined: {}", file, e.toString());
            return List.of();
        }
    }

    private Set<String> known() {
        List<String> head = head();
        if (before.size() < head.size() || !before.subList(0, head.size()).equals(head)) {
            return Set.of();
        }
        List<String> hashes = before.subList(head.size(), before.size());
        return hashes.stream().allMatch(h -> HASH.matcher(h).matches())
                ? Set.copyOf(hashes)
                : Set.of();
    }

    private List<String> head() {
        return List.of(HEAD, program);
    }

    @Override
    public Checked check(TemplateSource source) {
        String hash = hash(source);
        Checked checked =
                known.contains(hash) ? NumericTemplate.checkExamined(source) : examine(source);
        if (checked instanceof Checked.Sound) {
            sound.add(hash);
        }
        return checked;
    }

    private Checked examine(TemplateSource source) {
        examined.incrementAndGet();
        return NumericTemplate.check(source);
    }

    /// How many templates were not known and had to be examined.
    int examined() {
        return examined.get();
    }

    private static String hash(TemplateSource source) {
        try {
            return HexFormat.of().formatHex(Digests.sha256(JSON.writeValueAsBytes(source)));
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void keep() {
        List<String> lines = Stream.concat(head().stream(), sound.stream().sorted()).toList();
        try {
            if (!lines.equals(before)) {
                write(lines);
            }
        } catch (IOException e) {
            LOG.warn(
                    "{} cannot be written, so the next start takes longer: {}", file, e.toString());
        }
    }

    /// Whoever reads it at the same time finds the old file or the new one, never half of it.
    private void write(List<String> lines) throws IOException {
        Path folder = Files.createDirectories(file.resolveSibling(""));
        Path next = Files.createTempFile(folder, NAME, ".new");
        try {
            Files.write(next, lines);
            Files.move(next, file, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            Files.deleteIfExists(next);
        }
    }
}
