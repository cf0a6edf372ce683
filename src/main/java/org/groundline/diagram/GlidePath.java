package org.groundline.diagram;

import static org.groundline.diagram.Kind.input;
import static org.groundline.diagram.Term.AIRSPEED;
import static org.groundline.diagram.Term.DISTANCE;
import static org.groundline.diagram.Term.GLIDE_RATIO;
import static org.groundline.diagram.Term.HEADWIND;
import static org.groundline.diagram.Term.HEIGHT;
import static org.groundline.diagram.Term.RESERVE;
import static org.groundline.diagram.Term.STILL_AIR_DISTANCE;

import org.groundline.theory.Glide;

import java.util.List;
import java.util.Set;

/// The way down over the ground, from the left to the right, with the wind.
///
/// A glide is so flat that its heights are enlarged by a whole number, which the picture states.
final class GlidePath {
    private static final double START = 44;
    private static final double LENGTH = 262;
    private static final double GROUND = 152;
    private static final double HIGHEST = 122;
    private static final double FLATTEST = 100;
    private static final double STEEPEST = 0.3;
    private static final double MOST_TIMES = 6;
    private static final double LONGEST_ARROW = 110;

    private final Plate plate;
    private final Facts facts;

    private GlidePath(Plate plate) {
        this.plate = plate;
        this.facts = plate.facts();
    }

    static Kind kind() {
        return new Kind(
                Motif.GLIDE_PATH,
                214,
                List.of(
                        input(HEIGHT, "m", 10, 5000),
                        input(DISTANCE, "m", 20, 100_000),
                        input(RESERVE, "m", 0, 1000),
                        input(HEADWIND, "km/h", -60, 60),
                        input(AIRSPEED, "km/h", 15, 130),
                        input(STILL_AIR_DISTANCE, "m", 20, 100_000)),
                Set.of(RESERVE, HEADWIND, AIRSPEED, STILL_AIR_DISTANCE),
                List.of(Derived.of(GLIDE_RATIO, "", 3, Set.of(HEIGHT, DISTANCE), GlidePath::ratio)),
                Set.of(),
                plate -> new GlidePath(plate).draw());
    }

    private static double ratio(Values values) {
        double kept = values.has(RESERVE) ? values.get(RESERVE) : 0;
        double ratio = Glide.ratioFlown(values.get(DISTANCE), values.get(HEIGHT) - kept);
        if (ratio < STEEPEST || ratio > FLATTEST) {
            throw new IllegalArgumentException(
                    "a glide ratio of %s cannot be drawn, only one from %s to %s"
                            .formatted(ratio, STEEPEST, FLATTEST));
        }
        if (values.has(STILL_AIR_DISTANCE)) {
            requireComparable(values.get(STILL_AIR_DISTANCE), values.get(DISTANCE));
        }
        return ratio;
    }

    private static void requireComparable(double stillAir, double distance) {
        if (Math.max(stillAir / distance, distance / stillAir) > MOST_TIMES) {
            throw new IllegalArgumentException(
                    "distances of %s m and, in still air, %s m are too different for one picture"
                            .formatted(distance, stillAir));
        }
    }

    private void draw() {
        var scale = facts.isStem() ? sketch() : toScale();
        plate.pen("ground", Ink.THICK).ground(START - 30, Sheet.WIDTH - 6, GROUND);
        Silhouettes.glider(plate.pen("glider", Ink.THIN), scale.start());
        stillAir(scale);
        plate.pen("path", Ink.THICK).line(scale.start(), scale.end());
        measures(scale);
        speeds();
    }

    /// Where the path starts and ends, and how far it would lead in still air.
    private record Scale(Point start, Point end, double stillAir) {}

    /// A picture of any glide: nothing in it has the size of a value.
    private Scale sketch() {
        plate.note(plate.words().notToScale());
        double kept = facts.has(RESERVE) ? 34 : 0;
        double path = 210;
        return new Scale(
                new Point(START, GROUND - 116),
                new Point(START + path, GROUND - kept),
                facts.has(STILL_AIR_DISTANCE) ? path + 40 * windSign() : path);
    }

    private Scale toScale() {
        double still = facts.has(STILL_AIR_DISTANCE) ? facts.si(STILL_AIR_DISTANCE) : 0;
        double across =
                Math.min(LENGTH / Math.max(facts.si(DISTANCE), still), HIGHEST / facts.si(HEIGHT));
        int enlarged = (int) Math.floor(HIGHEST / (across * facts.si(HEIGHT)) + 1e-9);
        double up = across * enlarged;
        double kept = facts.has(RESERVE) ? facts.si(RESERVE) : 0;
        plate.note(
                enlarged == 1 ? plate.words().toScale() : plate.words().heightsEnlarged(enlarged));
        return new Scale(
                new Point(START, GROUND - up * facts.si(HEIGHT)),
                new Point(START + across * facts.si(DISTANCE), GROUND - up * kept),
                across * still);
    }

    /// In a stem a wind that is not known could only be guessed from a second path, so there is
    /// none.
    private void stillAir(Scale scale) {
        if (facts.isStem() && windSign() == 0) {
            plate.label(Spots.inside(new Box(80, 14, 200, 60)), STILL_AIR_DISTANCE);
        } else if (facts.isShown(STILL_AIR_DISTANCE)) {
            var end = new Point(START + scale.stillAir(), scale.end().y());
            plate.pen(STILL_AIR_DISTANCE, Ink.DASHED).line(scale.start(), end);
            plate.name(Spots.along(scale.start(), end), STILL_AIR_DISTANCE);
        }
    }

    private void measures(Scale scale) {
        var foot = new Point(START, GROUND);
        plate.pen(HEIGHT, Ink.THIN).span(foot, scale.start());
        plate.label(Spots.along(foot, scale.start()), HEIGHT);
        var below = new Point(START, GROUND + 18);
        var end = new Point(scale.end().x(), GROUND + 18);
        plate.pen(DISTANCE, Ink.THIN).span(below, end);
        plate.label(Spots.along(below, end, Spots.DOWN), DISTANCE);
        if (scale.end().y() < GROUND) {
            var arrival = new Point(scale.end().x(), GROUND);
            plate.pen(RESERVE, Ink.THIN).span(arrival, scale.end());
            plate.label(Spots.along(arrival, scale.end()), RESERVE);
        }
        plate.label(Spots.along(scale.start(), scale.end()), GLIDE_RATIO);
    }

    private void speeds() {
        double y = 30;
        if (facts.has(AIRSPEED)) {
            arrow(AIRSPEED, plate.words().term(AIRSPEED), y, 1);
            y += 34;
        }
        if (facts.has(HEADWIND)) {
            arrow(HEADWIND, windName(), y, -windSign());
        }
    }

    /// An arrow in the free sky on the right: to the right, to the left, or none for a calm.
    private void arrow(Term term, String name, double y, double sign) {
        double half = arrowLength(term) / 2;
        var middle = new Point(Sheet.WIDTH - 12 - LONGEST_ARROW / 2, y);
        if (half * Math.abs(sign) > 0) {
            plate.pen(term, Ink.THICK)
                    .arrow(middle.plus(-half * sign, 0), middle.plus(half * sign, 0));
        }
        plate.labelSize(
                Spots.along(
                        middle.plus(-LONGEST_ARROW / 2, 0),
                        middle.plus(LONGEST_ARROW / 2, 0),
                        Spots.UP),
                term,
                name);
    }

    private double arrowLength(Term term) {
        if (facts.isStem()) {
            return term == AIRSPEED ? LONGEST_ARROW : LONGEST_ARROW / 2;
        }
        double wind = facts.has(HEADWIND) ? Math.abs(facts.si(HEADWIND)) : 0;
        double airspeed = facts.has(AIRSPEED) ? facts.si(AIRSPEED) : wind;
        return LONGEST_ARROW * Math.abs(facts.si(term)) / Math.max(wind, airspeed);
    }

    /// 1 against the flight, −1 with it; 0 for a calm, and where the wind is not known.
    private double windSign() {
        return facts.isKnown(HEADWIND) ? Math.signum(facts.si(HEADWIND)) : 0;
    }

    private String windName() {
        if (!facts.isKnown(HEADWIND)) {
            return plate.words().wind();
        }
        return windSign() < 0 ? plate.words().tailwind() : plate.words().term(HEADWIND);
    }
}
