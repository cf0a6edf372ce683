package org.groundline.bank;

import org.groundline.bank.file.BankFile;
import org.groundline.bank.file.Notes;
import org.groundline.bank.file.Rule;
import org.groundline.diagram.Illustration;
import org.groundline.diagram.IllustrationFault;
import org.groundline.diagram.IllustrationReader;

import java.nio.file.Path;
import java.util.Optional;

/// Reads a file of the folder `illustrations`.
final class IllustrationFile {
    private IllustrationFile() {}

    /// The drawing, or empty after noting what is wrong with it.
    static Optional<Illustration> read(Path file, Notes notes) {
        Optional<String> svg = BankFile.text(file, notes);
        try {
            return svg.isPresent()
                    ? Optional.of(IllustrationReader.read(svg.get()))
                    : Optional.empty();
        } catch (IllustrationFault fault) {
            notes.add(Rule.ILLUSTRATION, fault.line(), fault.problem(), fault.remedy());
            return Optional.empty();
        }
    }
}
