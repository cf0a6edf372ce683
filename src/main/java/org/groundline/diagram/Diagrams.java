package org.groundline.diagram;

import org.groundline.theory.StandardAtmosphere;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/// All kinds of drawings, by name.
public final class Diagrams {
    private static final List<Diagram> ALL =
            Stream.of(
                            GlidePath.kind(),
                            PolarTangent.kind(),
                            WindTriangle.kind(),
                            ForcesInGlide.kind(),
                            ForcesInTurn.kind(),
                            CircleFromAbove.kind(),
                            ReserveDescent.kind(),
                            pressure().kind(),
                            temperature().kind(),
                            density().kind(),
                            CloudBaseRise.kind(),
                            AltimeterSetting.kind())
                    .map(Diagram::new)
                    .toList();

    private Diagrams() {}

    public static Optional<Diagram> find(String name) {
        return ALL.stream().filter(d -> d.name().equals(name)).findFirst();
    }

    public static List<Diagram> list() {
        return ALL;
    }

    private static AtmosphereProfile pressure() {
        return new AtmosphereProfile(
                Motif.PRESSURE_PROFILE,
                Term.PRESSURE,
                "hPa",
                4,
                400,
                1100,
                100,
                StandardAtmosphere::pressure);
    }

    private static AtmosphereProfile temperature() {
        return new AtmosphereProfile(
                Motif.TEMPERATURE_PROFILE,
                Term.TEMPERATURE,
                "°C",
                3,
                -30,
                20,
                10,
                StandardAtmosphere::temperature);
    }

    private static AtmosphereProfile density() {
        return new AtmosphereProfile(
                Motif.DENSITY_PROFILE,
                Term.DENSITY,
                "kg/m³",
                4,
                0.6,
                1.3,
                0.1,
                StandardAtmosphere::density);
    }
}
