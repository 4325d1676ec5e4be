package coldseam.audit.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.Audit;
import coldseam.audit.BridgeSheet;
import coldseam.audit.engine.Sample.Made;
import coldseam.envelope.Body;
import coldseam.envelope.House;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Opening;
import coldseam.envelope.Selector;
import coldseam.envelope.shell.Edge;
import coldseam.envelope.shell.ShellBuilder;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.catalogue.Catalogue;
import coldseam.junctions.catalogue.CatalogueFile;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.detail.Rank;
import coldseam.junctions.language.DetailParameter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Sets;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.set.ImmutableSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JunctionPlanTest {

    private static final ImmutableSet<JunctionKind> ANY = Sets.immutable.empty();

    private final Edge southSlab = Sample.audit(Sample.yaml(), Sample.good())
            .shell()
            .edges()
            .detect(edge -> edge.name().contains("slab edge") && edge.name().contains("south"));

    private boolean matches(ImmutableSet<JunctionKind> kinds, String... surfaces) {
        return southSlab.isMeantBy(new Selector(kinds, Lists.immutable.of(surfaces)));
    }

    @Test
    void aSelectorNeedsOneKindAndAllSurfaces() {
        assertTrue(matches(Sets.immutable.of(JunctionKind.SLAB_EDGE, JunctionKind.JAMB)));
        assertFalse(matches(Sets.immutable.of(JunctionKind.JAMB)));
        assertTrue(matches(ANY, "ground floor south wall"));
        assertTrue(matches(ANY, "ground floor south wall", southSlab.first().name()));
        assertFalse(matches(ANY, "ground floor south wall", "ground floor north wall"));
        assertFalse(matches(Sets.immutable.of(JunctionKind.JAMB), "ground floor south wall"));
    }

    @Test
    void theFirstChoiceThatMatchesWins() {
        String yaml = Sample.yaml()
                .replace(
                        "- {kinds: [slab edge], detail: slab-good}",
                        "- {kinds: [slab edge], surfaces: [ground floor south wall], detail: slab-south}\n"
                                + "- {kinds: [slab edge], detail: slab-good}");
        Audit audit = Sample.audit(yaml, Sample.good().newWith(Made.good("slab-south", JunctionKind.SLAB_EDGE)));
        BridgeSheet<JunctionResult> south =
                audit.sheets().detect(sheet -> sheet.result().detail().id().equals("slab-south"));
        BridgeSheet<JunctionResult> others =
                audit.sheets().detect(sheet -> sheet.result().detail().id().equals("slab-good"));
        assertEquals(Lists.immutable.of(southSlab.name()), south.places());
        assertEquals(3, others.places().size());
    }

    /** Whichever comes first in the catalogue, and the colder though another loses more; what is colder yet but better is not taken. */
    @Test
    void ofSeveralThatMayStandInTheColdestDoes() {
        Made warm = corner("warm", Rank.WORST, 0.9, 0.6);
        Made cold = corner("cold", Rank.WORST, 0.3, 0.4);
        Made middle = corner("colder", Rank.MIDDLE, 0.5, 0.3);
        String yaml = Sample.yaml().replaceFirst("- \\{kinds: \\[outside corner][^\n]*\n", "");
        for (ImmutableList<Made> some :
                Lists.immutable.of(Lists.immutable.of(warm, cold, middle), Lists.immutable.of(cold, warm, middle))) {
            Audit audit = Sample.audit(yaml, some.newWithAll(Sample.good()));
            assertEquals(
                    Lists.immutable.of("cold"),
                    audit.sheets()
                            .reject(BridgeSheet::chosen)
                            .collect(sheet -> sheet.result().detail().id()));
        }
    }

    private static Made corner(String id, Rank rank, double psi, double factor) {
        return new Made(id, JunctionKind.OUTSIDE_CORNER, rank, psi, factor, false, 0, 0.1, Sample.ALL_CARRIED);
    }

    @Test
    void likeEdgesShareOneSheetAndItsLengthIsTheirSum() {
        Audit audit = Sample.audit(Sample.yaml(), Sample.good());
        assertEquals(3, audit.sheets().size());
        BridgeSheet<JunctionResult> slab =
                audit.sheets().detect(sheet -> sheet.result().setup().kind() == JunctionKind.SLAB_EDGE);
        assertEquals(28, slab.size(), 1e-3);
        // B' = 48 m² over half of 28 m
        assertEquals(48 / 14.0, slab.result().setup().ground().orElseThrow().floorWidth(), 1e-3);
    }

    /** A party wall meets a floor, a roof and walls, which their sections have to tell apart; kinds whose words tell it leave it at a wall. */
    @Test
    void whatAPartyWallMeetsReachesItsSections() {
        House house = Sample.house(
                Sample.yaml().replace("{all: wall}", "{all: wall, west: {assembly: bare wall, faces: next door}}")
                        + "neighbours: {next door: {heated: true}}\n");
        ImmutableList<PlannedEdge> all =
                new JunctionPlan(house, ShellBuilder.build(house), new Catalogue(Lists.immutable.empty())).plan();
        assertEquals(
                Sets.immutable.of(Body.Use.FLOOR, Body.Use.ROOF, Body.Use.WALL),
                all.select(each -> each.edge().kind() == JunctionKind.PARTY_WALL)
                        .collect(each -> each.bridge().setup().orElseThrow().firstUse())
                        .toSet());
        assertEquals(
                Sets.immutable.of(Body.Use.WALL),
                all.reject(each -> each.edge().kind() == JunctionKind.PARTY_WALL)
                        .flatCollect(each -> each.bridge().setup().stream().toList())
                        .collect(JunctionSetup::firstUse)
                        .toSet());
    }

    /** The lowest floor lies 2.2 m under the ground: its sections are drawn so. */
    @Test
    void theDepthOfACellarReachesItsSections() {
        String yaml = Sample.yaml()
                .replace("{kind: slab on ground, assembly: slab", "{kind: heated cellar, depth: 2.2 m, assembly: slab");
        House house = Sample.house(yaml);
        ImmutableList<JunctionSetup> cellar = new JunctionPlan(
                        house, ShellBuilder.build(house), new Catalogue(Lists.immutable.empty()))
                .plan()
                .flatCollect(each -> each.bridge().setup().stream().toList())
                .select(setup -> setup.kind() == JunctionKind.CELLAR_SLAB_EDGE);
        assertTrue(cellar.notEmpty());
        cellar.forEach(setup -> assertEquals(
                OptionalDouble.of(2.2), setup.ground().orElseThrow().depth()));
        House onGround = Sample.house(Sample.yaml());
        new JunctionPlan(onGround, ShellBuilder.build(onGround), new Catalogue(Lists.immutable.empty()))
                .plan()
                .flatCollect(each -> each.bridge().setup().stream().toList())
                .flatCollect(setup -> setup.ground().stream().toList())
                .forEach(ground -> assertEquals(OptionalDouble.empty(), ground.depth()));
    }

    /** Worked out by hand: floor 420 mm over the ceiling and deck 364.5 mm; floor 260 mm and sill 150 mm over deck 387 mm. */
    @ParameterizedTest
    @CsvSource({"larch-house, 0.0555", "heron-row, 0.023"})
    void theHeightOfADoorsSillOverItsDeckReachesItsSection(String name, double high) throws IOException {
        House house = Sample.house(
                Files.readString(Path.of(System.getProperty("coldseam.root"), "fixtures", "houses", name + ".yaml")));
        ImmutableList<JunctionSetup> all = new JunctionPlan(
                        house, ShellBuilder.build(house), new Catalogue(Lists.immutable.empty()))
                .plan()
                .flatCollect(each -> each.bridge().setup().stream().toList());
        assertEquals(
                Lists.immutable.of(JunctionKind.TERRACE_THRESHOLD),
                all.select(setup -> setup.sill().isPresent()).collect(JunctionSetup::kind));
        assertEquals(high, all.detect(setup -> setup.sill().isPresent()).sill().getAsDouble(), 1e-6);
    }

    /** Where a cellar's wall stands free the ground ends at its floor, in a new house and where the slab is there already. */
    @ParameterizedTest
    @CsvSource({"'', slab edge", "'retrofit: {built-new: [cellar south wall]}\n', existing slab edge"})
    void besideAFreeWallOfACellarTheGroundEndsAtTheFloor(String retrofit, String kind) throws IOException {
        Path walkOut = Path.of(System.getProperty("coldseam.root"), "fixtures/houses/shapes/walk-out.yaml");
        House house = Sample.house(retrofit + Files.readString(walkOut));
        ImmutableList<JunctionSetup> free = new JunctionPlan(
                        house, ShellBuilder.build(house), new Catalogue(Lists.immutable.empty()))
                .plan()
                .flatCollect(each -> each.bridge().setup().stream().toList())
                .select(setup -> setup.kind() == JunctionKind.of(kind));
        assertEquals(
                Lists.immutable.of(OptionalDouble.empty()),
                free.collect(setup -> setup.ground().orElseThrow().depth()).distinct());
    }

    @Test
    void parametersOfAChoiceReachItsDetail() {
        House house = Sample.house(Sample.yaml()
                .replace(
                        "- {kinds: [slab edge], detail: slab-good}",
                        "- {kinds: [slab edge], detail: slab-edge-raft, parameters: {plinth: 200 mm}}"));
        Detail raft = new JunctionPlan(house, ShellBuilder.build(house), CatalogueFile.builtIn())
                .plan()
                .detect(each -> each.edge().kind() == JunctionKind.SLAB_EDGE)
                .bridge()
                .candidates()
                .getOnly();
        DetailParameter plinth = raft.parameters().detect(each -> each.name().equals("plinth"));
        assertEquals(0.2, plinth.value());
        assertTrue(plinth.given());
    }

    @Test
    void theBestOptionHasAnUnbrokenPenLineAndTheLeastPsi() {
        Made cheap = Made.good("slab-leaky", JunctionKind.SLAB_EDGE).psi(-0.5).broken();
        Made better = Made.good("slab-better", JunctionKind.SLAB_EDGE).psi(-0.1);
        Audit audit = Sample.audit(Sample.yaml(), Sample.good().newWith(cheap).newWith(better));
        BridgeSheet<JunctionResult> slab =
                audit.sheets().detect(sheet -> sheet.result().setup().kind() == JunctionKind.SLAB_EDGE);
        assertEquals("slab-better", slab.best().orElseThrow().detail().id());
    }

    /** What no rule finds goes before what loses less and is pinched, or passes what resists little. */
    @Test
    void theBestOptionIsOneThatKeepsTheLimits() {
        Made good = Made.good("slab-better", JunctionKind.SLAB_EDGE).psi(0.005);
        for (Made lessLoss : Lists.immutable.of(
                Made.good("slab-pinched", JunctionKind.SLAB_EDGE).psi(-0.5).share(0.4),
                Made.good("slab-short", JunctionKind.SLAB_EDGE).psi(-0.5).ratio(0.4),
                Made.good("slab-cold", JunctionKind.SLAB_EDGE).psi(-0.5).fRsi(0.6),
                Made.good("slab-changing-side", JunctionKind.SLAB_EDGE).psi(-0.5))) {
            Audit audit = Sample.audit(
                    Sample.yaml().replace("detail: slab-good", "detail: " + lessLoss.id()),
                    Sample.good()
                            .reject(made -> made.kind() == JunctionKind.SLAB_EDGE)
                            .newWith(lessLoss)
                            .newWith(good));
            BridgeSheet<JunctionResult> slab =
                    audit.sheets().detect(sheet -> sheet.result().setup().kind() == JunctionKind.SLAB_EDGE);
            assertEquals("slab-better", slab.best().orElseThrow().detail().id(), lessLoss.id());
        }
    }

    private static PlannedBridge<JunctionSetup> change(String line, String choice) {
        House house = Sample.house(Sample.yaml()
                .replace(
                        "body:\n",
                        "  thin:\n    layers:\n"
                                + "    - {material: lightweight clay block, thickness: 175 mm, role: structure}\n"
                                + "    - {material: mineral wool board, thickness: 160 mm, role: insulation}\nbody:\n")
                .replace("footprint-line: outer face", "footprint-line: " + line)
                .replace(
                        "    walls: {all: wall}\n",
                        "    walls: {all: wall}\n  - name: upper floor\n    footprint: {rectangle: [8 m, 6 m]}\n"
                                + "    height: 3 m\n    floor-thickness: 300 mm\n    walls: {all: thin}\n")
                .replace("junctions:\n", "junctions:\n" + choice));
        return new JunctionPlan(house, ShellBuilder.build(house), CatalogueFile.builtIn())
                .plan()
                .detect(each -> each.edge().kind() == JunctionKind.WALL_CHANGE_AT_FLOOR)
                .bridge();
    }

    /** A thinner wall over one whose outer face it shares steps back indoors, by the difference of their thicknesses. */
    @Test
    void aStepOfTheInnerFacesReachesItsSection() {
        String choice = "- {kinds: [change of wall at a floor], detail: floor-change-boards-overlap}\n";
        PlannedBridge<JunctionSetup> chosen = change("outer face", choice);
        assertEquals(Lists.immutable.empty(), chosen.hindrances());
        assertTrue(chosen.options().notEmpty());
        JunctionSetup setup = chosen.setup().orElseThrow();
        assertEquals(setup.first().thickness() - setup.second().orElseThrow().thickness(), setup.innerStep(), 1e-6);
        assertNotEquals(0, setup.innerStep());
        assertEquals(0, change("inner face", choice).setup().orElseThrow().innerStep());
    }

    /** Of an opening's sides that over it alone: jambs and sills share a sheet whatever carries over them. */
    @Test
    void theLintelReachesTheSectionOverItsOpening() {
        String window = "openings:\n  window: {kind: window, surface: ground floor south wall, width: 1 m, height: 1 m,"
                + " sill: 0.8 m, transmittance: 0.9 W/(m²·K), lintel: timber}\n";
        House house = Sample.house(Sample.yaml() + window);
        ImmutableList<JunctionSetup> framed = new JunctionPlan(
                        house, ShellBuilder.build(house), new Catalogue(Lists.immutable.empty()))
                .plan()
                .flatCollect(each -> each.bridge().setup().stream().toList())
                .select(setup -> setup.opening().isPresent());
        assertEquals(3, framed.collect(JunctionSetup::kind).distinct().size());
        framed.forEach(setup -> assertEquals(
                setup.kind() == JunctionKind.HEAD ? Optional.of(Opening.Lintel.TIMBER) : Optional.empty(),
                setup.opening().orElseThrow().lintel()));
    }
}
