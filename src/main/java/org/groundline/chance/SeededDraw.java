package org.groundline.chance;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/// Draws that follow from a seed alone. Not for secrets: whoever knows a few draws knows the rest.
public final class SeededDraw {
    private static final int VERSION = 1;
    private static final long FNV_OFFSET = 0xCBF2_9CE4_8422_2325L;
    private static final long FNV_PRIME = 0x0000_0100_0000_01B3L;

    private final long seed;
    private final SplitMix64 generator;

    public SeededDraw(long seed) {
        this.seed = seed;
        this.generator = new SplitMix64(seed);
    }

    /// The version of everything in this package that decides what a seed draws.
    public static int version() {
        return VERSION;
    }

    /// Draws a whole number from 0 up to, but not including, `bound`, each equally likely.
    ///
    /// Multiplies 32 random bits by the bound and keeps the upper half; the few products whose
    /// lower half would favour some numbers are drawn again (D. Lemire, *Fast random integer
    /// generation in an interval*, ACM TOMACS 29, 2019).
    public int below(int bound) {
        if (bound < 1) {
            throw new IllegalArgumentException("bound of a draw is below 1: " + bound);
        }
        long unfair = (1L << 32) % bound;
        long product;
        do {
            product = (generator.next() >>> 32) * bound;
        } while ((product & 0xFFFF_FFFFL) < unfair);
        return (int) (product >>> 32);
    }

    /// Returns the elements in an order drawn from all orders, each equally likely.
    public <T> List<T> shuffle(List<T> elements) {
        var shuffled = new ArrayList<>(elements);
        for (int last = shuffled.size() - 1; last > 0; last--) {
            Collections.swap(shuffled, last, below(last + 1));
        }
        return List.copyOf(shuffled);
    }

    /// Returns the draws of a child: they depend on this seed and the label only, not on how much
    /// was drawn here before, so that a new use of chance does not disturb the others.
    public SeededDraw split(String label) {
        return new SeededDraw(childSeed(label));
    }

    /// The seed of the child with this label; hashed by FNV-1a over the label's UTF-8, then mixed.
    public long childSeed(String label) {
        long hash = FNV_OFFSET;
        for (byte b : label.getBytes(StandardCharsets.UTF_8)) {
            hash = (hash ^ (b & 0xFF)) * FNV_PRIME;
        }
        return SplitMix64.mix(SplitMix64.mix(seed) ^ hash);
    }
}
