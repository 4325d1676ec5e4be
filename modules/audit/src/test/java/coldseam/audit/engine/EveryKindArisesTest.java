package coldseam.audit.engine;

import coldseam.audit.house.BuiltInWorkshop;
import coldseam.audit.house.HouseAudit;
import coldseam.conduction.Accuracy;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.KindForm;
import coldseam.envelope.Seam;
import coldseam.envelope.shell.Edge;
import coldseam.files.SameNames;
import coldseam.junctions.BridgeComputer;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.Keeping;
import coldseam.junctions.compute.BridgeComputers;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.path.WeakestPaths;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.set.ImmutableSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * No kind of junction is there in vain: some house has each, and some detail of it fits there. What geometry shows must come of
 * the shape; what it cannot show is listed under {@code seams}. Nothing is solved.
 */
class EveryKindArisesTest {

    private static final Path HOUSES = Path.of(System.getProperty("coldseam.root"), "fixtures", "houses");

    /** Seams of what no shape shows but its own file: a porch takes its length out of the slab's edge, where the shape has one. */
    private static final JunctionKind PORCH = JunctionKind.of("porch slab against the house");

    private static final String BOX_WALLS = "    walls: wall\n";

    private static final String UPPER_FLOOR = """
              - name: upper floor
                footprint: {rectangle: [8 m, 6 m]}
                height: 2.6 m
                floor-thickness: 250 mm
                walls: %s
            """;

    /** Build-ups beside those of the box. */
    private static final String MORE = """

              stud wall:
                layers:
                - {material: gypsum plasterboard, thickness: 12.5 mm, role: finish, controls: [air, vapour]}
                - {material: mineral wool batt, thickness: 140 mm, role: structure, framing: {material: softwood, share: 15 %}}
                - {material: mineral wool board, thickness: 200 mm, role: insulation, controls: [heat]}
                - {material: thin-coat render, thickness: 10 mm, role: cladding, controls: [water]}
              veneered wall:
                layers:
                - {material: gypsum plasterboard, thickness: 12.5 mm, role: finish, controls: [air, vapour]}
                - {material: mineral wool batt, thickness: 140 mm, role: structure, framing: {material: softwood, share: 15 %}}
                - {material: mineral wool board, thickness: 150 mm, role: insulation, controls: [heat]}
                - {material: breather membrane, thickness: 0.5 mm, role: membrane, controls: [water]}
                - {material: air, thickness: 40 mm, role: air layer, air: {ventilation: well ventilated}}
                - {material: clay brick, thickness: 100 mm, role: cladding}
              inner wall:
                layers:
                - {material: lime plaster, thickness: 15 mm, role: finish, controls: [air, vapour]}
                - {material: wood fibre insulation board, thickness: 100 mm, role: insulation, controls: [heat]}
                - {material: old solid brick, thickness: 360 mm, role: structure}
                - {material: cement render, thickness: 20 mm, role: cladding, controls: [water]}
              party wall:
                layers:
                - {material: gypsum plaster, thickness: 15 mm, role: finish, controls: [air]}
                - {material: clay brick, thickness: 240 mm, role: structure}
                - {material: gypsum plaster, thickness: 15 mm, role: cladding}
              slab:
            """;

    /** Neighbours before what stands under the key body. */
    private static final String NEIGHBOURS = """

            neighbours:
              garage: {temperature-factor: 0.8}
              cellar: {temperature-factor: 0.6}
              next door: {heated: true}
            body:""";

    private static final String FOOTPRINT = "{rectangle: [8 m, 6 m]}";

    /** The same, its first side in two. */
    private static final String IN_TWO = "[[0 m, 0 m], [3 m, 0 m], [8 m, 0 m], [8 m, 6 m], [0 m, 6 m]]";

    /** Answers to nothing: whoever is asked has been drawn, so the detail fits. */
    private static final class Drawn extends RuntimeException {
        private static final long serialVersionUID = 1;
    }

    private static final BridgeComputer DRAWING = BridgeComputers.computer(
            Accuracy.standard(),
            (section, accuracy) -> {
                throw new Drawn();
            },
            (body, accuracy) -> {
                throw new Drawn();
            },
            WeakestPaths::of,
            Keeping.NOTHING);

    @TempDir
    Path folder;

    private final Set<String> arisen = new TreeSet<>();
    private final Set<String> fitting = new TreeSet<>();

    @Test
    void someHouseHasEachAndSomeDetailFits() throws IOException {
        for (String each : Lists.immutable.of("", "shapes", "twice", "old")) {
            try (Stream<Path> files = Files.list(HOUSES.resolve(each))) {
                for (Path file : files.filter(file -> file.toString().endsWith(".yaml"))
                        .sorted()
                        .toList()) {
                    look(file);
                }
            }
        }
        String box = read("planted/box.yaml").replace("\n  slab:\n", MORE).replace("\nbody:", NEIGHBOURS);
        lookAtThings(box);
        lookAtWalls(box);
        lookAtFloorsAndRoofs(box);
        ImmutableList<String> all = JunctionKind.all().collect(JunctionKind::label);
        SameNames.check(all, arisen, "no house here has these: make a house that does, or make them reachable");
        SameNames.check(all, fitting, "no detail of these fits where they arise: see the details' ranges");
    }

    private static String read(String house) throws IOException {
        return Files.readString(HOUSES.resolve(house));
    }

    /** What the shape does not show, and openings that have kinds of their own. */
    private void lookAtThings(String box) throws IOException {
        look("things", box, BOX_WALLS, "    walls: {all: wall, west: veneered wall}\n", "\njunctions:", """

                openings:
                  window: {kind: window, surface: room east wall, width: 1.2 m, height: 1.2 m, sill: 0.9 m, shutter-box: true, transmittance: 0.9 W/(m²·K), frame-transmittance: 1.0 W/(m²·K)}
                  rooflight: {kind: window, surface: roof, width: 1 m, height: 1 m, left: 3 m, sill: 2 m, transmittance: 0.9 W/(m²·K), frame-transmittance: 1.0 W/(m²·K)}
                seams:
                  partition: {kind: partition, surface: room east wall, length: 2.4 m}
                  ledger: {kind: ledger, surface: room north wall, length: 3 m}
                  canopy: {kind: canopy, surface: room north wall, length: 2 m}
                  balcony: {kind: balcony, surface: room north wall, length: 3 m}
                  porch roof: {kind: porch roof, surface: room north wall, length: 2 m}
                  porch: {kind: porch slab against the house, surface: room north wall, length: 2 m}
                  bearing wall: {kind: bearing wall through the slab's insulation, surface: lowest floor, length: 5 m}
                  ledge: {kind: masonry veneer ledge, surface: room west wall, length: 5 m}
                junctions:""");
        look("old", box, BOX_WALLS, "    walls: {all: wall, south: inner wall}\n", "\njunctions:", """

                retrofit: {taken-down: [roof]}
                seams:
                  inner wall: {kind: partition at inside insulation, surface: room south wall, length: 2.4 m}
                  stair: {kind: stair at inside insulation, surface: room south wall, length: 3 m}
                  joists: {kind: joist bay at inside insulation, surface: room south wall, length: 7 m}
                junctions:""");
        look("balloon frame", read("old/boards-over-siding.yaml"), "retrofit: {", "retrofit: {balloon-frame: true, ");
    }

    private void lookAtWalls(String box) throws IOException {
        look("neighbours", box, FOOTPRINT, IN_TWO, BOX_WALLS, """
                    walls: {all: wall, side 1: {assembly: wall, faces: garage}, east: {assembly: party wall, faces: next door}}
                """);
        look(
                "past a neighbour",
                box,
                BOX_WALLS,
                "    walls: {all: wall, east: {assembly: party wall, faces: next door}}\n"
                        + UPPER_FLOOR.formatted("wall"));
        String inside = box.replace("footprint-line: structure", "footprint-line: inner face");
        look("beside", inside, FOOTPRINT, IN_TWO, BOX_WALLS, "    walls: {all: wall, side 1: stud wall}\n");
        look("above", inside, BOX_WALLS, BOX_WALLS + UPPER_FLOOR.formatted("stud wall"));
    }

    private void lookAtFloorsAndRoofs(String box) throws IOException {
        look("over a cellar", box, "kind: slab on ground", "kind: over unheated\n    faces: cellar");
        look("over a flat", box, "kind: slab on ground", "kind: over unheated\n    faces: next door");
        look(
                "a deck beside a roof",
                box,
                BOX_WALLS,
                BOX_WALLS + """
                    terrace: roof
                    lower-roof: {assembly: roof, area: {rectangle: [4 m, 2 m]}}
                """ + UPPER_FLOOR.formatted("wall").replace("6 m]}", "4 m], at: [0 m, 2 m]}"));
        look("holes in the ceiling", read("twice/cold-loft-by-storeys.yaml"), "\njunctions:", """

                openings:
                  hatch: {kind: door, surface: top ceiling, width: 0.6 m, height: 0.8 m, left: 2 m, sill: 2 m, transmittance: 0.8 W/(m²·K)}
                  skylight: {kind: window, surface: top ceiling, width: 0.8 m, height: 1 m, left: 6 m, sill: 2 m, transmittance: 1.1 W/(m²·K), frame-transmittance: 1.3 W/(m²·K)}
                junctions:""");
    }

    /** A house, changed: texts that stand in it once, each with what takes its place. */
    private void look(String name, String house, String... changes) throws IOException {
        String text = house;
        for (int i = 0; i < changes.length; i += 2) {
            if (text.indexOf(changes[i]) < 0 || text.indexOf(changes[i]) != text.lastIndexOf(changes[i])) {
                throw new IllegalArgumentException(name + ": not once in its house: " + changes[i]);
            }
            text = text.replace(changes[i], changes[i + 1]);
        }
        look(Files.writeString(folder.resolve(name + ".yaml"), text));
    }

    private void look(Path file) {
        HouseAudit house = HouseAudit.of(file, new BuiltInWorkshop());
        ImmutableSet<String> listed = house.house().seams().collect(Seam::name).toImmutableSet();
        new JunctionPlan(house.house(), house.shell(), house.catalogue())
                .plan()
                .select(planned -> isWhereItBelongs(planned.edge(), listed))
                .forEach(planned -> {
                    String kind = planned.edge().kind().label();
                    arisen.add(kind);
                    if (!fitting.contains(kind)
                            && planned.bridge()
                                    .setup()
                                    .filter(setup ->
                                            planned.bridge().options().anySatisfy(detail -> fits(detail, setup)))
                                    .isPresent()) {
                        fitting.add(kind);
                    }
                });
    }

    /** Whether what the shape can show is shown by it, and the rest listed. */
    private static boolean isWhereItBelongs(Edge edge, ImmutableSet<String> listed) {
        boolean thing = edge.kind().form().second() == KindForm.Second.THING
                && edge.kind() != JunctionKind.LIGHT_WELL
                && edge.kind().storeyFloor().isEmpty();
        return listed.contains(edge.name()) == (thing || edge.kind() == PORCH);
    }

    private static boolean fits(Detail detail, JunctionSetup setup) {
        try {
            DRAWING.compute(detail, setup);
            throw new IllegalStateException(detail.who() + " was answered without a solve");
        } catch (Drawn drawn) {
            return true;
        } catch (DetailDoesNotFit misfit) {
            return false;
        }
    }
}
