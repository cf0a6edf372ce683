package org.groundline.bank;

/// Something that may be cited.
///
/// @param year the year of the edition, empty where it bears none
public record Source(String id, String title, String publisher, String year, Read read) {

    /// The source as a reader sees it in a citation.
    String text() {
        String published = year.isEmpty() ? publisher : publisher + ", " + year;
        return title + " (" + published + ")";
    }

    /// How well the source is known to whoever entered it.
    public enum Read {
        VERIFIED("verified", ""),
        SECONDARY("secondary", " (as quoted elsewhere)"),
        MEMORY("memory", " (from memory, not seen)");

        private final String word;
        private final String caution;

        Read(String word, String caution) {
            this.word = word;
            this.caution = caution;
        }

        public String word() {
            return word;
        }

        /// What a reader of a citation must be told, with a leading space; empty where seen.
        public String caution() {
            return caution;
        }
    }
}
