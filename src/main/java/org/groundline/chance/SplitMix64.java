package org.groundline.chance;

/// The generator SplitMix64: a counter that steps by the golden ratio, and a mixing function over
/// it.
///
/// It is not a `java.util.random.RandomGenerator` on purpose: the derived draws of that interface
/// may change with the JDK, ours must not.
///
/// Source: G. L. Steele, D. Lea, C. H. Flood, *Fast splittable pseudorandom number generators*,
/// OOPSLA 2014; mixing constants are D. Stafford's variant 13.
final class SplitMix64 {
    private static final long GOLDEN_GAMMA = 0x9E37_79B9_7F4A_7C15L;

    private long state;

    SplitMix64(long seed) {
        this.state = seed;
    }

    long next() {
        state += GOLDEN_GAMMA;
        return mix(state);
    }

    /// Spreads every bit of its input over all bits of its result; one-to-one.
    static long mix(long value) {
        long mixed = (value ^ (value >>> 30)) * 0xBF58_476D_1CE4_E5B9L;
        mixed = (mixed ^ (mixed >>> 27)) * 0x94D0_49BB_1331_11EBL;
        return mixed ^ (mixed >>> 31);
    }
}
