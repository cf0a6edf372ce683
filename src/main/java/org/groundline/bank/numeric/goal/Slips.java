package org.groundline.bank.numeric.goal;

import org.groundline.bank.numeric.posed.Cause;
import org.groundline.measure.Unit;
import org.groundline.measure.Units;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;

/// The slips that anybody may make at a number in some unit: the right value in another unit, or
/// off by a power of ten. Worked out once for a template, as items are posed by the thousand.
public record Slips(List<Slips.InUnit> units, List<Slips.OfTen> powers) {
    /// The units that people who fly free use for one another, whatever the dimension.
    private static final List<Unit> IN_USE =
            Stream.of(
                            "km/h", "m/s", "kt", "m", "km", "ft", "s", "min", "h", "kg", "lb",
                            "hPa", "Pa", "N", "kN", "J", "kJ", "°C", "K", "°", "rad")
                    .map(Units::get)
                    .toList();

    private static final List<Integer> EXPONENTS = List.of(1, 2, 3, -1, -2, -3);

    /// The value in another unit is value × factor + shift.
    public record InUnit(Cause cause, double factor, double shift) {
        private static InUnit of(Unit asked, Unit other) {
            double zero = other.fromSi(asked.toSi(0));
            double one = asked.convert(BigDecimal.ONE, other).doubleValue();
            return new InUnit(
                    new Cause.OtherUnit(other.symbol(), asked.symbol()), one - zero, zero);
        }

        /// What the slip makes of the right value.
        public double of(double value) {
            return value * factor + shift;
        }
    }

    /// The value × 10 to the exponent.
    public record OfTen(Cause cause, int exponent, double factor) {
        private static OfTen of(int exponent) {
            return new OfTen(new Cause.PowerOfTen(exponent), exponent, Math.pow(10, exponent));
        }
    }

    static Slips at(Unit asked) {
        return new Slips(
                IN_USE.stream()
                        .filter(u -> u.dimension().equals(asked.dimension()) && !u.equals(asked))
                        .map(other -> InUnit.of(asked, other))
                        .toList(),
                EXPONENTS.stream().map(OfTen::of).toList());
    }

    /// What leads to each of the slips.
    public List<Cause> causes() {
        return Stream.concat(units.stream().map(InUnit::cause), powers.stream().map(OfTen::cause))
                .toList();
    }
}
