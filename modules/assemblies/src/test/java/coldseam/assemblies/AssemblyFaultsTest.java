package coldseam.assemblies;

import static coldseam.assemblies.Build.air;
import static coldseam.assemblies.Build.assembly;
import static coldseam.assemblies.Build.framed;
import static coldseam.assemblies.Build.layer;
import static coldseam.assemblies.Build.material;
import static coldseam.assemblies.Build.tapered;
import static coldseam.assemblies.Build.with;
import static org.junit.jupiter.api.Assertions.assertEquals;

import coldseam.envelope.Assembly;
import coldseam.envelope.Layer;
import coldseam.envelope.Role;
import org.junit.jupiter.api.Test;

/** Each limit of an assembly's values, on it and beyond it. */
class AssemblyFaultsTest {

    private static final Layer BOARD = layer(Role.INSULATION, "board", 100, 0.04);

    private static void faults(String expected, Assembly assembly) {
        assertEquals(expected, AssemblyFaults.of(assembly).makeString("\n"));
    }

    @Test
    void limitsThatAreAllowedAre() {
        faults(
                "",
                with(
                        with(
                                assembly(BOARD, air(20, Layer.Ventilation.SLIGHTLY_VENTILATED, 0, 1)),
                                new Assembly.Fasteners(material("screw", 50), 0.006, 0, 0.1)),
                        new Assembly.Rain(0, 0)));
        // What vents fully or not at all needs no openings.
        faults("", assembly(BOARD, air(20, Layer.Ventilation.UNVENTILATED, -1)));
    }

    @Test
    void sharesOfFramingAreMoreThanNoneAndLessThanAll() {
        for (double share : new double[] {0, 1, Double.NaN}) {
            faults(
                    "layer 1 from inside (board): framing share is " + share
                            + "; allowed is more than 0 and less than 1",
                    assembly(framed(BOARD, 0.13, share)));
        }
    }

    @Test
    void whatIsNotFiniteIsRefused() {
        double endless = Double.POSITIVE_INFINITY;
        faults(
                """
                layer 1 from inside (board): thickness is Infinity m; allowed is more than 0
                layer 2 from inside (wool): conductivity is Infinity W/(m·K); allowed is more than 0
                layer 3 from inside (board): greatest thickness is Infinity m; allowed is more than its least thickness, 0.1 m
                rain cooling: precipitation is Infinity mm/day; allowed is 0 or more
                rain cooling: factor is -0.1 W·day/(m²·K·mm); allowed is 0 or more""",
                with(
                        assembly(
                                layer(Role.INSULATION, "board", endless, 0.04),
                                layer(Role.STRUCTURE, "wool", 100, endless),
                                tapered(BOARD, Layer.Taper.Shape.RECTANGLE, endless)),
                        new Assembly.Rain(endless, -0.1)));
    }

    @Test
    void fastenersAreHeldToTheirLimitsOneByOne() {
        faults("""
                fasteners: conductivity is 0.0 W/(m·K); allowed is more than 0
                fasteners: diameter is 0.0 m; allowed is more than 0
                fasteners: number is -1.0 1/m²; allowed is 0 or more
                fasteners: recess is -0.01 m; allowed is 0 or more""", with(assembly(BOARD), new Assembly.Fasteners(material("screw", 0), 0, -1, -0.01)));
        faults("""
                fasteners: recess is 0.1000001 m; allowed is up to the insulation's thickness, 0.1 m""", with(assembly(BOARD), new Assembly.Fasteners(material("screw", 50), 0.006, 4, 0.1000001)));
    }

    @Test
    void tapersAreThickerSomewhereAndOfOneMaterial() {
        faults(
                "layer 1 from inside (board): greatest thickness is 0.1 m; allowed is more than its least thickness,"
                        + " 0.1 m",
                assembly(tapered(BOARD, Layer.Taper.Shape.RECTANGLE, 100)));
        String neither = ": a tapered layer can neither be framed nor be air; split the layer in two";
        faults(
                "layer 1 from inside (board)" + neither,
                assembly(framed(tapered(BOARD, Layer.Taper.Shape.RECTANGLE, 200), 0.13, 0.1)));
        faults(
                "layer 1 from inside (air)" + neither,
                assembly(tapered(air(20, Layer.Ventilation.UNVENTILATED, 0), Layer.Taper.Shape.RECTANGLE, 200)));
    }

    @Test
    void framingConducts() {
        faults(
                "layer 1 from inside (board): framing conductivity is 0.0 W/(m·K); allowed is more than 0",
                assembly(framed(BOARD, 0, 0.1)));
        faults("it has no layers; at least one is needed", assembly());
    }
}
