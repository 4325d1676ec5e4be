package coldseam.envelope.file.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.envelope.Assembly;
import coldseam.envelope.Body;
import coldseam.envelope.Climate;
import coldseam.envelope.Control;
import coldseam.envelope.DimensionSystem;
import coldseam.envelope.Exposure;
import coldseam.envelope.House;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Layer;
import coldseam.envelope.Limits;
import coldseam.envelope.Material;
import coldseam.envelope.Opening;
import coldseam.envelope.Point2;
import coldseam.envelope.Point3;
import coldseam.envelope.PointBridges;
import coldseam.envelope.PointKind;
import coldseam.envelope.Provenance;
import coldseam.envelope.Role;
import coldseam.envelope.SurfaceLimits;
import coldseam.envelope.shell.Shell;
import coldseam.envelope.shell.ShellBuilder;
import coldseam.envelope.shell.fault.ShellFault;
import coldseam.files.FileFaultException;
import coldseam.files.KnownNames;
import coldseam.files.Located;
import coldseam.files.Position;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.factory.Sets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class HouseFileTest {

    private static final Path FIXTURES = Path.of(System.getProperty("coldseam.root"), "fixtures");
    private static final double ROUND_OFF = 1e-12;

    private static final String HEAD = """
        house: Test house
        site: {indoor-temperature: 68 °F, outdoor-temperature: -10 °C}
        assemblies:
          wall: {layers: [{material: softwood, thickness: 100 mm, role: structure}]}
          other: {layers: [{material: softwood, thickness: 100 mm, role: structure}]}
        """;

    private static final String BASE_AND_ROOF = """
          base: {kind: slab on ground, assembly: wall}
          roof: {form: flat, assembly: wall}
        """;

    private static Path resource(String name) {
        try {
            return Path.of(
                    HouseFileTest.class.getResource("/houses/" + name + ".yaml").toURI());
        } catch (java.net.URISyntaxException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private static House read(String... parts) {
        byte[] content = String.join("", parts).getBytes(StandardCharsets.UTF_8);
        return HouseFiles.read("test.yaml", content).house();
    }

    /** Studs of 1 1/2 in every 16 in take 1.5/16, and the plates and openings what is said of them. */
    @Test
    void framingIsGivenByItsShareOrByHowItStands() {
        House house = read(
                HEAD.replace(
                        "assemblies:\n",
                        "assemblies:\n  studs:\n    layers:\n    - {material: mineral wool batt, thickness: 140 mm, role: structure, framing:"
                                + " {material: softwood, width: 1 1/2 in, spacing: 16 in, besides: 12.5 %}}\n"),
                "body:\n  footprint-line: inner face\n  storeys:\n  - {name: floor, height: 2.5 m, footprint: {rectangle: [8 m, 6"
                        + " m]}, walls: studs}\n",
                BASE_AND_ROOF);
        Layer.Framing framing =
                house.assemblies().get("studs").layers().getOnly().framing().orElseThrow();
        assertEquals(1.5 / 16 + 0.125, framing.share(), ROUND_OFF);
        assertEquals(16 * 0.0254, framing.spaced().orElseThrow().spacing(), ROUND_OFF);
    }

    @Test
    void anOldCoatIsOfTheStructureItStaysOn() {
        House house = read(
                HEAD.replace(
                        "assemblies:\n",
                        "assemblies:\n  coated:\n    layers:\n    - {material: rubble stone masonry, thickness: 500 mm, role: structure}\n"
                                + "    - {material: lime render, thickness: 25 mm, role: old coat}\n"
                                + "    - {material: mineral wool board, thickness: 160 mm, role: insulation}\n"),
                "body:\n  footprint-line: inner face\n  storeys:\n  - {name: floor, height: 2.5 m, footprint: {rectangle: [8 m, 6"
                        + " m]}, walls: coated}\n",
                BASE_AND_ROOF);
        assertEquals(
                Lists.immutable.of(Role.STRUCTURE, Role.STRUCTURE, Role.INSULATION),
                house.assemblies().get("coated").layers().collect(Layer::role));
    }

    private static Body.Storey storey(String footprint, String walls) {
        House house = read(
                HEAD,
                "body:\n  footprint-line: inner face\n  storeys:\n  - {name: floor, height: 2.5 m, footprint: "
                        + footprint + ", walls: " + walls + "}\n",
                BASE_AND_ROOF);
        return ((Body.Storeys) house.body()).main().storeys().getOnly();
    }

    @ParameterizedTest
    @ValueSource(strings = {"heron-row.yaml", "marsh-bungalow.yaml"})
    void theDemoHousesCloseTheirShell(String name) {
        Shell shell = ShellBuilder.build(
                HouseFiles.read(FIXTURES.resolve("houses").resolve(name)).house());
        assertTrue(shell.closed());
    }

    /** What a material of the house says of timber, then what its name does; the name never decides. */
    @ParameterizedTest
    @CsvSource({
        "softwood, 0.13, , true",
        "cross-laminated timber, 0.13, , true",
        "plain blocks, 0.18, , false",
        "plain blocks, 0.18, true, true",
        "oak-coloured blocks, 0.18, false, false",
        "brick red as oak, 0.77, , false"
    })
    void timberIsWhatSaysSo(String name, double conductivity, Boolean said, boolean timber) {
        House house = read(
                HEAD.replace("softwood", name),
                "body: {footprint-line: structure, storeys: [{name: ground, footprint: {rectangle: [8 m, 8 m]}, height: 3 m, walls: wall}],\n",
                "  base: {kind: slab on ground, assembly: wall}, roof: {form: flat, assembly: wall}}\n",
                "materials: {" + name + ": {conductivity: " + conductivity + " W/(m·K), source: made up"
                        + (said == null ? "" : ", timber: " + said) + "}}\n");
        assertEquals(
                timber,
                house.assemblies().get("wall").layers().getOnly().material().timber());
    }

    @Test
    void theDemoHouseHasWhatTheAuditIsToShow() {
        House house = HouseFiles.read(FIXTURES.resolve("houses/heron-row.yaml")).house();
        var kinds =
                ShellBuilder.build(house).edges().collect(each -> each.kind()).toSet();
        assertTrue(kinds.containsAllArguments(
                JunctionKind.TERRACE_EDGE,
                JunctionKind.WALL_TO_TERRACE,
                JunctionKind.PARAPET,
                JunctionKind.EAVES,
                JunctionKind.VERGE,
                JunctionKind.SLAB_EDGE,
                JunctionKind.OUTSIDE_CORNER,
                JunctionKind.JAMB));
    }

    @Test
    void fillsInWhatIsLeftOut() {
        House house = read(
                HEAD,
                "body:\n  footprint-line: structure\n  storeys:\n  - {name: floor, height: 2.5 m, walls: wall,"
                        + " footprint: {rectangle: [4 m, 3 m]}}\n",
                BASE_AND_ROOF);
        assertEquals(20, house.site().indoorTemperature(), ROUND_OFF);
        assertEquals(0.5, house.site().indoorHumidity());
        assertEquals("sand or gravel", house.site().groundName());
        assertEquals(2.0, house.site().groundConductivity());
        assertEquals(DimensionSystem.EXTERNAL, house.site().dimensions());
        assertEquals(OptionalDouble.empty(), house.site().heatingDegreeDays());
        assertEquals(Limits.defaults(house.site()), house.limits());
        assertEquals("", house.prices().currency());
        assertEquals(
                Lists.immutable.with("softwood"), house.materials().keysView().toList());
        Body.Storeys body = (Body.Storeys) house.body();
        assertEquals(
                new Exposure(Exposure.Kind.GROUND, "", 1), body.main().base().exposure());
        assertEquals(
                Lists.immutable.with(new Point2(0, 0), new Point2(4, 0), new Point2(4, 3), new Point2(0, 3)),
                body.main().storeys().getOnly().footprint());
    }

    @Test
    void namesWallsByTheWayTheyFace() {
        // An L whose inner corner is in the north-west, and a house turned by 45°.
        assertEquals(
                "floor south wall, floor east wall, floor north wall 1, floor west wall 1, floor north wall 2,"
                        + " floor west wall 2",
                storey("[[0 m, 0 m], [9 m, 0 m], [9 m, 7 m], [5 m, 7 m], [5 m, 4 m], [0 m, 4 m]]", "wall")
                        .walls()
                        .collect(Body.Wall::name)
                        .makeString());
        assertEquals(
                "floor south-east wall, floor north-east wall, floor north-west wall, floor south-west wall",
                storey("[[0 m, 0 m], [5 m, 5 m], [0 m, 10 m], [-5 m, 5 m]]", "wall")
                        .walls()
                        .collect(Body.Wall::name)
                        .makeString());
    }

    @Test
    void turnsAClockwiseFootprintAndItsWallsWithIt() {
        String clockwise = "[[0 m, 0 m], [0 m, 3 m], [4 m, 3 m], [4 m, 0 m]]";
        // In the file's order the sides face west, north, east and south.
        Body.Storey storey = storey(
                clockwise,
                "[{assembly: wall, name: w}, {assembly: wall, name: n},"
                        + " {assembly: other, name: e}, {assembly: wall, name: s}]");
        assertEquals(
                Lists.immutable.with(new Point2(4, 0), new Point2(4, 3), new Point2(0, 3), new Point2(0, 0)),
                storey.footprint());
        assertEquals("e, n, w, s", storey.walls().collect(Body.Wall::name).makeString());
        assertEquals(Optional.of("other"), storey.walls().getFirst().assembly());
    }

    @Test
    void letsTheNarrowerWordForASideWin() {
        Body.Storey storey = storey(
                "{rectangle: [4 m, 3 m]}",
                "{side 2: none, all: wall, east: other, north: {assembly: other, faces: ground, name: back}}");
        assertEquals(
                Lists.immutable.with(Optional.of("wall"), Optional.empty(), Optional.of("other"), Optional.of("wall")),
                storey.walls().collect(Body.Wall::assembly));
        assertEquals("back", storey.walls().get(2).name());
        assertEquals(Exposure.Kind.GROUND, storey.walls().get(2).exposure().kind());
    }

    @Test
    void findsTheLowSideWhicheverWayTheFootprintRuns() {
        for (String footprint : new String[] {
            "[[0 m, 0 m], [4 m, 0 m], [4 m, 3 m], [0 m, 3 m]]", "[[0 m, 0 m], [0 m, 3 m], [4 m, 3 m], [4 m, 0 m]]"
        }) {
            House house = read(
                    HEAD,
                    "body:\n  footprint-line: structure\n  storeys:\n  - {name: floor, height: 2.5 m, walls: wall,"
                            + " footprint: " + footprint + "}\n",
                    "  base: {kind: slab on ground, assembly: wall}\n",
                    "  roof: {form: gable, pitch: 12:12, low-side: north, assembly: wall}\n");
            Body.Storeys body = (Body.Storeys) house.body();
            assertEquals(45, body.main().roof().pitch(), ROUND_OFF);
            assertEquals(
                    "floor north wall",
                    body.main()
                            .storeys()
                            .getOnly()
                            .walls()
                            .get(body.main().roof().lowSide())
                            .name());
        }
    }

    @Test
    void readsAllAHouseCanSay() {
        LoadedHouse loaded = HouseFiles.read(resource("everything"));
        House house = loaded.house();
        assertEquals(60, house.site().ventilationHeatLoss().orElseThrow());
        assertEquals(1.2, house.site().groundConductivity());
        assertEquals(DimensionSystem.INTERNAL, house.site().dimensions());

        Material own = house.materials().get("panel");
        assertEquals(0.012, own.conductivity());
        assertEquals(Double.POSITIVE_INFINITY, own.vapourResistanceFactor().orElseThrow());
        assertEquals(new Provenance("test report", Provenance.Sureness.DECLARED), own.provenance());
        assertTrue(own.insulates());
        assertFalse(house.materials().get("warm screed").insulates());
        assertEquals(
                6894.757293168361 * 25,
                house.materials().get("warm screed").compressiveStrength().orElseThrow(),
                1e-6);

        Assembly deck = house.assemblies().get("deck");
        assertEquals(Assembly.AirGaps.BRIDGING, deck.gaps());
        assertEquals(Optional.of(new Assembly.Rain(3, 0.04)), deck.rain());
        assertEquals(6, deck.fasteners().orElseThrow().perSquareMetre());
        Layer studs = deck.layers().get(1);
        assertEquals(0.15, studs.framing().orElseThrow().share(), ROUND_OFF);
        assertEquals("softwood", studs.framing().orElseThrow().material().name());
        Layer air = deck.layers().get(2);
        assertEquals(Optional.of(new Layer.AirLayer(Layer.Ventilation.SLIGHTLY_VENTILATED, 800, 0.05)), air.air());
        Layer falls = deck.layers().get(3);
        assertEquals(0.2, falls.taper().orElseThrow().thickest(), ROUND_OFF);
        assertEquals(Sets.immutable.with(Control.HEAT, Control.AIR), falls.controls());
        Layer declared = deck.layers().get(4);
        // R-18 is 3.1700 m²·K/W; 40 mm of it conduct 0.04 / 3.1700.
        assertEquals(0.04 / 3.169983306281504, declared.material().conductivity(), ROUND_OFF);
        assertEquals("panel of 3.17 m²·K/W", declared.material().name());

        Body.Storeys body = (Body.Storeys) house.body();
        assertEquals(Body.FootprintLine.OUTER_FACE, body.line());
        assertEquals(Body.Base.Kind.SUSPENDED, body.main().base().kind());
        Body.CrawlSpace crawl = body.main().base().crawlSpace().orElseThrow();
        assertEquals(new Body.CrawlSpace(0.4572, 1.2, 0.0015, 5, 0.1, 1), crawl);
        assertEquals(Exposure.Kind.CRAWL_SPACE, body.main().base().exposure().kind());
        Body.Storey upper = body.main().storeys().get(1);
        assertEquals(Optional.of("deck"), upper.overhang());
        assertEquals(0.3, upper.floorThickness(), ROUND_OFF);
        assertTrue(body.main().storeys().get(0).terraceIsWalkedOn());
        assertEquals(Optional.of("deck"), body.main().storeys().get(0).terrace());
        assertEquals(
                new Exposure(Exposure.Kind.UNHEATED, "garage", 0.7),
                body.main().storeys().get(0).walls().get(1).exposure());
        assertEquals(
                new Exposure(Exposure.Kind.PARTY, "next house", 0),
                body.main().storeys().get(0).walls().get(3).exposure());
        assertTrue(body.main().roof().insulatedAtCeiling());
        assertEquals(OptionalDouble.of(0.9), body.main().roof().loftFactor());
        assertEquals(Optional.of("wall"), body.main().roof().gableAssembly());

        assertEquals(
                new Opening(
                        "window",
                        Opening.Kind.WINDOW,
                        "lower floor south wall",
                        1.2,
                        1,
                        OptionalDouble.of(2),
                        0.9,
                        new Opening.Declared(0.9, 1.1),
                        0.08,
                        OptionalDouble.of(0.05)),
                house.openings().getFirst());
        assertEquals(0.9, house.openings().get(1).frameTransmittance());
        assertEquals("slab-edge-bare", house.choices().getFirst().detail());
        assertEquals(
                Sets.immutable.with(JunctionKind.SLAB_EDGE, JunctionKind.CRAWL_SPACE_EDGE),
                house.choices().getFirst().which().kinds());
        assertEquals(0.05, house.ownPsi().getOnly().psi());
        assertEquals(JunctionKind.of("balcony"), house.seams().getOnly().kind());
        assertEquals(
                new PointBridges(
                        "posts",
                        "lower floor terrace",
                        Optional.empty(),
                        Optional.of("steel-post-on-block"),
                        new PointBridges.Count.InRow(
                                1.2192, OptionalDouble.empty(), Optional.of("upper floor south wall")),
                        Maps.immutable.of("side", 0.0508)),
                house.points().getFirst());
        assertEquals(Optional.of(PointKind.of("bracket")), house.points().get(1).kind());
        assertEquals(new PointBridges.Count.Number(3), house.points().get(1).count());
        assertEquals(Optional.of("own/screw.yaml"), house.points().get(2).detail());
        assertEquals(new PointBridges.Count.PerArea(6), house.points().get(2).count());
        assertEquals(
                new PointBridges.Count.InRow(1, OptionalDouble.of(3), Optional.empty()),
                house.points().get(3).count());
        assertEquals(76, loaded.points().getFirst().name().line());
        assertEquals(0.03, house.limits().chi());
        assertEquals(
                new Limits(0.6, 0.4, 0.02, 0.75, 0.05, 0.03, 0.02, 0.5, SurfaceLimits.usual(house.site())),
                house.limits());
        assertEquals(0.12, house.prices().heat().orElseThrow());
        assertEquals("EUR", house.prices().currency());
        assertEquals(20, house.prices().years());

        String file = resource("everything").toString();
        assertEquals(new Position(file, 67, 58), loaded.choices().getFirst().detail());
        assertEquals(
                Lists.immutable.with(new Position(file, 68, 41)),
                loaded.choices().get(1).surfaces().collect(Located::place));
        assertEquals(
                new Position(file, 62, 40),
                loaded.parts().get(new LoadedHouse.Part(ShellFault.Part.OPENING, "window")));
        assertEquals(
                new Position(file, 72, 37), loaded.parts().get(new LoadedHouse.Part(ShellFault.Part.SEAM, "balcony")));
    }

    @Test
    void numbersOpeningsInARow() {
        House house = read(
                HEAD,
                "body:\n  footprint-line: structure\n  storeys:\n  - {name: floor, height: 2.5 m, walls: wall,"
                        + " footprint: {rectangle: [8 m, 3 m]}}\n",
                BASE_AND_ROOF,
                "openings:\n  window: {kind: window, surface: floor south wall, width: 1 m, height: 1 m, sill: 1 m,"
                        + " transmittance: 1 W/(m²·K), left: 1 m, count: 3, spacing: 500 mm}\n");
        assertEquals(
                "window 1, window 2, window 3",
                house.openings().collect(Opening::name).makeString());
        assertEquals(
                Lists.immutable.with(1.0, 2.5, 4.0),
                house.openings().collect(each -> each.left().orElseThrow()));
    }

    @Test
    void readsExplicitSurfaces() {
        House house = HouseFiles.read(resource("wedge")).house();
        Body.Explicit body = (Body.Explicit) house.body();
        assertEquals(new Point3(4, 0, 3), body.points().get("f"));
        assertEquals(0.15, body.groundLevel(), ROUND_OFF);
        assertEquals(
                "floor, east wall, roof, north wall, south wall",
                body.surfaces().collect(each -> each.name()).makeString());
        assertEquals(Optional.empty(), body.surfaces().getLast().assembly());
        assertEquals(Body.Use.ROOF, body.surfaces().get(2).use());
        assertEquals(Exposure.ground(), body.surfaces().getFirst().exposure());
    }

    @Test
    void readsJsonAsItReadsYaml(@TempDir Path folder) throws IOException {
        String json = """
            {"house": "Test house",
             "site": {"indoor-temperature": "68 °F", "outdoor-temperature": "-10 °C"},
             "assemblies": {
               "wall": {"layers": [{"material": "softwood", "thickness": "100 mm", "role": "structure"}]},
               "other": {"layers": [{"material": "softwood", "thickness": "100 mm", "role": "structure"}]}},
             "body": {"footprint-line": "inner face",
               "storeys": [{"name": "floor", "height": "2.5 m", "footprint": {"rectangle": ["4 m", "3 m"]},
                 "walls": "wall"}],
               "base": {"kind": "slab on ground", "assembly": "wall"},
               "roof": {"form": "flat", "assembly": "wall"}}}
            """;
        Path file = folder.resolve("house.json");
        Files.writeString(file, json);
        House fromYaml = read(
                HEAD,
                "body:\n  footprint-line: inner face\n  storeys:\n  - {name: floor, height: 2.5 m, walls: wall,"
                        + " footprint: {rectangle: [4 m, 3 m]}}\n",
                BASE_AND_ROOF);
        assertEquals(fromYaml, HouseFiles.read(file).house());
    }

    @Test
    void asksTheCatalogueForDetails() {
        String choice = "junctions:\n- {kinds: [slab edge], detail: mine.yaml}\n";
        byte[] content = (HEAD
                        + "body:\n"
                        + "  footprint-line: structure\n"
                        + "  storeys:\n"
                        + "  - {name: floor, height: 2.5 m, walls: wall, footprint:"
                        + " {rectangle: [4 m, 3 m]}}\n" + BASE_AND_ROOF + choice)
                .getBytes(StandardCharsets.UTF_8);
        KnownNames catalogue = KnownNames.of(Lists.immutable.with("slab-edge-bare"));
        FileFaultException refused =
                assertThrows(FileFaultException.class, () -> HouseFiles.read("test.yaml", content, catalogue));
        assertEquals(
                "test.yaml:13:32: no detail has this name; got \"mine.yaml\"; allowed: slab-edge-bare; write one of"
                        + " these, or define it",
                refused.getMessage());
        KnownNames withFiles = catalogue.or(name -> name.endsWith(".yaml"));
        assertEquals(
                "mine.yaml",
                HouseFiles.read("test.yaml", content, withFiles)
                        .house()
                        .choices()
                        .getOnly()
                        .detail());
    }

    private static House shipped(String name) throws IOException {
        byte[] content = Files.readAllBytes(FIXTURES.resolve("houses/" + name + ".yaml"));
        return HouseFiles.read(name, content).house();
    }

    @Test
    void aClimateHasTwelveMonthsAndAHumidityClass() throws IOException {
        House house = shipped("heron-row");
        Climate climate = house.site().climate().orElseThrow();
        assertEquals(12, climate.months().size());
        assertEquals(
                new Climate.Mean(java.time.Month.DECEMBER, -0.4, 0.89),
                climate.months().getLast());
        assertEquals(Climate.Indoors.DWELLING, climate.indoors());
        assertTrue(climate.source().startsWith("invented"), climate::source);
        House without = shipped("marsh-bungalow");
        assertEquals(Optional.empty(), without.site().climate());
    }
}
