package coldseam.junctions.hand;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.envelope.Assembly;
import coldseam.envelope.Exposure;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Material;
import coldseam.envelope.Role;
import coldseam.files.Fault;
import coldseam.files.Faults;
import coldseam.files.FileFaultException;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.Samples;
import coldseam.junctions.detail.Detail;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the file says of a drawing's legs is held to the drawing, and the drawing to the house. */
class HandDrawingTest {

    private static final String CORNER = """
            section: Corner with insulation outside
            lengths: mm
            regions:
            - {material: board, conductivity: 0.04, polygon: [[-1500, 200], [200, 200], [200, -1500], [300, -1500], [300, 300], [-1500, 300]]}
            - {material: masonry, conductivity: 0.8, polygon: [[-1500, 0], [0, 0], [0, -1500], [200, -1500], [200, 200], [-1500, 200]]}
            environments:
              indoor: {temperature: 20, surface-resistance: 0.13}
              outdoor: {temperature: 0, surface-resistance: 0.04}
            boundaries:
            - {environment: outdoor, path: [[-1500, 300], [300, 300], [300, -1500]]}
            - {environment: indoor, path: [[-1500, 0], [0, 0], [0, -1500]]}
            junction:
              kind: outside corner
              legs:
              - {name: wall, transmittance: 0.3425, external: 1800, internal: 1500, insulation: 100, cut: [[-1500, 0], [-1500, 300]]}
              - {name: other wall, transmittance: 0.3425, external: 1800, internal: 1500, insulation: 100, cut: [[300, -1500], [0, -1500]]}
            """;

    @TempDir
    Path folder;

    private static Assembly wall(double boardMillimetres, double masonry) {
        return Samples.assembly(
                "wall",
                Samples.layer("masonry", masonry, 200, Role.STRUCTURE),
                Samples.layer("board", 0.04, boardMillimetres, Role.INSULATION),
                Samples.layer("skin", 1, 3, Role.CLADDING));
    }

    private static JunctionSetup between(Assembly one, Assembly other) {
        return Samples.setup(JunctionKind.OUTSIDE_CORNER).between(one, Optional.of(other));
    }

    private DrawnSection file(String text) throws IOException {
        Path file = folder.resolve("drawn.yaml");
        Files.writeString(file, text);
        return (DrawnSection) Drawn.load(file);
    }

    private ImmutableList<Fault> faults(String text) throws IOException {
        Faults faults = new Faults();
        HandDrawing.detail("drawn", file(text), faults);
        return assertThrows(FileFaultException.class, faults::throwIfAny).faults();
    }

    private String misfit(JunctionSetup setup) throws IOException {
        Faults faults = new Faults();
        Detail detail = HandDrawing.detail("drawn", file(CORNER), faults).orElseThrow();
        HandDrawing drawing = (HandDrawing) detail.drawing();
        return assertThrows(DetailDoesNotFit.class, () -> drawing.composition("it", setup))
                .reasons()
                .makeString("\n");
    }

    @Test
    void aDrawingOfTheHousesOwnLayersFitsMembranesAside() throws IOException {
        Faults faults = new Faults();
        Detail detail = HandDrawing.detail("drawn", file(CORNER), faults).orElseThrow();
        faults.throwIfAny();
        HandDrawing drawing = (HandDrawing) detail.drawing();
        assertEquals(
                2,
                drawing.composition("it", between(wall(100, 0.8), wall(100, 0.8)))
                        .legs()
                        .size());
    }

    @Test
    void aTransmittanceThatIsNotDrawnIsRefused() throws IOException {
        ImmutableList<Fault> faults = faults(CORNER.replaceFirst("0\\.3425", "3.425"));
        assertEquals(
                "a leg's transmittance is that of the layers along its cut",
                faults.getOnly().asked());
        assertEquals("3.425 W/(m²·K) for \"wall\"", faults.getOnly().got().toString());
        assertEquals(15, faults.getOnly().place().line());
    }

    @Test
    void aLengthThatIsNotDrawnIsRefused() throws IOException {
        assertEquals(
                "2300 mm, external length of \"wall\"",
                faults(CORNER.replaceFirst("1800", "2300")).getOnly().got().toString());
        assertEquals(
                "1400 mm, internal length of \"other wall\"",
                faults(CORNER.replaceFirst("(other wall.*internal: )1500", "$11400"))
                        .getOnly()
                        .got()
                        .toString());
    }

    @Test
    void insulationThatIsNotDrawnIsRefused() throws IOException {
        assertEquals(
                "200 mm for \"wall\"",
                faults(CORNER.replaceFirst("insulation: 100", "insulation: 200"))
                        .getOnly()
                        .got()
                        .toString());
    }

    @Test
    void aCutThatLeadsNowhereIsRefused() throws IOException {
        String told = faults(CORNER.replaceFirst(
                        "cut: \\[\\[-1500, 0\\], \\[-1500, 300\\]\\]", "cut: [[-1600, 0], [-1600, 300]]"))
                .getOnly()
                .asked();
        assertTrue(told.startsWith("a leg's cut leads from a boundary indoors"), told);
    }

    @Test
    void aHouseOfOtherLayersIsToldWhich() throws IOException {
        String told = misfit(between(wall(100, 0.8), wall(200, 0.8)));
        assertTrue(told.contains("its leg \"other wall\" has U 0.343 W/(m²·K), the house's 0.184"), told);
        assertTrue(
                told.contains(
                        "is drawn of 200 mm of 0.800 W/(m·K), 100 mm of 0.0400 W/(m·K); the house's layers are 200 mm"
                                + " of 0.800 W/(m·K), 200 mm of 0.0400 W/(m·K)"),
                told);
        assertTrue(misfit(between(wall(100, 0.2), wall(100, 0.8))).contains("the house's layers are 200 mm of 0.2"));
    }

    @Test
    void anAngleOrANeighbourThatIsNotDrawnIsTold() throws IOException {
        JunctionSetup setup = between(wall(100, 0.8), wall(100, 0.8));
        assertEquals(
                "it is drawn by hand for another house: its legs meet at 90°, the house's surfaces at 120°",
                misfit(setup.at(120)));
        JunctionSetup beside = new JunctionSetup(
                setup.kind(),
                setup.first(),
                setup.second(),
                setup.angle(),
                new Exposure(Exposure.Kind.UNHEATED, "shed", 0.5),
                setup.secondExposure(),
                setup.opening(),
                setup.floorThickness(),
                setup.upstand(),
                setup.ground(),
                setup.indoorTemperature(),
                setup.outdoorTemperature());
        assertTrue(misfit(beside).contains("faces a temperature factor of 1.00, the house's surface one of 0.50"));
    }

    @Test
    void aFaceThatNoAirTouchesIsRefused() throws IOException {
        String outside = CORNER.replace(
                "- {environment: outdoor, path: [[-1500, 300], [300, 300], [300, -1500]]}",
                "- {environment: outdoor, path: [[-1500, 300], [-1000, 300]]}\n"
                        + "- {environment: outdoor, path: [[300, -1000], [300, -1500]]}");
        assertEquals(
                "2598 mm of its outline without one",
                faults(outside).getOnly().got().toString());
        String inside = CORNER.replace(
                "- {environment: indoor, path: [[-1500, 0], [0, 0], [0, -1500]]}",
                "- {environment: indoor, path: [[-1500, 0], [-1000, 0]]}\n"
                        + "- {environment: indoor, path: [[0, 0], [0, -1500]]}");
        assertEquals(
                "998 mm of its outline without one",
                faults(inside).getOnly().got().toString());
    }

    @Test
    void airThatHardlyTouchesIsRefused() throws IOException {
        String still = CORNER.replace("outdoor, path: [[-1500", "outdoor, surface-resistance: 0.26, path: [[-1500")
                .replace("0.3425", "0.3185");
        assertEquals("0.260 m²·K/W", faults(still).getOnly().got().toString());
    }

    /** Part of the outer face, from 300 mm beside the corner on, given to rooms, and to a loft. */
    @Test
    void whatNoLegFacesIsRefused() throws IOException {
        String outer = "- {environment: outdoor, path: [[-1500, 300], [300, 300], [300, -1500]]}";
        assertTrue(CORNER.contains(outer), CORNER);
        String warm = CORNER.replace(
                outer,
                "- {environment: outdoor, path: [[-1500, 300], [0, 300]]}\n- {environment: %s, path: [[0, 300], [300, 300],"
                        + " [300, 0]]}\n- {environment: outdoor, path: [[300, 0], [300, -1500]]}");
        assertEquals(
                "\"indoor\" where no leg is cut",
                faults(warm.formatted("indoor")).getOnly().got().toString());
        String loft = warm.formatted("loft")
                .replace("environments:\n", "environments:\n  loft: {temperature: 20, surface-resistance: 0.1}\n");
        assertEquals(
                "\"loft\" where no leg is cut", faults(loft).getOnly().got().toString());
        accepted(warm.formatted("outdoor"));
    }

    @Test
    void aMaterialThatThereIsNotIsRefusedUnlessALegShowsIt() throws IOException {
        String trim = CORNER.replace(
                "environments:",
                "- {material: %s, conductivity: %s, polygon: [[200, 200], [300, 200], [300, 300], [200, 300]]}\nenvironments:");
        assertEquals(
                "0.0170 W/(m·K) of \"trim\"",
                faults(String.format(trim, "trim", "0.017")).getOnly().got().toString());
        assertEquals(
                "0.024 W/(m·K) of \"mineral wool board\"",
                refused(String.format(trim, "mineral wool board", "0.024"))
                        .getOnly()
                        .got()
                        .toString());
        assertEquals(
                "0.130 W/(m·K) of \"reinforced concrete\"",
                refused(String.format(trim, "reinforced concrete", "0.13"))
                        .getOnly()
                        .got()
                        .toString());
        accepted(String.format(trim, "trim", "0.018"));
        accepted(String.format(trim, "mineral wool board", "0.026"));
        // R of the board becomes 100 mm / 0.017, and the house's surface is held to it.
        accepted(CORNER.replace("0.04, polygon", "0.017, polygon").replace("0.3425", "0.15845"));
    }

    private ImmutableList<Fault> refused(String text) {
        return assertThrows(FileFaultException.class, () -> file(text)).faults();
    }

    @Test
    void endsOfFloorsAndSoilTouchNoAir() throws IOException {
        String floor = """
            section: Floor on a wall
            lengths: mm
            regions:
            - {material: board, conductivity: 0.04, rectangle: [200, -1200, 300, 1400]}
            - {material: masonry, conductivity: 0.8, rectangle: [0, -1200, 200, 1400]}
            - {material: concrete, conductivity: 2.3, rectangle: [-1000, 0, 200, 200]}
            environments:
              indoor: {temperature: 20, surface-resistance: 0.13}
              outdoor: {temperature: 0, surface-resistance: 0.04}
            boundaries:
            - {environment: outdoor, path: [[300, -1200], [300, 1400]]}
            - {environment: indoor, path: [[0, -1200], [0, 0], [-1000, 0]]}
            - {environment: indoor, path: [[-1000, 200], [0, 200], [0, 1400]]}
            junction:
              kind: intermediate floor
              legs:
              - {name: wall, transmittance: 0.3425, external: 1300, internal: 1300, insulation: 100, cut: [[0, -1200], [300, -1200]]}
              - {name: wall above, transmittance: 0.3425, external: 1300, internal: 1300, insulation: 100, cut: [[0, 1400], [300, 1400]]}
            """;
        accepted(floor);
        assertEquals(
                "398 mm of its outline without one",
                faults(floor.replace(
                                "- {environment: outdoor, path: [[300, -1200], [300, 1400]]}",
                                "- {environment: outdoor, path: [[300, -1200], [300, -100]]}\n"
                                        + "- {environment: outdoor, path: [[300, 300], [300, 1400]]}"))
                        .getOnly()
                        .got()
                        .toString());
        String slab = """
            section: Slab on the ground
            lengths: mm
            regions:
            - {material: soil, conductivity: 1.5, rectangle: [-4000, -6000, 6000, -100]}
            - {material: board, conductivity: 0.04, rectangle: [200, -200, 300, 1500]}
            - {material: masonry, conductivity: 0.8, rectangle: [0, -200, 200, 1500]}
            - {material: concrete, conductivity: 2.3, rectangle: [-4000, -200, 0, 0]}
            environments:
              indoor: {temperature: 20, surface-resistance: 0.13}
              outdoor: {temperature: 0, surface-resistance: 0.04}
            boundaries:
            - {environment: outdoor, path: [[300, 1500], [300, -100], [6000, -100]]}
            - {environment: indoor, path: [[-4000, 0], [0, 0], [0, 1500]]}
            junction:
              kind: slab edge
              legs:
              - {name: floor, transmittance: 0.3, external: 4300, internal: 4000, insulation: 0, cut: [[-4000, 0], [-4000, -200]]}
              - {name: wall, transmittance: 0.3425, external: 1700, internal: 1500, insulation: 100, cut: [[0, 1500], [300, 1500]]}
            """;
        accepted(slab);
        assertEquals(
                "5695 mm of its outline without one",
                faults(slab.replace("[300, -100], [6000, -100]]", "[300, -100]]"))
                        .getOnly()
                        .got()
                        .toString());
    }

    @Test
    void airBeforeAFaceResistsWhatItDoesAtTheCuts() throws IOException {
        String outer = "- {environment: outdoor, path: [[-1500, 300], [300, 300], [300, -1500]]}";
        assertTrue(CORNER.contains(outer), CORNER);
        String parted = CORNER.replace(
                outer,
                "- {environment: outdoor, path: [[-1500, 300], [0, 300]]}\n- {environment: outdoor, surface-resistance: %s,"
                        + " path: [[0, 300], [300, 300], [300, 0]]}\n- {environment: outdoor, path: [[300, 0], [300, -1500]]}");
        assertEquals(
                "0.130 m²·K/W of \"outdoor\"",
                faults(parted.formatted("0.13")).getOnly().got().toString());
        accepted(parted.formatted("0.04"));
        accepted(parted.formatted("0.01"));
        // In a loft 0.10 over its floor and 0.13 beside a wall.
        accepted(parted.formatted("0.13").replace("outdoor", "loft").replace("cut: [[", "factor: 0.8, cut: [["));
    }

    /**
     * An L of 40 mm holds a circle of 40·2√2/(1 + √2) = 46.86 mm in its corner: 0.04686·(0.025/0.04686 + 0.818·5.149) = 0.222 W/(m·K)
     * (ISO 6946:2017 annex D, from memory; worked apart).
     */
    @Test
    void airConductsWhatALayerAsWideDoes() throws IOException {
        String air = CORNER.replace(
                "environments:",
                "- {material: air, conductivity: %s, polygon: [[100, 200], [200, 200], [200, 100], [240, 100], [240, 240], [100,"
                        + " 240]]}\nenvironments:");
        Fault still = faults(air.formatted("0.025")).getOnly();
        assertEquals("0.0250 W/(m·K) of \"air\", 47 mm wide", still.got().toString());
        assertEquals("at least 0.222 W/(m·K)", still.allowed().toString());
        assertEquals(6, still.place().line());
        accepted(air.formatted("0.22"));
        accepted(air.formatted("2"));
    }

    /** 20 mm conduct 0.02·(0.025/0.02 + 0.818·5.149) = 0.109, 40 mm 0.04·(0.625 + 4.213) = 0.194 W/(m·K) (as above). */
    @Test
    void stripsOfAirAreOneSpaceAndWhatIsPaintedOverIsNone() throws IOException {
        String strip = "- {material: air, conductivity: 0.12, rectangle: [100, 200, 200, 220]}\n";
        String other = "- {material: %s, conductivity: %s, rectangle: [100, 220, 200, 240]}\n";
        accepted(CORNER.replace("environments:", strip + "environments:"));
        ImmutableList<Fault> split =
                faults(CORNER.replace("environments:", strip + other.formatted("air", "0.12") + "environments:"));
        assertEquals(2, split.size());
        assertEquals("at least 0.194 W/(m·K)", split.getFirst().allowed().toString());
        accepted(CORNER.replace(
                "environments:", strip.replace("220]", "240]") + other.formatted("masonry", "0.8") + "environments:"));
    }

    /** By 3 × 300 mm a leg would have to go on for 0.9 m; a metre is asked for. */
    @Test
    void aCutNearTheSeamIsRefused() throws IOException {
        String near = CORNER.replace("-1500", "-980").replace("1500", "980").replace("1800", "1280");
        assertEquals("980 mm of \"wall\"", faults(near).getFirst().got().toString());
        assertEquals(
                "at least 1000 mm: 1 m, and three times what it is thick",
                faults(near).getFirst().allowed().toString());
        accepted(near.replace("980", "1000").replace("1280", "1300"));
        String pin = CORNER.replace(
                "environments:",
                "- {material: steel, conductivity: 50, rectangle: [-520, 200, -510, 300]}\nenvironments:");
        assertEquals("980 mm of \"wall\"", faults(pin).getOnly().got().toString());
        accepted(pin.replace("-520", "-500").replace("-510", "-490"));
    }

    @Test
    void whatStandsOutIntoTheAirEndsInIt() throws IOException {
        String fin = CORNER.replace(
                        "environments:",
                        "- {material: trim, conductivity: 0.8, rectangle: [300, 100, 600, 300]}\nenvironments:")
                .replace(
                        "[300, 300], [300, -1500]]", "[300, 300], [600, 300]%s, [600, 100], [300, 100], [300, -1500]]");
        accepted(fin.formatted(""));
        assertEquals(
                "198 mm of its outline without one",
                faults(fin.formatted("]}\n- {environment: outdoor, path: [[600, 100]")
                                .replace("[[600, 100], [600, 100]", "[[600, 100]"))
                        .getOnly()
                        .got()
                        .toString());
    }

    @Test
    void whatInsulatesByTheDrawingAloneIsNamed() throws IOException {
        String trim = CORNER.replace(
                "environments:",
                "- {material: %s, conductivity: %s, polygon: [[200, 200], [300, 200], [300, 300], [200, 300]]}\nenvironments:");
        assertEquals("trim", named(trim.formatted("trim", "0.04")));
        assertEquals("", named(trim.formatted("trim", "0.2")));
        assertEquals("", named(trim.formatted("mineral wool board", "0.04")));
        assertEquals("", named(trim.formatted("board", "0.04")));
        assertEquals("board", named(trim.formatted("board", "0.03")));
        Material known = Samples.material("trim", 0.04);
        assertEquals("", named(trim.formatted("trim", "0.039"), known));
        assertEquals("trim", named(trim.formatted("trim", "0.025"), known));
    }

    private String named(String text, Material... house) throws IOException {
        Faults faults = new Faults();
        Detail detail = HandDrawing.detail("drawn", file(text), faults).orElseThrow();
        return ((HandDrawing) detail.drawing())
                .ofItsOwn(Lists.immutable.with(house))
                .collect(each -> each.material())
                .makeString(", ");
    }

    private void accepted(String text) throws IOException {
        Faults faults = new Faults();
        HandDrawing.detail("drawn", file(text), faults);
        faults.throwIfAny();
    }
}
