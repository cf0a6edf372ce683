package org.groundline.bank.numeric.formula;

import static org.groundline.measure.Dimension.ANGLE;
import static org.groundline.measure.Dimension.AREA;
import static org.groundline.measure.Dimension.DENSITY;
import static org.groundline.measure.Dimension.ENERGY;
import static org.groundline.measure.Dimension.LENGTH;
import static org.groundline.measure.Dimension.LOADING;
import static org.groundline.measure.Dimension.MASS;
import static org.groundline.measure.Dimension.NUMBER;
import static org.groundline.measure.Dimension.SPEED;
import static org.groundline.measure.Dimension.TIME;

import static java.util.function.Function.identity;
import static java.util.stream.Collectors.toUnmodifiableMap;

import org.groundline.bank.numeric.formula.Function.Body;
import org.groundline.bank.numeric.formula.Function.Rule;
import org.groundline.measure.Dimension;
import org.groundline.theory.Glide;
import org.groundline.theory.Loading;
import org.groundline.theory.Reserve;
import org.groundline.theory.StandardAtmosphere;
import org.groundline.theory.Turn;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/// All functions that formulas may call: the usual ones, and those of the theory package.
final class Functions {
    private static final Map<String, Function> BY_NAME =
            Stream.of(general(), circular(), air(), glide(), loading(), reserve())
                    .flatMap(List::stream)
                    .collect(toUnmodifiableMap(Function::name, identity()));

    private Functions() {}

    static Optional<Function> find(String name) {
        return Optional.ofNullable(BY_NAME.get(name));
    }

    static List<String> names() {
        return BY_NAME.keySet().stream().sorted().toList();
    }

    private static List<Function> general() {
        Rule root = (f, a) -> a.getFirst().dimension().root(2);
        Rule same = (f, a) -> a.getFirst().dimension();
        Rule bothSame = Functions::bothSame;
        return List.of(
                function("sqrt", root, a -> Math.sqrt(a[0]), "value"),
                function("abs", same, a -> Math.abs(a[0]), "value"),
                function("min", bothSame, a -> Math.min(a[0], a[1]), "one", "other"),
                function("max", bothSame, a -> Math.max(a[0], a[1]), "one", "other"),
                function("ln", Function.fixed(NUMBER, NUMBER), a -> StrictMath.log(a[0]), "value"),
                function(
                        "exp", Function.fixed(NUMBER, NUMBER), a -> StrictMath.exp(a[0]), "value"));
    }

    private static List<Function> circular() {
        Rule ofAngle = Function.fixed(NUMBER, ANGLE);
        Rule toAngle = Function.fixed(ANGLE, NUMBER);
        return List.of(
                function("sin", ofAngle, a -> StrictMath.sin(a[0]), "angle"),
                function("cos", ofAngle, a -> StrictMath.cos(a[0]), "angle"),
                function("tan", ofAngle, a -> StrictMath.tan(a[0]), "angle"),
                function("asin", toAngle, a -> StrictMath.asin(a[0]), "value"),
                function("atan", toAngle, a -> StrictMath.atan(a[0]), "value"));
    }

    private static List<Function> air() {
        return List.of(
                function(
                        "air_density",
                        Function.fixed(DENSITY, LENGTH),
                        a -> StandardAtmosphere.density(a[0]),
                        "altitude"),
                function(
                        "density_ratio",
                        Function.fixed(NUMBER, LENGTH),
                        a -> StandardAtmosphere.densityRatio(a[0]),
                        "altitude"),
                function(
                        "true_airspeed",
                        Function.fixed(SPEED, SPEED, LENGTH),
                        a -> StandardAtmosphere.trueAirspeed(a[0], a[1]),
                        "equivalent airspeed",
                        "altitude"));
    }

    private static List<Function> glide() {
        return List.of(
                function(
                        "glide_ratio",
                        Function.fixed(NUMBER, SPEED, SPEED),
                        a -> Glide.ratio(a[0], a[1]),
                        "airspeed",
                        "sink rate"),
                function(
                        "glide_angle",
                        Function.fixed(ANGLE, NUMBER),
                        a -> Glide.angle(a[0]),
                        "glide ratio"),
                function(
                        "ground_speed",
                        Function.fixed(SPEED, SPEED, SPEED),
                        a -> Glide.groundSpeed(a[0], a[1]),
                        "airspeed",
                        "headwind"),
                function(
                        "descent_rate",
                        Function.fixed(SPEED, SPEED, SPEED),
                        a -> Glide.descentRate(a[0], a[1]),
                        "sink rate",
                        "sink of the air"),
                function(
                        "glide_distance",
                        Function.fixed(LENGTH, LENGTH, SPEED, SPEED),
                        a -> Glide.distance(a[0], a[1], a[2]),
                        "height",
                        "ground speed",
                        "descent rate"),
                function(
                        "glide_time",
                        Function.fixed(TIME, LENGTH, SPEED),
                        a -> Glide.time(a[0], a[1]),
                        "height",
                        "descent rate"),
                function(
                        "height_needed",
                        Function.fixed(LENGTH, LENGTH, SPEED, SPEED, LENGTH),
                        a -> Glide.heightNeeded(a[0], a[1], a[2], a[3]),
                        "distance",
                        "ground speed",
                        "descent rate",
                        "reserve"));
    }

    private static List<Function> loading() {
        return List.of(
                function(
                        "wing_loading",
                        Function.fixed(LOADING, MASS, AREA),
                        a -> Loading.wingLoading(a[0], a[1]),
                        "all-up mass",
                        "area"),
                function(
                        "speed_at_mass",
                        Function.fixed(SPEED, SPEED, MASS, MASS),
                        a -> Loading.speedAtMass(a[0], a[1], a[2]),
                        "speed",
                        "mass",
                        "new mass"),
                function(
                        "speed_in_air",
                        Function.fixed(SPEED, SPEED, DENSITY, DENSITY),
                        a -> Loading.speedInAir(a[0], a[1], a[2]),
                        "speed",
                        "density",
                        "new density"),
                function(
                        "load_factor",
                        Function.fixed(NUMBER, ANGLE),
                        a -> Turn.loadFactor(a[0]),
                        "bank"),
                function(
                        "stall_speed",
                        Function.fixed(SPEED, SPEED, NUMBER),
                        a -> Turn.stallSpeed(a[0], a[1]),
                        "stall speed in straight flight",
                        "load factor"));
    }

    private static List<Function> reserve() {
        return List.of(
                function(
                        "reserve_sink_rate",
                        Function.fixed(SPEED, MASS, AREA, NUMBER, DENSITY),
                        a -> Reserve.sinkRate(a[0], a[1], a[2], a[3]),
                        "all-up mass",
                        "area",
                        "drag coefficient",
                        "density"),
                function(
                        "equal_jump_height",
                        Function.fixed(LENGTH, SPEED),
                        a -> Reserve.equalJumpHeight(a[0]),
                        "sink rate"),
                function(
                        "impact_energy",
                        Function.fixed(ENERGY, MASS, SPEED),
                        a -> Reserve.impactEnergy(a[0], a[1]),
                        "mass",
                        "sink rate"));
    }

    private static Dimension bothSame(Function function, List<Expression> arguments) {
        DimensionRules.requireSame(
                "compares",
                arguments.getFirst(),
                "with",
                arguments.getLast(),
                function.callOf(arguments));
        return arguments.getFirst().dimension();
    }

    private static Function function(String name, Rule rule, Body body, String... parameters) {
        return new Function(name, List.of(parameters), rule, body);
    }
}
