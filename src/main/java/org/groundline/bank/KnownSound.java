package org.groundline.bank;

import org.groundline.bank.numeric.Checked;
import org.groundline.bank.numeric.NumericTemplate;
import org.groundline.bank.numeric.source.TemplateSource;

import java.nio.file.Path;

/// The numeric templates that this very program has examined before and found sound. They are read
/// as all others are, with references, formulas and dimensions; only their examination, thousands
/// of drawn cases and the worked examples, is not done again.
///
/// It may be asked by several threads at the same time.
public interface KnownSound {
    /// Knows none and remembers none: everything is examined.
    static KnownSound none() {
        return new KnownSound() {
            @Override
            public Checked check(TemplateSource source) {
                return NumericTemplate.check(source);
            }

            @Override
            public void keep() {
                // whoever asks for a full check wants it the next time, too
            }
        };
    }

    /// Kept in a file of this folder from one start to the next; [#none] where it cannot be told
    /// which program this is.
    static KnownSound in(Path folder) {
        return ProgramHash.find()
                .<KnownSound>map(program -> new KnownFile(folder, program))
                .orElseGet(KnownSound::none);
    }

    /// Reads a template, and examines it unless it is known to be sound.
    Checked check(TemplateSource source);

    /// Remembers the templates that were checked since this was made and are sound, and no others.
    void keep();
}
