package org.groundline.psychometrics;

import java.util.List;

/// Shares and how sure they are.
///
/// Sources: [1] E. B. Wilson, *Probable inference, the law of succession, and statistical
/// inference*, JASA 22, 1927, in the form of R. G. Newcombe, *Two-sided confidence intervals for
/// the single proportion*, Statistics in Medicine 17, 1998. [2] E. L. Korn, B. I. Graubard,
/// *Confidence intervals for proportions with small expected number of positive counts estimated
/// from survey data*, Survey Methodology 24, 1998 (the idea of an effective sample size; from
/// memory).
public final class Proportion {
    /// The 97.5 % point of the normal distribution: intervals hold 95 %.
    private static final double Z = 1.959_963_984_540_054;

    private Proportion() {}

    /// Returns Wilson's 95 % interval for a share [1].
    ///
    /// (p + z²/2n ± z √(p(1 − p)/n + z²/4n²)) / (1 + z²/n) with p = x/n. Takes the cases as
    /// independent.
    ///
    /// @param hits x, from 0 to n; may be fractional where n is an effective size
    /// @param cases n, above 0
    /// @throws IllegalArgumentException outside those ranges
    public static Interval wilson(double hits, double cases) {
        if (!(cases > 0) || !(hits >= 0) || !(hits <= cases)) {
            throw new IllegalArgumentException(
                    "a share needs 0 ≤ hits ≤ cases and cases > 0: " + hits + " of " + cases);
        }
        double p = hits / cases;
        double z2 = Z * Z / cases;
        double middle = (p + z2 / 2) / (1 + z2);
        double half = Z * Math.sqrt(p * (1 - p) / cases + z2 / (4 * cases)) / (1 + z2);
        return new Interval(hits == 0 ? 0 : middle - half, hits == cases ? 1 : middle + half);
    }

    /// One student's count.
    ///
    /// @param hits from 0 to cases
    /// @param cases at least 1
    public record Cluster(int hits, int cases) {
        public Cluster {
            if (cases < 1 || hits < 0 || hits > cases) {
                throw new IllegalArgumentException(
                        "a cluster needs 0 ≤ hits ≤ cases, cases ≥ 1: " + hits + " of " + cases);
            }
        }
    }

    /// Returns a 95 % interval for a share of items when the items of one student hang together
    /// [2].
    ///
    /// The variance of the ratio r = Σx/Σn over k students is v = k/(k − 1) Σ(xᵢ − r nᵢ)² / (Σn)²;
    /// it is worth as much as n* = r(1 − r)/v independent items, never more than there are and
    /// never fewer than students; Wilson's interval of r n* in n* follows. Where all or none are
    /// hits, v says nothing and n* is the number of students.
    ///
    /// @param students at least two
    /// @throws IllegalArgumentException with fewer
    public static Interval clustered(List<Cluster> students) {
        int k = students.size();
        if (k < 2) {
            throw new IllegalArgumentException(
                    "a clustered interval needs two students or more, not " + k);
        }
        double hits = students.stream().mapToInt(Cluster::hits).sum();
        double cases = students.stream().mapToInt(Cluster::cases).sum();
        double r = hits / cases;
        double squares =
                students.stream().mapToDouble(c -> Math.pow(c.hits() - r * c.cases(), 2)).sum();
        double variance = k / (k - 1.0) * squares / (cases * cases);
        double effective =
                r == 0 || r == 1 ? k : Math.min(cases, Math.max(k, r * (1 - r) / variance));
        return wilson(r * effective, effective);
    }
}
