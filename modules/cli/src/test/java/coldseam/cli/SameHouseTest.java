package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.Audit;
import coldseam.audit.house.HouseAudit;
import coldseam.envelope.Point3;
import coldseam.envelope.shell.Shell;
import coldseam.envelope.shell.ShellView;
import coldseam.envelope.shell.Surface;
import coldseam.files.JsonText;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.QuantityParser;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.JunctionSetup;
import coldseam.report.words.FindingWords;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.set.ImmutableSet;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every fixture house in feet and inches, with its keys in another order, turned and mirrored: another file, the same house. */
@Tag("slow")
@Execution(ExecutionMode.CONCURRENT)
class SameHouseTest {

    private static final FindingWords WORDS = new FindingWords(UnitSystem.SI);
    private static final Path HOUSES = CommittedReport.ROOT.resolve("fixtures/houses");
    private static final Pattern EAST_WEST = Pattern.compile("\\b(east|west)\\b");

    private static final Map<String, Double> METRES = Map.of("m", 1.0, "mm", 0.001, "ft", 0.3048, "in", 0.0254);

    /** Degrees of azimuth. */
    private static final int BETWEEN_SIDES = 45;

    @TempDir
    Path folder;

    static List<Path> houses() throws IOException {
        List<Path> houses = new ArrayList<>();
        for (String each : List.of("", "shapes", "twice")) {
            try (Stream<Path> files = Files.list(HOUSES.resolve(each))) {
                files.filter(file -> file.toString().endsWith(".yaml")).sorted().forEach(houses::add);
            }
        }
        return houses;
    }

    @ParameterizedTest
    @MethodSource("houses")
    void anotherFileTheSameHouse(Path file) throws IOException {
        Path details = Files.createDirectories(folder.resolve("details"));
        try (Stream<Path> own = Files.list(HOUSES.resolve("details"))) {
            for (Path each : own.toList()) {
                Files.copy(each, details.resolve(each.getFileName()));
            }
        }
        Object tree = Mutator.tree(Files.readString(file));
        Audit expected = Bench.shared(file);
        if (file.getParent().endsWith("shapes")) {
            // People start from these: weak spots there may be, but no gap.
            assertTrue(expected.verdict().unbroken(), () -> titles(expected).makeString("\n"));
        }
        Shell shell = expected.shell();
        Object fromTheRight = fromTheRight(tree, shell.surfaces().newWithAll(shell.steps()));
        Object mirrored = moved(fromTheRight, p -> turned(new double[] {-p[0], p[1]}));
        Object inFeet = texts(reordered(mirrored), text -> feet(eastForWest(text)));
        Audit found = same(expected, inFeet, "mirrored and turned, reordered, in feet");
        if (file.endsWith("first-house.yaml")) {
            assertEquals(asked(expected), asked(found), "a house that is turned is solved once");
        }
    }

    /** From all sides: slivers that the picture's grid leaves of a surface stop no drawing. */
    @ParameterizedTest
    @MethodSource("houses")
    void everyHouseCanBeDrawn(Path file) {
        Shell shell = Bench.shared(file).shell();
        // From each side a little higher than from the next, and with the next house from a little beside it.
        int beside = Math.floorMod(file.getFileName().hashCode(), BETWEEN_SIDES);
        for (int side = 0; side < 360 / BETWEEN_SIDES; side++) {
            boolean higher = side % 2 == 0;
            double azimuth = beside + BETWEEN_SIDES * side + (higher ? 5.5 : 0);
            assertFalse(ShellView.of(shell, azimuth, higher ? 30 : 28).patches().isEmpty());
        }
    }

    private static ImmutableSet<JunctionSetup> asked(Audit audit) {
        return audit.sheets().collect(sheet -> sheet.result().setup()).toImmutableSet();
    }

    private Audit same(Audit expected, Object tree, String how) throws IOException {
        Audit found = HouseAudit.of(
                        Files.writeString(folder.resolve(how + ".json"), JsonText.write(tree)), Bench.SHARED)
                .compute();
        assertEquals(titles(expected), titles(found), how);
        assertEquals(expected.sheets().size(), found.sheets().size(), how + ": sheets");
        assertEquals(expected.junctions().size(), found.junctions().size(), how + ": junctions");
        assertEquals(
                expected.heatLoss().total().middle(),
                found.heatLoss().total().middle(),
                Bench.OF_ONE_HOUSE,
                how + ": H_T");
        assertEquals(
                expected.heatLoss().total().width(),
                found.heatLoss().total().width(),
                Bench.OF_ONE_HOUSE,
                how + ": width of H_T");
        return found;
    }

    private static ImmutableList<String> titles(Audit audit) {
        // Of two walls on one side the second is the first one in a mirror.
        return audit.findings()
                .collect(finding -> WORDS.title(finding).replaceAll("wall \\d+", "wall"))
                .toSortedList()
                .toImmutable();
    }

    /** The last key first, at every level. */
    private static Object reordered(Object tree) {
        if (tree instanceof Map<?, ?> map) {
            List<Object> keys = new ArrayList<>(map.keySet());
            java.util.Collections.reverse(keys);
            Map<String, Object> other = new LinkedHashMap<>();
            keys.forEach(key -> other.put((String) key, reordered(map.get(key))));
            return other;
        }
        return tree instanceof List<?> list
                ? list.stream().map(SameHouseTest::reordered).toList()
                : tree;
    }

    /** All texts, keys among them, written otherwise. */
    private static Object texts(Object tree, UnaryOperator<String> change) {
        if (tree instanceof Map<?, ?> map) {
            Map<String, Object> other = new LinkedHashMap<>();
            map.forEach((key, value) -> other.put(change.apply((String) key), texts(value, change)));
            return other;
        }
        if (tree instanceof List<?> list) {
            return list.stream().map(each -> texts(each, change)).toList();
        }
        return tree instanceof String text ? change.apply(text) : tree;
    }

    private static String feet(String text) {
        return text.matches("-?[0-9.]+ m")
                ? in(List.of("ft", "in"), text)
                : text.matches("-?[0-9.]+ mm") ? in(List.of("in", "ft"), text) : text;
    }

    /**
     * A length in another unit, written such that it is read as the very same number: equal sections are solved once. No double of
     * inches is read as 15 mm; one of feet is.
     */
    private static String in(List<String> units, String text) {
        double metres = QuantityParser.parse(text, Dimension.LENGTH);
        return units.stream()
                .flatMap(unit -> {
                    double near = metres / METRES.get(unit);
                    return DoubleStream.of(near, Math.nextUp(near), Math.nextDown(near))
                            .mapToObj(each -> each + " " + unit);
                })
                .filter(each -> QuantityParser.parse(each, Dimension.LENGTH) == metres)
                .findFirst()
                .orElse(metres / METRES.get(units.get(0)) + " " + units.get(0));
    }

    private static String eastForWest(String text) {
        return EAST_WEST.matcher(text).replaceAll(found -> found.group().equals("east") ? "west" : "east");
    }

    private static double metres(Object length) {
        String[] parts = length.toString().split(" ");
        double sum = 0;
        for (int i = 0; i < parts.length; i += 2) {
            sum += Double.parseDouble(parts[i]) * METRES.get(parts[i + 1]);
        }
        return sum;
    }

    private static String say(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }

    private static double[] turned(double[] p) {
        double sine = Math.sin(Math.toRadians(17));
        double cosine = Math.cos(Math.toRadians(17));
        return new double[] {p[0] * cosine - p[1] * sine, p[0] * sine + p[1] * cosine};
    }

    /** All outlines in plan, rectangles written as their four corners. */
    private static Object moved(Object tree, UnaryOperator<double[]> move) {
        if (tree instanceof Map<?, ?> map && map.containsKey("rectangle")) {
            List<?> size = (List<?>) map.get("rectangle");
            List<?> at = map.containsKey("at") ? (List<?>) map.get("at") : List.of("0 m", "0 m");
            double x = metres(at.get(0));
            double y = metres(at.get(1));
            double east = x + metres(size.get(0));
            double north = y + metres(size.get(1));
            return Stream.of(new double[] {x, y}, new double[] {east, y}, new double[] {east, north}, new double[] {
                        x, north
                    })
                    .map(p -> corner(move.apply(p)))
                    .toList();
        }
        if (tree instanceof Map<?, ?> map) {
            Map<String, Object> other = new LinkedHashMap<>();
            map.forEach((key, value) -> other.put((String) key, moved((String) key, value, move)));
            return other;
        }
        return tree instanceof List<?> list
                ? list.stream().map(each -> moved(each, move)).toList()
                : tree;
    }

    private static Object moved(String key, Object value, UnaryOperator<double[]> move) {
        if (key.equals("points")
                && value instanceof Map<?, ?> map
                && map.values().iterator().next() instanceof List<?>) {
            return points(map, move);
        }
        if (key.equals("points") && value instanceof List<?> outline) {
            // What runs round counterclockwise runs clockwise in a mirror.
            List<Object> back = new ArrayList<>(outline);
            java.util.Collections.reverse(back);
            return back;
        }
        if (key.equals("courts") && value instanceof Map<?, ?> courts) {
            Map<String, Object> other = new LinkedHashMap<>();
            courts.forEach((name, court) -> other.put((String) name, moved("footprint", court, move)));
            return other;
        }
        return (key.equals("footprint") || key.equals("area")) && value instanceof List<?> list
                ? list.stream()
                        .map(p -> corner(move.apply(
                                new double[] {metres(((List<?>) p).get(0)), metres(((List<?>) p).get(1))})))
                        .toList()
                : moved(value, move);
    }

    /** Corners of explicit surfaces: moved in plan, as high as they were. */
    private static Map<String, Object> points(Map<?, ?> points, UnaryOperator<double[]> move) {
        Map<String, Object> other = new LinkedHashMap<>();
        points.forEach((name, value) -> {
            List<?> at = (List<?>) value;
            List<Object> to = new ArrayList<>(corner(move.apply(new double[] {metres(at.get(0)), metres(at.get(1))})));
            to.add(at.get(2));
            other.put((String) name, to);
        });
        return other;
    }

    private static List<String> corner(double[] p) {
        return List.of(say("%.9f m", p[0]), say("%.9f m", p[1]));
    }

    /** What lies so far from the left end of its surface lies so far from the right end of the mirrored one. */
    private static Object fromTheRight(Object tree, ImmutableList<Surface> surfaces) {
        if (tree instanceof Map<?, ?> map) {
            Map<String, Object> other = new LinkedHashMap<>();
            map.forEach((key, value) -> other.put((String) key, fromTheRight(value, surfaces)));
            if (map.containsKey("left") && map.containsKey("surface")) {
                double wide = wide(surfaces, (String) map.get("surface"));
                other.put("left", fromTheRight(map, wide));
                if (map.get("light-well") instanceof Map<?, ?> well && well.containsKey("left")) {
                    Map<String, Object> turned = new LinkedHashMap<>();
                    well.forEach((key, value) -> turned.put((String) key, value));
                    turned.put("left", fromTheRight(well, wide));
                    other.put("light-well", turned);
                }
            }
            return other;
        }
        return tree instanceof List<?> list
                ? list.stream().map(each -> fromTheRight(each, surfaces)).toList()
                : tree;
    }

    /** The left end of an opening, or of the first in a row, in the mirror. */
    private static String fromTheRight(Map<?, ?> opening, double wide) {
        int more = opening.containsKey("count") ? ((Number) opening.get("count")).intValue() - 1 : 0;
        double width = metres(opening.get("width"));
        double row = width + (more > 0 ? more * (width + metres(opening.get("spacing"))) : 0);
        return say("%.9f m", wide - metres(opening.get("left")) - row);
    }

    /** Of a wall that the ground parts, all of it. */
    private static double wide(ImmutableList<Surface> surfaces, String name) {
        ImmutableList<Point3> outline = surfaces.select(
                        each -> each.name().equals(name) || each.name().startsWith(name + ", "))
                .flatCollect(Surface::outline);
        double widest = 0;
        for (Point3 a : outline) {
            for (Point3 b : outline) {
                widest = Math.max(widest, Math.hypot(a.x() - b.x(), a.y() - b.y()));
            }
        }
        return widest;
    }
}
