package org.groundline.bank.file;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;

/// Collects the findings of one file.
public final class Notes {
    private final String file;
    private final List<Supplier<Stream<Finding>>> told = new ArrayList<>();

    public Notes(String file) {
        this.file = file;
    }

    /// Notes a finding whose message reads "problem; remedy".
    public void add(Rule rule, int line, String problem, String remedy) {
        String message = problem + "; " + remedy;
        Finding finding = new Finding(rule.severity().word(), file, line, rule.word(), message);
        told.add(() -> Stream.of(finding));
    }

    /// Notes of the same file that are told at this place, however late they are made.
    public Notes later() {
        Notes later = new Notes(file);
        told.add(later::stream);
        return later;
    }

    public long errors() {
        return stream().filter(Finding::isError).count();
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
