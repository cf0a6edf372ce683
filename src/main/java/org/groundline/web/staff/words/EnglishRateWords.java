package org.groundline.web.staff.words;

/// English.
record EnglishRateWords() implements RateWords {
    @Override
    public String passRates() {
        return "Pass rates by topic";
    }

    @Override
    public String topic() {
        return "Topic";
    }

    @Override
    public String counted() {
        return "Counted";
    }

    @Override
    public String sameInFigures() {
        return "The same in figures";
    }

    @Override
    public String said() {
        return "Count";
    }

    @Override
    public String share() {
        return "Share";
    }

    @Override
    public String range() {
        return "95\u202f% range";
    }

    @Override
    public String ratesCaption(String passMark) {
        return "Share of students who reached the pass mark ("
                + passMark
                + " of the marks) in the topic, at their first counted sitting. Dot: what was seen; line: the range in which the true share may well lie (95\u202f%).";
    }

    @Override
    public String howComputed() {
        return "How is this computed?";
    }

    @Override
    public String howComputedText() {
        return "Each student counts once a module, in the first counted sitting of it; practice never counts. A topic’s share is students who reached the pass mark within the topic, divided by students whose sitting held enough items of it (the policy says how many). The range is Wilson’s: (p + z²/2n ± z·√(p(1−p)/n + z²/4n²)) / (1 + z²/n) with z = 1.96. Where sittings held fewer items, the share of items missed is given instead, its range widened because the items of one student hang together. With too few students nothing is said.";
    }

    @Override
    public String itemsMissed() {
        return "items missed";
    }

    @Override
    public String tooFew(int count) {
        return count == 0 ? "nobody has sat this yet" : "too few students to say: " + count;
    }

    @Override
    public String reached(int reached, int students) {
        return "%d of %d students reached the mark".formatted(reached, students);
    }

    @Override
    public String missed(int missed, int items) {
        return "%d of %d items missed".formatted(missed, items);
    }

    @Override
    public String students(int count) {
        return count + (count == 1 ? " student" : " students");
    }
}
