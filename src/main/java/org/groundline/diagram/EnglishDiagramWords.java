package org.groundline.diagram;

import java.util.List;
import java.util.stream.Collectors;

/// English.
record EnglishDiagramWords() implements DiagramWords {
    @Override
    public String term(Term term) {
        return switch (term) {
            case AIR_SINK -> "sinking air";
            case AIRSPEED -> "airspeed";
            case ALTITUDE -> "altitude";
            case A, B, C -> "polar";
            case BANK -> "bank";
            case CIRCLE_TIME -> "one circle";
            case CLOUD_BASE -> "cloud base";
            case CORRECT_SETTING -> "QNH";
            case COURSE -> "course";
            case DENSITY -> "density";
            case DEW_POINT -> "dew point";
            case DISTANCE -> "distance";
            case DRAG -> "drag";
            case DRIFT -> "drift";
            case EQUAL_JUMP_HEIGHT -> "jump from";
            case GLIDE_ANGLE -> "glide angle";
            case GLIDE_RATIO -> "glide ratio";
            case GROUND_SPEED -> "ground speed";
            case HEADING -> "heading";
            case HEADWIND -> "headwind";
            case HEIGHT -> "height";
            case HORIZONTAL_LIFT -> "inward part";
            case INDICATED_ALTITUDE -> "indicated";
            case LIFT -> "lift";
            case LOAD_FACTOR -> "load factor";
            case MASS -> "mass";
            case MAXIMUM_SPEED -> "highest speed";
            case OVER_READ -> "error";
            case PRESSURE -> "pressure";
            case RADIUS -> "radius";
            case RESERVE -> "reserve";
            case SETTING -> "set";
            case SINK_RATE -> "sink rate";
            case SPEED_TO_FLY -> "speed to fly";
            case SPREAD -> "spread";
            case STILL_AIR_DISTANCE -> "in still air";
            case TEMPERATURE -> "temperature";
            case TRUE_ALTITUDE -> "true altitude";
            case VERTICAL_LIFT -> "upward part";
            case WEIGHT -> "weight";
            case WIND_CORRECTION_ANGLE -> "crab angle";
            case WIND_FROM -> "wind from";
            case WIND_SPEED -> "wind";
        };
    }

    @Override
    public String labelled(String name, String value) {
        return name + " " + value;
    }

    @Override
    public String title(Motif motif) {
        return switch (motif) {
            case GLIDE_PATH -> "Glide path over the ground";
            case POLAR_TANGENT -> "Speed polar";
            case WIND_TRIANGLE -> "Wind, heading and course";
            case FORCES_IN_GLIDE -> "Forces in a steady glide";
            case FORCES_IN_TURN -> "Forces in a steady turn";
            case CIRCLE_FROM_ABOVE -> "A circle from above";
            case RESERVE_DESCENT -> "Descent under the reserve, and a jump";
            case PRESSURE_PROFILE -> "Pressure in the standard atmosphere";
            case TEMPERATURE_PROFILE -> "Temperature in the standard atmosphere";
            case DENSITY_PROFILE -> "Density of the standard atmosphere";
            case CLOUD_BASE -> "Rising air up to the cloud base";
            case ALTIMETER_SETTING -> "Altimeter setting and altitude";
        };
    }

    @Override
    public String about(Motif motif) {
        return switch (motif) {
            case GLIDE_PATH ->
                    "Seen from the side, a glider flies from left to right and comes down in a straight line.";
            case POLAR_TANGENT ->
                    "Airspeed runs to the right and sink rate downwards; the curve starts at the speed of least sink.";
            case WIND_TRIANGLE -> "Seen from above, north is up.";
            case FORCES_IN_GLIDE ->
                    "Seen from the side, a wing flies to the right and slightly down. Weight pulls straight down, lift acts square to the flight path, drag against it; lift and drag together are as large as the weight and point straight up.";
            case FORCES_IN_TURN ->
                    "Seen from behind, a wing banks to the right. Weight pulls straight down, lift leans with the bank; its upward part is as large as the weight, its inward part pulls the wing round.";
            case CIRCLE_FROM_ABOVE -> "Seen from above, a glider flies a full circle to the right.";
            case RESERVE_DESCENT ->
                    "On the left a person comes down under a reserve; on the right a person is about to jump from a platform and would land as hard.";
            case PRESSURE_PROFILE -> "A curve shows how pressure falls with altitude.";
            case TEMPERATURE_PROFILE ->
                    "A straight line shows how temperature falls with altitude.";
            case DENSITY_PROFILE -> "A curve shows how density falls with altitude.";
            case CLOUD_BASE ->
                    "Temperature runs to the right and height upwards. Rising air cools along the dry adiabat, its dew point falls more slowly, and where the two lines meet the cloud begins.";
            case ALTIMETER_SETTING -> "A glider flies above the sea with an altimeter.";
        };
    }

    @Override
    public String told(List<String> labels) {
        return "The picture tells: " + String.join(", ", labels) + ".";
    }

    @Override
    public String asked(List<String> names) {
        return "A question mark stands for: " + String.join(", ", names) + ".";
    }

    @Override
    public String toScale() {
        return "Drawn to scale.";
    }

    @Override
    public String notToScale() {
        return "Not to scale.";
    }

    @Override
    public String heightsEnlarged(int times) {
        return "Heights drawn %d times as large.".formatted(times);
    }

    @Override
    public String wind() {
        return "wind";
    }

    @Override
    public String tailwind() {
        return "tailwind";
    }

    @Override
    public String risingAir() {
        return "rising air";
    }

    @Override
    public String bestGlide() {
        return "best glide";
    }

    @Override
    public String personGivesScale() {
        return "The people are 1.75\u202Fm tall.";
    }

    @Override
    public String axis(Term quantity, String unit) {
        return term(quantity) + " in " + unit;
    }

    @Override
    public String airspeedAxis() {
        return "airspeed in km/h";
    }

    @Override
    public String sinkAxis() {
        return "sink rate in m/s";
    }

    @Override
    public String polarPoints(List<PolarPoint> points) {
        return points.stream()
                .map(point -> "at %s it sinks %s".formatted(point.airspeed(), point.sinkRate()))
                .collect(Collectors.joining(", ", "On the curve: ", "."));
    }

    @Override
    public String north() {
        return "N";
    }

    @Override
    public String tenKilometresAnHour() {
        return "10\u202Fkm/h";
    }

    @Override
    public String sideBySide() {
        return "The arrows lie almost in one line and are drawn side by side.";
    }

    @Override
    public String barShows(String length) {
        return "A bar shows how long %s is.".formatted(length);
    }

    @Override
    public String flightPath() {
        return "flight path";
    }

    @Override
    public String totalForce() {
        return "resultant";
    }

    @Override
    public String dryAdiabat() {
        return "dry adiabat";
    }

    @Override
    public String dewPointLine() {
        return "dew point line";
    }

    @Override
    public String seaLevel() {
        return "sea level";
    }

    @Override
    public String tooHighBy() {
        return "too high by";
    }

    @Override
    public String tooLowBy() {
        return "too low by";
    }
}
