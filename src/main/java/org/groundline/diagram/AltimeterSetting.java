package org.groundline.diagram;

import static org.groundline.diagram.Kind.input;
import static org.groundline.diagram.Term.CORRECT_SETTING;
import static org.groundline.diagram.Term.INDICATED_ALTITUDE;
import static org.groundline.diagram.Term.OVER_READ;
import static org.groundline.diagram.Term.SETTING;
import static org.groundline.diagram.Term.TRUE_ALTITUDE;

import org.groundline.theory.Altimeter;

import java.util.List;
import java.util.Set;

/// Why a wrong altimeter setting shows a wrong altitude: it counts from the surface of the pressure
/// that was set, and sea level is another. For the solution the two surfaces lie in the right
/// order; their distance is never to scale, as it is small beside the altitude.
final class AltimeterSetting {
    private static final double SEA = 196;
    private static final double APART = 44;
    private static final double WING = 52;
    private static final double LEFT = 112;
    private static final double RIGHT = 208;

    private final Plate plate;
    private final Facts facts;

    private AltimeterSetting(Plate plate) {
        this.plate = plate;
        this.facts = plate.facts();
    }

    static Kind kind() {
        var all = Set.of(SETTING, CORRECT_SETTING, INDICATED_ALTITUDE);
        return new Kind(
                Motif.ALTIMETER_SETTING,
                282,
                List.of(
                        input(SETTING, "hPa", 940, 1060),
                        input(CORRECT_SETTING, "hPa", 940, 1060),
                        input(INDICATED_ALTITUDE, "m", 0, 6000)),
                Set.of(),
                List.of(
                        Derived.of(OVER_READ, "m", 3, all, AltimeterSetting::overRead),
                        Derived.of(TRUE_ALTITUDE, "m", 4, all, AltimeterSetting::trueAltitude)),
                Set.of(),
                plate -> new AltimeterSetting(plate).draw());
    }

    private static double overRead(Values values) {
        return Altimeter.overRead(values.get(SETTING), values.get(CORRECT_SETTING));
    }

    private static double trueAltitude(Values values) {
        double altitude = values.get(INDICATED_ALTITUDE) - overRead(values);
        if (altitude < 0) {
            throw new IllegalArgumentException(
                    "the true altitude must be zero or above, but is %s m".formatted(altitude));
        }
        return altitude;
    }

    private void draw() {
        plate.note(plate.words().notToScale());
        var sea = plate.pen("sea-level", Ink.THICK);
        sea.ground(6, Sheet.WIDTH - 6, SEA);
        Silhouettes.glider(plate.pen("glider", Ink.THIN), new Point(158, WING));
        plate.pen("level", Ink.DASHED)
                .line(new Point(LEFT - 20, WING), new Point(RIGHT + 20, WING));
        plate.write(
                Spots.along(new Point(6, SEA), new Point(80, SEA), Spots.UP),
                plate.words().seaLevel());
        altitude(TRUE_ALTITUDE, RIGHT, SEA, Spots.RIGHT);
        if (facts.isStem()) {
            reading();
            correctSetting(Spots.DOWN);
        } else {
            surface();
        }
    }

    private void altitude(Term term, double x, double from, Point side) {
        var foot = new Point(x, from);
        var level = new Point(x, WING);
        plate.pen(term, Ink.THICK).arrow(foot, level);
        plate.stack(Spots.along(foot, level, side), term, plate.words().term(term));
    }

    /// For a stem the instrument tells its reading; where it counts from is left open.
    private void reading() {
        var dial = new Point(60, 120);
        plate.pen("altimeter", Ink.THIN).circle(dial, 26);
        plate.pen("altimeter", Ink.THICK).line(dial, dial.plus(12, -16));
        plate.stack(
                Spots.around(dial.plus(0, 26), Spots.DOWN),
                INDICATED_ALTITUDE,
                plate.words().term(INDICATED_ALTITUDE));
        plate.label(Spots.around(dial.plus(0, -26), Spots.UP), SETTING);
        plate.labelSize(Spots.inside(new Box(8, 216, 300, 250)), OVER_READ, errorName());
    }

    private void correctSetting(Point side) {
        plate.label(Spots.along(new Point(6, SEA), new Point(334, SEA), side), CORRECT_SETTING);
    }

    /// The higher pressure lies lower.
    private void surface() {
        double order = Math.signum(facts.si(OVER_READ));
        var away = order > 0 ? Spots.DOWN : Spots.UP;
        correctSetting(away.reversed());
        double y = SEA + APART * order;
        var from = new Point(24, y);
        var to = new Point(RIGHT + 36, y);
        plate.pen(SETTING, Ink.DASHED).line(from, to);
        plate.label(Spots.along(from, to, away), SETTING);
        altitude(INDICATED_ALTITUDE, LEFT, y, Spots.LEFT);
        if (order != 0 && facts.isLabelled(OVER_READ)) {
            var top = new Point(RIGHT + 22, Math.min(y, SEA));
            var bottom = new Point(RIGHT + 22, Math.max(y, SEA));
            plate.pen(OVER_READ, Ink.THIN).span(top, bottom);
            plate.stack(Spots.along(top, bottom, Spots.RIGHT), OVER_READ, errorName());
        }
    }

    private String errorName() {
        if (!facts.isKnown(OVER_READ)) {
            return plate.words().term(OVER_READ);
        }
        return facts.si(OVER_READ) < 0 ? plate.words().tooLowBy() : plate.words().tooHighBy();
    }
}
