package org.groundline.bank;

/// Where a question's content comes from.
public sealed interface Citation {
    /// The citation as a reader sees it.
    String text();

    /// What experienced people do alike, without a source that says so.
    record CommonPractice() implements Citation {
        @Override
        public String text() {
            return "Common practice, no source";
        }
    }

    /// A place in a source.
    record Cited(Source source, String at) implements Citation {
        @Override
        public String text() {
            return source.text() + ", " + at + source.read().caution();
        }
    }
}
