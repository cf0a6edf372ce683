package org.groundline.demo;

import org.groundline.bank.Key;
import org.groundline.bank.Posed;
import org.groundline.bank.Question;
import org.groundline.bank.Questions;
import org.groundline.chance.SeededDraw;
import org.groundline.sitting.Item;

import java.util.ArrayList;
import java.util.List;
import java.util.function.LongSupplier;
import java.util.stream.Stream;

/// The seeds that the invented school's papers are drawn with. Whoever knows them can pose a
/// question again, and so knows its key without reading the key that marking keeps.
final class KnownSeeds implements LongSupplier {
    private final SeededDraw draw;
    private final List<Long> recent = new ArrayList<>();
    private int drawn;

    KnownSeeds(SeededDraw draw) {
        this.draw = draw;
    }

    @Override
    public long getAsLong() {
        long seed = draw.childSeed("seed " + drawn++);
        recent.add(seed);
        return seed;
    }

    /// Forgets the seeds of papers that were posed before.
    void forget() {
        recent.clear();
    }

    /// Returns the key of an item that was posed since the last [#forget]: the question is posed
    /// again with each seed drawn since, as the seed of the item or of its paper, until what is
    /// shown is the same.
    Key keyOf(Questions bank, Item item) {
        Question question = bank.question(item.questionId());
        String place = "item " + item.position();
        return recent.stream()
                .flatMap(seed -> Stream.of(seed, new SeededDraw(seed).childSeed(place)))
                .map(seed -> bank.pose(question, seed))
                .filter(posed -> posed.shown().equals(item.shown()))
                .findFirst()
                .map(Posed::key)
                .orElseThrow(() -> new IllegalStateException("no seed poses " + item.questionId()));
    }
}
