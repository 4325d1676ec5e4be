package coldseam.junctions.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.conduction.Accuracy;
import coldseam.envelope.Assembly;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Role;
import coldseam.files.Fault;
import coldseam.files.FileFaultException;
import coldseam.files.KnownNames;
import coldseam.junctions.BridgeComputer;
import coldseam.junctions.BuiltIn;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.Samples;
import coldseam.junctions.TypicalSetups;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.detail.DetailFile;
import coldseam.junctions.detail.Rank;
import coldseam.junctions.section.Composition;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The built-in details, all of them, and a house's own. */
@Execution(ExecutionMode.CONCURRENT)
class CatalogueFileTest {

    private static final BridgeComputer COMPUTER = Samples.computer(new Accuracy(3e-3, 60_000), 10);

    static Stream<Arguments> ids() {
        return CatalogueFile.builtIn().junctions().castToList().stream()
                .map(detail -> Arguments.of(detail.id(), detail.kind().label()));
    }

    static Stream<JunctionKind> kinds() {
        return CatalogueFile.builtIn().junctions().collect(Detail::junction).distinct().castToList().stream();
    }

    @Test
    void everyIdIsItsFilesNameAndStandsOnceForAKind() {
        ImmutableList<Detail> all = CatalogueFile.builtIn().junctions();
        assertEquals(
                all.size(),
                all.collect(each -> each.id() + each.kind().label()).distinct().size());
        all.collect(Detail::id)
                .each(id -> assertTrue(CatalogueFile.class.getResource("/details/" + id + ".yaml") != null, id));
    }

    /** On Windows many a name is none, elsewhere the one with a null character. */
    @Test
    void aNameThatNoFileCanHaveIsUnknown(@TempDir Path folder) {
        assertFalse(CatalogueFile.names(Lists.immutable.empty(), folder).has().test("own\0.yaml"));
        assertEquals(
                CatalogueFile.builtIn().details(),
                CatalogueFile.withOwn(
                                CatalogueFile.builtIn(),
                                folder,
                                Lists.immutable.of("own\0.yaml"),
                                Lists.immutable.empty(),
                                Lists.immutable.empty())
                        .details());
    }

    @ParameterizedTest
    @MethodSource("ids")
    void composesWithoutSlits(String id, String kind) {
        Detail detail = CatalogueFile.builtIn().find(id, JunctionKind.of(kind)).orElseThrow();
        Composition composition = BuiltIn.composed(detail, Samples.setup(detail));
        assertFalse(
                composition.notes().anySatisfy(note -> note.startsWith("A hole") || note.startsWith("Parts")),
                () -> composition.notes().makeString());
    }

    @Tag("slow")
    @ParameterizedTest
    @MethodSource("ids")
    void dimensionSystemsDifferByTheLegsExactly(String id, String kind) {
        Detail detail = CatalogueFile.builtIn().find(id, JunctionKind.of(kind)).orElseThrow();
        JunctionSetup setup = Samples.setup(detail);
        Composition composition = BuiltIn.composed(detail, setup);
        double difference = 0;
        for (int i = 0; i < composition.legs().size(); i++) {
            JunctionResult.Leg leg = composition.legs().get(i);
            difference +=
                    composition.factors().get(i) * leg.transmittance() * (leg.externalLength() - leg.internalLength());
        }
        JunctionResult result = COMPUTER.compute(detail, setup);
        assertEquals(
                difference, result.psiInternal().lower() - result.psiExternal().lower(), 1e-12);
        assertEquals(
                difference, result.psiInternal().upper() - result.psiExternal().upper(), 1e-12);
        assertTrue(result.weakestPath().ratio() > 0 && result.weakestPath().ratio() <= 1);
        assertTrue(result.temperatureFactor() > 0 && result.temperatureFactor() < 1);
        assertTrue(result.solution().met(), () -> result.solution().notes().makeString());
    }

    /** Each kind has a good and a bad option, and the computed psi agrees with the trade's judgement. */
    @Tag("slow")
    @ParameterizedTest
    @MethodSource("kinds")
    void theWorstOptionComesOutWorst(JunctionKind kind) {
        ImmutableList<Detail> options = CatalogueFile.builtIn().options(kind).select(TypicalSetups::usual);
        Detail worst = options.getFirst();
        Detail best = options.getLast();
        assertEquals(Rank.WORST, worst.rank());
        assertEquals(Rank.BEST, best.rank());
        JunctionResult bad = COMPUTER.compute(worst, Samples.setup(kind));
        JunctionResult good = COMPUTER.compute(best, Samples.setup(kind));
        assertTrue(
                good.psiExternal().upper() < bad.psiExternal().lower(),
                () -> "best " + good.psiExternal() + ", worst " + bad.psiExternal());
        assertTrue(good.temperatureFactor() > bad.temperatureFactor());
        assertTrue(good.penLine().unbroken());
    }

    @Test
    void anOwnDetailIsFoundUnderItsPath(@TempDir Path folder) throws IOException {
        String text = Files.readString(Path.of(System.getProperty("coldseam.root"))
                .resolve("modules/junctions/src/main/resources/details/jamb-middle-lapped.yaml"));
        Files.createDirectories(folder.resolve("details"));
        Files.writeString(
                folder.resolve("details/my-jamb.yaml"),
                text.replace("lap: {value: 40 mm", "lap: {value: 15 mm")
                        .replace("detail: jamb-middle-lapped", "detail: my-jamb"));
        Catalogue catalogue = CatalogueFile.withOwn(
                CatalogueFile.builtIn(),
                folder,
                Lists.immutable.of("details/my-jamb.yaml", "sill-inner-bare"),
                Lists.immutable.empty(),
                Lists.immutable.empty());
        Detail own = catalogue.find("details/my-jamb.yaml").orElseThrow();
        JunctionResult less = COMPUTER.compute(own, Samples.setup(JunctionKind.JAMB));
        JunctionResult builtIn =
                COMPUTER.compute(catalogue.find("jamb-middle-lapped").orElseThrow(), Samples.setup(JunctionKind.JAMB));
        assertTrue(less.psiExternal().lower() > builtIn.psiExternal().upper());
        KnownNames names = CatalogueFile.names(CatalogueFile.builtIn().ids(JunctionKind.class), folder);
        assertTrue(names.has().test("details/my-jamb.yaml"));
        assertFalse(names.has().test("details/your-jamb.yaml"));
        assertTrue(names.has().test("sill-inner-bare"));
    }

    /** One drawing of two kinds is offered for both, and loses the same where they lie alike. */
    @Test
    void aDetailOfSeveralKindsIsOneOfEach(@TempDir Path folder) throws IOException {
        Files.writeString(folder.resolve("own.yaml"), OF_TWO_KINDS);
        Catalogue catalogue = withOwn(folder);
        JunctionKind eaves = JunctionKind.of("eaves of an insulated roof");
        JunctionKind low = JunctionKind.of("knee wall");
        assertEquals(
                Lists.immutable.of(Lists.immutable.of(eaves, low), Lists.immutable.of(low, eaves)),
                Lists.immutable
                        .of(eaves, low)
                        .collect(kind -> catalogue
                                .options(kind)
                                .detect(each -> each.id().equals("own.yaml"))
                                .kinds()));
        assertEquals(1, catalogue.ids().count("own.yaml"::equals));
        JunctionResult one = COMPUTER.compute(catalogue.find("own.yaml", eaves).orElseThrow(), Samples.setup(eaves));
        JunctionResult other = COMPUTER.compute(catalogue.find("own.yaml", low).orElseThrow(), Samples.setup(low));
        assertEquals(low, other.setup().kind());
        assertEquals(one.psiExternal(), other.psiExternal());
        assertEquals(Optional.empty(), catalogue.find("nowhere", low));
    }

    @Test
    void otherKindsOfADetailAreOfItsForm(@TempDir Path folder) throws IOException {
        Files.writeString(
                folder.resolve("own.yaml"),
                OF_TWO_KINDS.replace("[knee wall]", "[knee wall, jamb, knee wall, eaves of an insulated roof]"));
        String told =
                assertThrows(FileFaultException.class, () -> withOwn(folder)).getMessage();
        String allowed = "; allowed: high eaves of a mono-pitch, verge, ";
        for (String fault :
                new String[] {"3:19: \"jamb\"", "3:25: \"knee wall\"", "3:36: \"eaves of an insulated roof\""}) {
            String[] parts = fault.split(": ");
            assertTrue(
                    told.contains("own.yaml:" + parts[0]
                            + ": another kind of the same form and bands is needed, once; got " + parts[1] + allowed),
                    () -> fault + told);
        }
    }

    private static final String OF_TWO_KINDS = """
            detail: own
            kind: eaves of an insulated roof
            also: [knee wall]
            name: n
            rank: best
            looks-like: l
            drawing:
            - band: wall
            - band: roof
            order: []
            connections: {}
            failures: []
            photographs: []
            """;

    private static Catalogue withOwn(Path folder) {
        return CatalogueFile.withOwn(
                CatalogueFile.builtIn(),
                folder,
                Lists.immutable.of("own.yaml"),
                Lists.immutable.empty(),
                Lists.immutable.empty());
    }

    /** The corner of DefaultPsiTableTest, drawn by hand. */
    private static final String BY_HAND = """
            section: Corner with insulation outside
            lengths: mm
            regions:
            - {material: board, conductivity: 0.04, polygon: [[-1500, 200], [200, 200], [200, -1500], [300, -1500], [300, 300], [-1500, 300]]}
            - {material: masonry, conductivity: 0.8163, polygon: [[-1500, 0], [0, 0], [0, -1500], [200, -1500], [200, 200], [-1500, 200]]}
            environments:
              indoor: {temperature: 20, surface-resistance: 0.13}
              outdoor: {temperature: 0, surface-resistance: 0.04}
            boundaries:
            - {environment: outdoor, path: [[-1500, 300], [300, 300], [300, -1500]]}
            - {environment: indoor, path: [[-1500, 0], [0, 0], [0, -1500]]}
            junction:
              kind: outside corner
              legs:
              - {name: wall, transmittance: 0.343053, external: 1800, internal: 1500, insulation: 100, cut: [[-1500, 0], [-1500, 300]]}
              - {name: other wall, transmittance: 0.343053, external: 1800, internal: 1500, insulation: 100, cut: [[0, -1500], [300, -1500]]}
            """;

    @Test
    void aSectionDrawnByHandIsADetail(@TempDir Path folder) throws IOException {
        Files.writeString(folder.resolve("corner.yaml"), BY_HAND);
        Catalogue catalogue = CatalogueFile.withOwn(
                CatalogueFile.builtIn(),
                folder,
                Lists.immutable.of("corner.yaml"),
                Lists.immutable.empty(),
                Lists.immutable.empty());
        Assembly wall = Samples.assembly(
                "as drawn",
                Samples.layer("masonry", 0.8163, 200, Role.STRUCTURE),
                Samples.layer("board", 0.04, 100, Role.INSULATION));
        JunctionResult result = COMPUTER.compute(
                catalogue.find("corner.yaml").orElseThrow(),
                Samples.setup(JunctionKind.OUTSIDE_CORNER).between(wall, Optional.of(wall)));
        // The independent finite element model of DefaultPsiTableTest.
        assertEquals(0.1236, result.psiInternal().middle(), 0.002);
        assertEquals(-0.0822, result.psiExternal().middle(), 0.002);
        assertEquals(0.1, result.penLine().neck(), 1e-6);
        assertEquals(0.2 / 0.8163 + 0.1 / 0.04, result.weakestPath().resistance(), 1e-4);
    }

    @Test
    void everyFaultOfEveryOwnFileIsTold(@TempDir Path folder) throws IOException {
        Files.writeString(folder.resolve("one.yaml"), BY_HAND.replaceAll("(?s)junction:.*", ""));
        Files.writeString(folder.resolve("two.yaml"), """
                detail: two
                kind: jamb
                name: n
                rank: best
                looks-like: l
                needs: [wall.insulaton]
                drawing:
                - band: wall
                  to: frame.edgy
                - block: b
                  material: softwood
                  wall: [frame.edge, wall.outside]
                  frame: [frame.edge, 50]
                - blok: c
                order: []
                connections: {air: glued}
                failures: []
                photographs: []
                """);
        FileFaultException refused = assertThrows(
                FileFaultException.class,
                () -> CatalogueFile.withOwn(
                        CatalogueFile.builtIn(),
                        folder,
                        Lists.immutable.of("one.yaml", "two.yaml"),
                        Lists.immutable.empty(),
                        Lists.immutable.empty()));
        String told = refused.getMessage();
        assertTrue(told.contains("one.yaml:1:1: a section that is chosen as a detail needs the key junction"), told);
        assertTrue(told.contains("two.yaml:16:20: air is needed; got \"glued\""), told);

        Files.writeString(
                folder.resolve("two.yaml"),
                Files.readString(folder.resolve("two.yaml")).replace("{air: glued}", "{}"));
        told = assertThrows(
                        FileFaultException.class,
                        () -> CatalogueFile.withOwn(
                                CatalogueFile.builtIn(),
                                folder,
                                Lists.immutable.of("two.yaml"),
                                Lists.immutable.empty(),
                                Lists.immutable.empty()))
                .getMessage();
        assertTrue(told.contains("two.yaml:6:9: a layer of a band is needed; got \"wall.insulaton\""), told);
        assertTrue(told.contains("two.yaml:9:7: a line or a length is needed; got \"frame.edgy\""), told);
        assertTrue(
                told.contains("two.yaml:12:10: a line of the wall is needed; got \"frame.edge\", a line of the second"),
                told);
        assertTrue(told.contains("two.yaml:13:23: a line of the frame is needed; got \"50\", a number"), told);
        assertTrue(told.contains("two.yaml:14:3: a drawing statement needs exactly one of the keys"), told);
        assertTrue(told.contains("got the keys blok; did you mean \"block\"?"), told);
        assertTrue(told.contains("two.yaml:1:1: the drawing needs its frame"), told);
    }

    /** A misspelt key hides no fault beside it, a band that there is not makes none of its keys, and what this kind lacks is refused. */
    @Test
    void everyFaultOfAStatementIsTold() throws IOException {
        Path resources = Path.of(System.getProperty("coldseam.root")).resolve("modules/junctions/src/main/resources");
        String jamb = Files.readString(resources.resolve("details/jamb-mid-depth.yaml"));
        String head = jamb.substring(0, jamb.indexOf("\ndrawing:"));
        String tail = jamb.substring(jamb.indexOf("\norder:"));
        String statements = """

                drawing:
                - frame: set-back
                - band: wal
                  to: frame.edge
                - block: b
                  materiel: softwood
                  wall: [wall.inside, wall.outsid]
                  frame: [frame.edge, frame.glass]
                - ground: away
                """;
        FileFaultException refused =
                assertThrows(FileFaultException.class, () -> DetailFile.read("own", head + statements + tail));
        assertEquals(
                Lists.immutable.of(
                        "a band of this kind is needed",
                        "a block statement has no such key",
                        "a line or a length is needed",
                        "this kind of junction does not stand in the ground"),
                refused.faults().collect(Fault::asked));
        assertEquals(
                "did you mean \"material\"?", refused.faults().get(1).next().toString());
    }

    /** A file of the other sort is no detail of this one. */
    @Test
    void aPointIsNoJunctionAndAJunctionNoPoint(@TempDir Path folder) throws IOException {
        Path resources = Path.of(System.getProperty("coldseam.root")).resolve("modules/junctions/src/main/resources");
        Files.copy(resources.resolve("points/bracket-steel.yaml"), folder.resolve("bracket.yaml"));
        Files.copy(resources.resolve("details/jamb-mid-depth.yaml"), folder.resolve("jamb.yaml"));
        String told = assertThrows(
                        FileFaultException.class,
                        () -> CatalogueFile.withOwn(
                                CatalogueFile.builtIn(),
                                folder,
                                Lists.immutable.of("bracket.yaml"),
                                Lists.immutable.of("jamb.yaml"),
                                Lists.immutable.empty()))
                .getMessage();
        assertTrue(
                told.contains(
                        "bracket.yaml:1:1: a junction choice needs the detail of a junction; got one for: bracket;"
                                + " name it under points, or choose another file"),
                told);
        assertTrue(
                told.contains("jamb.yaml:1:1: points need the detail of a point; got one for: jamb;"
                        + " name it under junctions, or choose another file"),
                told);
    }
}
