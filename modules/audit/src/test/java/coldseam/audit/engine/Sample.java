package coldseam.audit.engine;

import coldseam.audit.Audit;
import coldseam.audit.Digests;
import coldseam.conduction.Accuracy;
import coldseam.conduction.Interval;
import coldseam.conduction.Point;
import coldseam.conduction.solid.Place;
import coldseam.envelope.Control;
import coldseam.envelope.Exposure;
import coldseam.envelope.House;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.file.house.HouseFile;
import coldseam.envelope.shell.ShellBuilder;
import coldseam.files.KnownNames;
import coldseam.files.quantity.Phrase;
import coldseam.junctions.BridgeComputer;
import coldseam.junctions.ControlLine;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.PenLine;
import coldseam.junctions.PointResult;
import coldseam.junctions.PointSetup;
import coldseam.junctions.WeakestPath;
import coldseam.junctions.catalogue.Catalogue;
import coldseam.junctions.catalogue.CatalogueFile;
import coldseam.junctions.compute.BridgeComputers;
import coldseam.junctions.detail.Connection;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.detail.DetailDrawing;
import coldseam.junctions.detail.DetailFile;
import coldseam.junctions.detail.Photograph;
import coldseam.junctions.detail.Rank;
import coldseam.junctions.detail.Suits;
import coldseam.junctions.pair.PairAnswer;
import coldseam.junctions.pair.PairComputing;
import coldseam.junctions.pair.PairObstacle;
import coldseam.junctions.pair.PairResult;
import coldseam.junctions.plan.SectionPlan;
import coldseam.junctions.plan.SectionPlan.Zone;
import coldseam.junctions.vertex.VertexComputing;
import coldseam.junctions.vertex.VertexResult;
import coldseam.junctions.vertex.VertexSetup;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;

/** A box house, details with made-up results, and the audit of both: the rules are tested here, not the conduction. */
public final class Sample {

    /** Every layer carried across. */
    public static final ImmutableMap<Control, Connection> ALL_CARRIED = Maps.immutable.of(
            Control.AIR, Connection.TAPED, Control.WATER, Connection.LAPPED, Control.VAPOUR, Connection.TAPED);

    /** Shared, so that what one test has computed the next need not; points are computed in earnest. */
    private static final BridgeComputer POINTS = BridgeComputers.computer(new Accuracy(1e-3, 200_000));

    private Sample() {}

    /** What a made-up detail says and gives. */
    public record Made(
            String id,
            JunctionKind kind,
            Rank rank,
            double psi,
            double fRsi,
            boolean unbroken,
            double share,
            double ratio,
            ImmutableMap<Control, Connection> connections)
            implements DetailDrawing {

        public static Made good(String id, JunctionKind kind) {
            return new Made(id, kind, Rank.BEST, -0.05, 0.9, true, 0.9, 0.9, ALL_CARRIED);
        }

        public Made psi(double other) {
            return new Made(id, kind, rank, other, fRsi, unbroken, share, ratio, connections);
        }

        public Made fRsi(double other) {
            return new Made(id, kind, rank, psi, other, unbroken, share, ratio, connections);
        }

        public Made broken() {
            return new Made(id, kind, rank, psi, fRsi, false, 0, ratio, connections);
        }

        public Made share(double other) {
            return new Made(id, kind, rank, psi, fRsi, unbroken, other, ratio, connections);
        }

        public Made ratio(double other) {
            return new Made(id, kind, rank, psi, fRsi, unbroken, share, other, connections);
        }

        public Made connection(Control control, Connection other) {
            return new Made(
                    id, kind, rank, psi, fRsi, unbroken, share, ratio, connections.newWithKeyValue(control, other));
        }

        public Detail detail() {
            return new Detail(
                    id,
                    kind,
                    Lists.immutable.empty(),
                    id.replace('-', ' '),
                    rank,
                    Suits.EVERYWHERE,
                    "",
                    Lists.immutable.empty(),
                    connections,
                    Lists.immutable.empty(),
                    Lists.immutable.of(new Photograph("the " + id, Optional.empty())),
                    Lists.immutable.empty(),
                    Optional.empty(),
                    this,
                    false);
        }
    }

    /** The three good details the box chooses. */
    public static ImmutableList<Made> good() {
        return Lists.immutable.of(
                Made.good("slab-good", JunctionKind.SLAB_EDGE),
                Made.good("corner-good", JunctionKind.OUTSIDE_CORNER),
                Made.good("edge-good", JunctionKind.FLAT_ROOF_EDGE));
    }

    /** The good details with one of them replaced by another of its id. */
    public static ImmutableList<Made> goodBut(Made other) {
        return good().collect(made -> made.id().equals(other.id()) ? other : made);
    }

    public static String yaml() {
        try (InputStream in = Sample.class.getResourceAsStream("/coldseam/audit/box.yaml")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** The box with a smaller second storey, whose ground floor is open above as a terrace; with the layers of its deck. */
    public static String terrace(String layers) {
        return yaml().replace(
                        "body:\n",
                        "  deck:\n    layers:\n" + layers
                                + "    - {material: bitumen sheet, thickness: 8 mm, role: membrane, controls: [water]}\n"
                                + "body:\n")
                .replace(
                        "    walls: {all: wall}\n",
                        "    walls: {all: wall}\n    terrace: deck\n"
                                + "  - name: upper floor\n"
                                + "    footprint: {rectangle: [8 m, 4 m], at: [0 m, 2 m]}\n"
                                + "    height: 3 m\n    floor-thickness: 300 mm\n    walls: {all: wall}\n");
    }

    /** A house whose details no catalogue is asked for. */
    public static House house(String yaml) {
        KnownNames any = KnownNames.of(Lists.immutable.empty()).or(name -> true);
        return HouseFile.read("box.yaml", yaml.getBytes(StandardCharsets.UTF_8), any, any, any)
                .house();
    }

    public static Audit audit(String yaml, ImmutableList<Made> details) {
        return audit(yaml, details, Optional.empty());
    }

    /** The same with its corners computed, which all have one temperature factor. */
    public static Audit audit(String yaml, ImmutableList<Made> details, double cornerFactor) {
        return audit(yaml, details, Optional.of(setup -> corner(setup, cornerFactor)));
    }

    /** The same with its corners computed so. */
    public static Audit audit(String yaml, ImmutableList<Made> details, VertexComputing corners) {
        return audit(yaml, details, Optional.of(corners));
    }

    /** The same with a detail of its corners' own at the roof, which fits none of them. */
    public static Audit misfitAtCorners(String yaml, ImmutableList<Made> details) {
        Detail corner = DetailFile.read("own-corner.yaml", """
                corner: own-corner
                kind: flat roof corner
                name: Block in the corner
                rank: best
                looks-like: A block.
                drawing:
                - {box: block, material: air, between: {wall: [wall.inside, wall.outside]}}
                order: []
                connections: {}
                failures: []
                photographs: []
                """);
        House house = house(yaml.replace("\njunctions:", "\ncorners: [own-corner]\n\njunctions:"));
        return new Auditor(
                        new Catalogue(catalogue(details).details().newWith(corner)),
                        work -> new Auditor.Solving(
                                computer(),
                                Optional.of(setup -> {
                                    throw DetailDoesNotFit.of("its block stands on nothing");
                                }),
                                Optional.of(setup -> PairAnswer.not(PairObstacle.REACHES))),
                        true,
                        "test")
                .audit(house, ShellBuilder.build(house), Digests.of("digest"), Progress.SILENT);
    }

    static VertexResult corner(VertexSetup setup, double factor) {
        return new VertexResult(
                setup,
                Optional.empty(),
                Optional.empty(),
                null,
                factor,
                new Place(0, 0, 0),
                Lists.immutable.empty(),
                Lists.immutable.empty());
    }

    /** The same with its seams that touch computed two in one section, which lose a hundredth more than apart. */
    public static Audit pairs(String yaml, ImmutableList<Made> details, double factor) {
        return audit(
                yaml,
                details,
                Optional.empty(),
                setup -> PairAnswer.of(new PairResult(
                        setup,
                        null,
                        Interval.of(2.01),
                        0,
                        factor,
                        new Point(0, 0),
                        Lists.immutable.empty(),
                        Lists.immutable.empty())));
    }

    private static Audit audit(String yaml, ImmutableList<Made> details, Optional<VertexComputing> corners) {
        return audit(yaml, details, corners, setup -> PairAnswer.not(PairObstacle.REACHES));
    }

    private static Audit audit(
            String yaml, ImmutableList<Made> details, Optional<VertexComputing> corners, PairComputing pairs) {
        House house = house(yaml);
        return new Auditor(
                        catalogue(details),
                        work -> new Auditor.Solving(computer(), corners, Optional.of(pairs)),
                        corners.isPresent(),
                        "test")
                .audit(house, ShellBuilder.build(house), Digests.of("digest"), Progress.SILENT);
    }

    /** The box, of which two corners have a garage on one side, with these answers for its junctions. */
    public static Audit besideAGarage(String yaml, BiFunction<Detail, JunctionSetup, JunctionResult> junctions) {
        House house = house(yaml.replace("{all: wall}", "{all: wall, south: {assembly: wall, faces: garage}}")
                .replace("body:\n", "neighbours: {garage: {temperature-factor: 0.7}}\nbody:\n"));
        return new Auditor(catalogue(good()), computer(junctions), "test")
                .audit(house, ShellBuilder.build(house), Digests.of("digest"), Progress.SILENT);
    }

    /** Whether one of the surfaces faces that garage. */
    public static boolean isBesideGarage(JunctionSetup setup) {
        return setup.firstExposure().kind() == Exposure.Kind.UNHEATED
                || setup.secondExposure().kind() == Exposure.Kind.UNHEATED;
    }

    /**
     * Gives what the made-up detail says; those with "misfit" in their id fit nothing, those with "frame-in" and "frame-out" draw one, and with "changing-side" in it air
     * control lies inside the insulation in one surface and outside it in the other.
     */
    public static BridgeComputer computer() {
        return computer(Sample::result);
    }

    /** Gives these answers for junctions, and computes points. */
    public static BridgeComputer computer(BiFunction<Detail, JunctionSetup, JunctionResult> junctions) {
        return new BridgeComputer() {
            @Override
            public JunctionResult compute(Detail detail, JunctionSetup setup) {
                return junctions.apply(detail, setup);
            }

            @Override
            public PointResult compute(Detail detail, PointSetup setup) {
                return POINTS.compute(detail, setup);
            }
        };
    }

    /** The made-up details, and the points of the built-in catalogue. */
    public static Catalogue catalogue(ImmutableList<Made> details) {
        return new Catalogue(
                details.collect(Made::detail).newWithAll(CatalogueFile.builtIn().points()));
    }

    private static JunctionResult result(Detail detail, JunctionSetup setup) {
        if (detail.id().contains("misfit")) {
            throw DetailDoesNotFit.of(Phrase.of("the wall is ")
                    .andMillimetres(0.465)
                    .and(" thick; at most ")
                    .andMillimetres(0.3)
                    .and(" fit"));
        }
        return result((Made) detail.drawing(), detail, setup, toInternal(setup));
    }

    /**
     * What made-up results say, of any detail.
     *
     * @param toInternal W/(m·K), by which its psi is greater in internal dimensions
     */
    static JunctionResult result(Made made, Detail detail, JunctionSetup setup, double toInternal) {
        Interval external = new Interval(made.psi() - 5e-5, made.psi() + 5e-5);
        return new JunctionResult(
                detail,
                setup,
                null,
                SectionPlan.of(Lists.immutable.empty(), Lists.immutable.empty(), Lists.immutable.empty()),
                Lists.immutable.empty(),
                Interval.of(1),
                external,
                external.plus(toInternal),
                made.fRsi(),
                new Point(0, 0),
                new PenLine(
                        made.unbroken(),
                        Lists.immutable.empty(),
                        0.2 * made.share(),
                        Lists.immutable.empty(),
                        made.share()),
                new WeakestPath(Lists.immutable.empty(), 5 * made.ratio(), 5, made.ratio()),
                made.id().contains("changing-side")
                        ? Lists.immutable.of(new ControlLine.ChangesSide(
                                Control.AIR, Lists.immutable.empty(), Zone.INSIDE, Zone.OUTSIDE))
                        : Lists.immutable.empty(),
                frameSetBack(made),
                Lists.immutable.empty());
    }

    /** As the id says. */
    private static OptionalDouble frameSetBack(Made made) {
        return made.id().contains("frame")
                ? OptionalDouble.of(made.id().contains("frame-out") ? 0.1 : 0.2)
                : OptionalDouble.empty();
    }

    /** Σ U·Δl at a right angle: each surface is longer outside by the other's thickness. */
    private static double toInternal(JunctionSetup setup) {
        if (setup.second().isEmpty()) {
            return 0;
        }
        return BoxByHand.transmittance(setup.first().name())
                        * setup.second().orElseThrow().thickness()
                + BoxByHand.transmittance(setup.second().orElseThrow().name())
                        * setup.first().thickness();
    }
}
