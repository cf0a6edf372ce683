package org.groundline.diagram;

import static org.groundline.diagram.Kind.input;
import static org.groundline.diagram.Term.CLOUD_BASE;
import static org.groundline.diagram.Term.DEW_POINT;
import static org.groundline.diagram.Term.SPREAD;
import static org.groundline.diagram.Term.TEMPERATURE;

import org.groundline.theory.CloudBase;
import org.groundline.theory.Lapse;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/// Air that rises from the ground: its temperature falls along the dry adiabat, its dew point
/// slower, and where the two meet is the cloud base. Temperatures to the right, heights upwards.
final class CloudBaseRise {
    private static final double GROUND = 208;
    private static final double BASE = 66;
    private static final double WARMEST = 296;
    private static final double ROOM = 196;
    private static final double LOWEST_RULE = 110; // (m/K)
    private static final double HIGHEST_RULE = 140; // (m/K)
    private static final double SKETCHED_SPREAD = 8;

    private final Plate plate;
    private final Facts facts;

    private CloudBaseRise(Plate plate) {
        this.plate = plate;
        this.facts = plate.facts();
    }

    static Kind kind() {
        return new Kind(
                Motif.CLOUD_BASE,
                278,
                List.of(
                        input(TEMPERATURE, "°C", -10, 45),
                        input(DEW_POINT, "°C", -30, 35),
                        input(CLOUD_BASE, "m", 20, 6000)),
                Set.of(CLOUD_BASE),
                List.of(
                        Derived.of(
                                SPREAD,
                                "K",
                                3,
                                Set.of(TEMPERATURE, DEW_POINT),
                                CloudBaseRise::spread),
                        Derived.of(
                                CLOUD_BASE,
                                "m",
                                4,
                                Set.of(TEMPERATURE, DEW_POINT),
                                v -> CloudBase.byMetreRule(spread(v)))),
                Set.of(),
                plate -> new CloudBaseRise(plate).draw());
    }

    private static double spread(Values values) {
        double spread = values.get(TEMPERATURE) - values.get(DEW_POINT);
        if (spread <= 0) {
            throw new IllegalArgumentException(
                    "the dew point must be below the temperature, but the spread is %s K"
                            .formatted(spread));
        }
        if (values.has(CLOUD_BASE)) {
            requireRule(values.get(CLOUD_BASE), spread);
        }
        return spread;
    }

    private static void requireRule(double base, double spread) {
        if (base < LOWEST_RULE * spread || base > HIGHEST_RULE * spread) {
            throw new IllegalArgumentException(
                    "a cloud base of %s m is not %s to %s m for each kelvin of a spread of %s K"
                            .formatted(base, LOWEST_RULE, HIGHEST_RULE, spread));
        }
    }

    private void draw() {
        boolean stem = facts.isStem();
        double spread = stem ? SKETCHED_SPREAD : facts.si(SPREAD);
        double base = stem ? CloudBase.byMetreRule(spread) : facts.si(CLOUD_BASE);
        double cooled = Lapse.dry() * base;
        double kelvin = ROOM / cooled;
        plate.note(stem ? plate.words().notToScale() : plate.words().toScale());
        var warm = new Point(WARMEST, GROUND);
        var dew = new Point(WARMEST - spread * kelvin, GROUND);
        var meeting = new Point(WARMEST - cooled * kelvin, BASE);
        plate.pen("ground", Ink.THICK).ground(6, Sheet.WIDTH - 6, GROUND);
        cloud(meeting);
        plate.pen("dry-adiabat", Ink.THICK).line(warm, meeting);
        plate.write(Spots.along(warm, meeting), plate.words().dryAdiabat());
        plate.pen("dew-point-line", Ink.DASHED).line(dew, meeting);
        plate.write(Spots.along(dew, meeting), plate.words().dewPointLine());
        ground(warm, dew);
        base();
    }

    private void ground(Point warm, Point dew) {
        plate.pen(TEMPERATURE, Ink.THIN).dot(warm);
        plate.pen(DEW_POINT, Ink.THIN).dot(dew);
        plate.label(Spots.along(warm.plus(-40, 10), warm.plus(0, 10), Spots.DOWN), TEMPERATURE);
        plate.label(Spots.along(dew.plus(0, 10), dew.plus(-80, 10), Spots.DOWN), DEW_POINT);
        if (facts.isLabelled(SPREAD)) {
            plate.pen(SPREAD, Ink.THIN).span(dew.plus(4, -8), warm.plus(-4, -8));
            plate.label(Spots.along(dew.plus(0, -8), warm.plus(0, -8), Spots.UP), SPREAD);
        }
    }

    private void base() {
        double x = Sheet.WIDTH - 14;
        var foot = new Point(x, GROUND);
        var top = new Point(x, BASE);
        plate.pen(CLOUD_BASE, Ink.THIN).span(foot, top);
        plate.label(Spots.along(foot, top, Spots.LEFT), CLOUD_BASE);
    }

    /// Flat below and heaped above, round the point where it begins.
    private void cloud(Point base) {
        double left = base.x() - 94;
        double right = base.x() + 150;
        plate.pen("cloud-foot", Ink.THIN).line(new Point(left, BASE), new Point(right, BASE));
        plate.pen("base-level", Ink.DASHED)
                .line(new Point(right, BASE), new Point(Sheet.WIDTH - 6, BASE));
        var heap = new ArrayList<Point>();
        double[][] bumps = {{-70, 22}, {-24, 34}, {30, 36}, {84, 30}, {126, 20}};
        for (double[] bump : bumps) {
            heap.addAll(
                    Pen.arcPoints(
                            base.plus(bump[0], -bump[1] * 0.5),
                            bump[1] * 0.8,
                            -Math.PI * 0.92,
                            -Math.PI * 0.08));
        }
        heap.addFirst(new Point(left, BASE));
        heap.add(new Point(right, BASE));
        plate.pen("cloud", Ink.THIN).polyline(heap);
    }
}
