package org.groundline.bank.file;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;

/// Collects the findings of one file.
public final class Notes {
    private final String file;
    private final List<Supplier<Stream<Finding>>> told = new ArrayList<>();
    private final List<Notes> later = new ArrayList<>();
    private long errors;

    public Notes(String file) {
        this.file = file;
    }

    /// Notes a finding whose message reads "problem; remedy".
    public void add(Rule rule, int line, String problem, String remedy) {
        String message = problem + "; " + remedy;
        Finding finding = new Finding(rule.severity().word(), file, line, rule.word(), message);
        told.add(() -> Stream.of(finding));
        errors += finding.isError() ? 1 : 0;
    }

    /// Notes of the same file that are told at this place, however late they are made.
    public Notes later() {
        Notes notes = new Notes(file);
        told.add(notes::stream);
        later.add(notes);
        return notes;
    }

    /// Counted along the way, as readers ask for it at each of perhaps thousands of questions.
    public long errors() {
        long all = errors;
        for (Notes notes : later) {
            all += notes.errors();
        }
        return all;
    }

    public String file() {
        return file;
    }

    public List<Finding> findings() {
        return stream().toList();
    }

    private Stream<Finding> stream() {
        return told.stream().flatMap(Supplier::get);
    }
}
