package coldseam.audit.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.envelope.Assembly;
import coldseam.envelope.Body;
import coldseam.envelope.House;
import coldseam.envelope.shell.Edge;
import coldseam.envelope.shell.Shell;
import coldseam.envelope.shell.ShellBuilder;
import coldseam.envelope.shell.Surface;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Houses written otherwise, which lose what they lost: nothing is solved for it. What is solved is compared by SameHouseTest. */
class AlteredHouseTest {

    /** m, m² and W/K: sums of some dozens of lengths whose ends lie on a lattice of 0.1 mm. */
    private static final double LATTICE = 5e-3;

    private static final Pattern FOOTPRINT = Pattern.compile("footprint: \\[(\\[.*?])](?=,)");
    private static final Pattern CORNER = Pattern.compile("\\[(-?[0-9.]+) m, (-?[0-9.]+) m]");
    private static final Pattern LENGTH = Pattern.compile("(-?[0-9.]+) m(?=[],}])");

    private static final Map<String, String> BODIES = Map.of(
            "walls that step over a storey",
            """
                    body:
                      footprint-line: outer face
                      storeys:
                      - {name: ground floor, footprint: [[0 m, 0 m], [9 m, 0 m], [9 m, 7 m], [0 m, 7 m]], height: 2.8 m, walls: wall}
                      - {name: loft, footprint: [[0 m, 0 m], [9 m, 0 m], [9 m, 7 m], [0 m, 7 m]], height: 1.2 m, floor-thickness: 300 mm, walls: thick}
                      base: {kind: slab on ground, assembly: slab}
                      roof: {form: hip, assembly: roof, pitch: 35 °}
                    """,
            "a cellar under a wing",
            """
                    body:
                      footprint-line: structure
                      storeys:
                      - {name: house, footprint: [[0 m, 0 m], [11 m, 0 m], [11 m, 6.5 m], [0 m, 6.5 m]], height: 3 m, walls: wall}
                      base: {kind: slab on ground, assembly: slab}
                      roof: {form: flat, assembly: roof}
                      wings:
                        wing:
                          storeys:
                          - {name: cellar, footprint: [[-1.5 m, 6.5 m], [3 m, 6.5 m], [3 m, 11.5 m], [-1.5 m, 11.5 m]], height: 2.3 m, walls: cellar}
                          - {name: over it, footprint: [[-1.5 m, 6.5 m], [3 m, 6.5 m], [3 m, 11.5 m], [-1.5 m, 11.5 m]], height: 2.4 m, floor-thickness: 250 mm, walls: wall}
                          base: {kind: heated cellar, assembly: slab, depth: 2.3 m}
                          roof: {form: flat, assembly: roof}
                    """,
            "floors of two thicknesses",
            """
                    body:
                      footprint-line: structure
                      storeys:
                      - {name: house, footprint: [[0 m, 0 m], [8 m, 0 m], [8 m, 7.5 m], [0 m, 7.5 m]], height: 2.8 m, walls: wall}
                      base: {kind: suspended, assembly: roof, crawl-space: {height: 0.4 m, vents: 0.0015 m²/m, wall-transmittance: 1.5 W/(m²·K)}}
                      roof: {form: flat, assembly: roof}
                      wings:
                        wing:
                          storeys:
                          - {name: wing, footprint: [[-1.8 m, 5.5 m], [3.2 m, 5.5 m], [3.2 m, 10.5 m], [-1.8 m, 10.5 m]], height: 2.4 m, walls: wall}
                          base: {kind: slab on ground, assembly: slab, level: 0.4 m}
                          roof: {form: flat, assembly: roof}
                    """,
            "a wing above the house's floor",
            """
                    body:
                      footprint-line: outer face
                      storeys:
                      - {name: house, footprint: [[0 m, 0 m], [10.5 m, 0 m], [10.5 m, 9 m], [0 m, 9 m]], height: 2.8 m, walls: wall}
                      base: {kind: slab on ground, assembly: slab, level: 0.2 m}
                      roof: {form: flat, assembly: roof}
                      wings:
                        wing:
                          storeys:
                          - {name: wing, footprint: [[10.5 m, 2.5 m], [16.5 m, 2.5 m], [16.5 m, 8.5 m], [10.5 m, 8.5 m]], height: 2.8 m, walls: wall}
                          base: {kind: over unheated, assembly: roof, faces: shed, level: 0.7 m}
                          roof: {form: flat, assembly: roof}
                    """);

    private static final String MORE = """
              thick:
                layers:
                - {material: gypsum plaster, thickness: 15 mm, role: finish, controls: [air, vapour]}
                - {material: lightweight clay block, thickness: 240 mm, role: structure}
                - {material: mineral wool board, thickness: 220 mm, role: insulation, controls: [heat]}
                - {material: thin-coat render, thickness: 10 mm, role: cladding, controls: [water]}
              cellar:
                layers:
                - {material: reinforced concrete, thickness: 240 mm, role: structure, controls: [air, vapour]}
                - {material: extruded polystyrene board, thickness: 140 mm, role: insulation, controls: [heat, water]}
            neighbours: {shed: {temperature-factor: 0.8}}
            """;

    private static final Map<String, UnaryOperator<String>> CHANGES = Map.of(
            "all walls in halves",
            text -> cut(text, 0.5),
            // Where a wing or the house begins, within the thickness of the wall that meets the cut one there.
            "all walls cut at three tenths",
            text -> cut(text, 0.3),
            "all walls cut at three quarters",
            text -> cut(text, 0.75),
            "in feet",
            text -> LENGTH.matcher(text).replaceAll(m -> Double.parseDouble(m.group(1)) / 0.3048 + " ft"),
            "its build-ups named otherwise",
            text -> text.replaceAll("\\bthick\\b(?!ness)", "a wall").replaceAll("\\bslab\\b(?! on| edge)", "z floor"),
            "its layers in halves",
            AlteredHouseTest::halved,
            "mirrored",
            text -> outlines(text, AlteredHouseTest::mirrored),
            "each outline begun at another corner",
            text -> outlines(text, corners -> {
                List<double[]> other = new ArrayList<>(corners.subList(1, corners.size()));
                other.add(corners.get(0));
                return other;
            }));

    static Stream<Arguments> houses() {
        return BODIES.keySet().stream()
                .sorted()
                .flatMap(house -> CHANGES.keySet().stream().sorted().map(change -> Arguments.of(house, change)));
    }

    @ParameterizedTest(name = "{0}, {1}")
    @MethodSource("houses")
    void losesWhatItLost(String house, String change) throws IOException {
        String text = Files.readString(
                Path.of(System.getProperty("coldseam.root"), "fixtures", "houses", "first-house.yaml"));
        String all = text.substring(0, text.indexOf("body:")) + MORE + BODIES.get(house);
        String other = CHANGES.get(change).apply(all);
        assertTrue(!other.equals(all) || change.startsWith("its build-ups"), "it is written otherwise");
        Map<String, Double> expected = sums(all);
        Map<String, Double> found = sums(other);
        assertEquals(expected.keySet(), found.keySet());
        expected.forEach((what, sum) -> assertEquals(sum, found.get(what), LATTICE, what));
    }

    /** What a house is added up to, apart by all that two parts of it must have in common; build-ups by their thickness. */
    private static Map<String, Double> sums(String text) {
        House house = Sample.house(text);
        Shell shell = ShellBuilder.build(house);
        Map<String, Double> sums = new TreeMap<>();
        sums.put("volume outside", shell.externalVolume());
        sums.put("volume inside", shell.internalVolume());
        sums.put("floor area", shell.floorArea());
        sums.put("exposed perimeter", shell.exposedPerimeter());
        for (SurfaceHeat heat : new SurfaceHeats(house, shell, true).compute()) {
            Surface surface = heat.surface();
            String what = surface.use() + " " + built(surface) + " "
                    + surface.exposure().kind();
            sums.merge(what + ", area outside", surface.externalArea(), Double::sum);
            sums.merge(what + ", area inside", surface.internalArea(), Double::sum);
            sums.merge(what + ", heat", surface.externalArea() * heat.transmittance(), Double::sum);
        }
        for (Edge edge : shell.edges()) {
            String between = edge.surfaces()
                    .collect(AlteredHouseTest::built)
                    .toSortedList()
                    .makeString(" and ");
            String what = edge.kind().label() + " " + between + Math.round(edge.angle());
            sums.merge(what + ", length outside", edge.externalLength(), Double::sum);
            sums.merge(what + ", length inside", edge.internalLength(), Double::sum);
        }
        return sums;
    }

    private static String built(Surface surface) {
        return surface.assembly()
                .map(each -> surface.use() == Body.Use.WALL ? thickness(each) : "")
                .orElse("");
    }

    private static String thickness(Assembly assembly) {
        return String.format(Locale.ROOT, "of %.3f m", assembly.thickness());
    }

    private static String outlines(String text, UnaryOperator<List<double[]>> change) {
        return FOOTPRINT.matcher(text).replaceAll(found -> {
            List<double[]> corners = new ArrayList<>();
            Matcher corner = CORNER.matcher(found.group(1));
            while (corner.find()) {
                corners.add(new double[] {Double.parseDouble(corner.group(1)), Double.parseDouble(corner.group(2))});
            }
            return "footprint: "
                    + change.apply(corners).stream()
                            .map(each -> String.format(Locale.ROOT, "[%.6f m, %.6f m]", each[0], each[1]))
                            .toList();
        });
    }

    private static List<double[]> mirrored(List<double[]> corners) {
        List<double[]> other = new ArrayList<>();
        corners.forEach(each -> other.add(0, new double[] {-each[0], each[1]}));
        return other;
    }

    private static String cut(String text, double share) {
        return outlines(text, corners -> {
            List<double[]> other = new ArrayList<>();
            for (int i = 0; i < corners.size(); i++) {
                double[] from = corners.get(i);
                double[] to = corners.get((i + 1) % corners.size());
                other.add(from);
                other.add(new double[] {from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])});
            }
            return other;
        });
    }

    private static String halved(String text) {
        return Pattern.compile("(?m)^( *- \\{material: [^,]*board, thickness: )([0-9]+)( mm.*)$")
                .matcher(text)
                .replaceAll(found -> {
                    String half = found.group(1) + Integer.parseInt(found.group(2)) / 2 + found.group(3);
                    return half + "\n" + half;
                });
    }
}
