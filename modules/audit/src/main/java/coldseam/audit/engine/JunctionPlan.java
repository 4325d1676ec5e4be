package coldseam.audit.engine;

import coldseam.envelope.Assembly;
import coldseam.envelope.Body;
import coldseam.envelope.Exposure;
import coldseam.envelope.House;
import coldseam.envelope.JunctionChoice;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Material;
import coldseam.envelope.Opening;
import coldseam.envelope.OwnPsi;
import coldseam.envelope.file.house.MaterialLibrary;
import coldseam.envelope.shell.Edge;
import coldseam.envelope.shell.Shell;
import coldseam.envelope.shell.Surface;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.catalogue.Catalogue;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.detail.Rank;
import coldseam.junctions.section.Composer;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.map.ImmutableMap;

/**
 * Which detail each edge gets, and for which setup it is computed.
 *
 * <p>The first choice of the house file that matches wins; without one the coldest of the kind's worst options stands in. An own psi goes
 * before the computed value, but says nothing of how the layers pass.
 */
final class JunctionPlan {

    /** Angles are kept to this many parts of a degree: a house that is turned or mirrored on its lattice asks the same. */
    private static final double PARTS_OF_A_DEGREE = 1e3;

    /** Degrees, within which two angles are one: corners lie on a lattice, and nobody builds closer. */
    private static final double ALIKE = 0.01;

    /** Of an opening's four sides, that over it. */
    private static final ImmutableList<JunctionKind> UNDER_A_LINTEL =
            Lists.immutable.of(JunctionKind.HEAD, JunctionKind.SHUTTER_BOX);

    private static final double PARTS_OF_A_METRE = 1e6;

    /** m, within which two steps are one, for the same reason. */
    private static final double ALIKE_STEPS = 5e-4;

    private final House house;
    private final Shell shell;
    private final Catalogue catalogue;
    private final SurfaceHeats heats;
    /** Its own, which details beside no layer of them draw, too. */
    private final ImmutableMap<String, Material> materials;

    private final MutableList<JunctionSetup> setups = Lists.mutable.empty();
    /** By setups as they stand in that list. */
    private final Map<JunctionSetup, ImmutableList<Detail>> meant = new IdentityHashMap<>();

    JunctionPlan(House house, Shell shell, Catalogue catalogue) {
        this.house = house;
        this.shell = shell;
        this.catalogue = catalogue;
        this.heats = new SurfaceHeats(house, shell, true);
        this.materials = MaterialLibrary.ownOf(house);
    }

    /** One for each edge, in the shell's order. */
    ImmutableList<PlannedEdge> plan() {
        return shell.edges().collect(edge -> plan(edge, false));
    }

    /** The same of what stands already: where nothing is said of it, it was built as such layers are. */
    ImmutableList<PlannedEdge> planAsFound() {
        return shell.edges().collect(edge -> plan(edge, true));
    }

    private PlannedEdge plan(Edge edge, boolean found) {
        Optional<Detail> chosen = Optional.ofNullable(house.choices().detect(choice -> edge.isMeantBy(choice.which())))
                .flatMap(choice -> detail(choice, edge));
        Optional<OwnPsi> own = Optional.ofNullable(house.ownPsi().detect(psi -> edge.isMeantBy(psi.which())));
        Optional<JunctionSetup> setup = setup(edge);
        ImmutableList<Detail> all = setup.map(this::meant).orElseGet(() -> catalogue.options(edge.kind()));
        ImmutableList<Detail> candidates = chosen.isPresent()
                ? Lists.immutable.of(chosen.get())
                : own.isPresent() ? Lists.immutable.empty() : standingIn(all, setup, found);
        PlannedBridge<JunctionSetup> bridge = new PlannedBridge<>(
                edge.name(),
                edge.opening().map(Opening::name),
                ComputedJunctions.length(edge, house.site().dimensions()),
                setup,
                candidates,
                all.select(detail -> hindrance(detail, edge).isEmpty()),
                all.select(detail -> detail.suits().waitsForParts(house.retrofit(), edge.surfaces())
                        && setup.map(there -> Composer.takes(detail, there)).orElse(true)),
                chosen.flatMap(detail -> hindrance(detail, edge))
                        .map(Lists.immutable::of)
                        .orElse(Lists.immutable.empty()),
                chosen.isPresent());
        return found ? new PlannedEdge(edge, bridge.asFound(), Optional.empty()) : new PlannedEdge(edge, bridge, own);
    }

    /**
     * Those that may stand in, the worst first. Of those for one build alone the worst may: nobody who chose nothing is given the
     * better ones. Of what is found they stand for the worst for any build.
     */
    private static ImmutableList<Detail> standingIn(
            ImmutableList<Detail> all, Optional<JunctionSetup> setup, boolean found) {
        ImmutableList<Detail> own = all.select(
                detail -> detail.rank() == Rank.WORST && !detail.drawing().forAnyBuild());
        boolean alone = found
                && own.anySatisfy(detail -> setup.map(there -> Composer.takes(detail.asFound(), there))
                        .orElse(true));
        return own.newWithAll(
                        all.select(detail -> detail.drawing().forAnyBuild() && !(alone && detail.rank() == Rank.WORST)))
                .toImmutableSortedList(Comparator.comparing(Detail::rank));
    }

    /** Why a detail cannot be built at an edge, whatever its layers are. */
    private Optional<String> hindrance(Detail detail, Edge edge) {
        return detail.suits().hindrance(detail.who(), house.retrofit(), edge.surfaces());
    }

    private Optional<Detail> detail(JunctionChoice choice, Edge edge) {
        return catalogue.find(choice.detail(), edge.kind()).map(detail -> detail.with(choice.parameters()));
    }

    /** The options that are meant for such layers at all. */
    private ImmutableList<Detail> meant(JunctionSetup setup) {
        return meant.computeIfAbsent(
                setup, there -> catalogue.options(there.kind()).select(detail -> Composer.isFor(detail, there)));
    }

    /** The setup of an edge: that of an edge before it where only a hair's breadth of angle or step sets them apart. */
    private Optional<JunctionSetup> setup(Edge edge) {
        for (JunctionSetup before : setups) {
            if (before.kind() == edge.kind()
                    && Math.abs(before.angle() - edge.angle()) <= ALIKE
                    && Math.abs(before.innerStep() - innerStep(edge)) <= ALIKE_STEPS
                    && setup(edge, before.angle(), before.innerStep()).equals(Optional.of(before))) {
                return Optional.of(before);
            }
        }
        Optional<JunctionSetup> own =
                setup(edge, Math.rint(edge.angle() * PARTS_OF_A_DEGREE) / PARTS_OF_A_DEGREE, innerStep(edge));
        own.ifPresent(setups::add);
        return own;
    }

    private Optional<JunctionSetup> setup(Edge edge, double angle, double innerStep) {
        Optional<Assembly> first = edge.first().assembly();
        Optional<Assembly> second = edge.second().flatMap(Surface::assembly);
        if (first.isEmpty() || edge.second().isPresent() && second.isEmpty()) {
            return Optional.empty();
        }
        Exposure firstExposure = heats.exposure(edge.first());
        boolean skylight = edge.opening().filter(edge.first()::underSkylight).isPresent();
        Exposure secondExposure =
                edge.second().map(heats::exposure).orElse(skylight ? Exposure.outdoors() : firstExposure);
        return Optional.of(new JunctionSetup(
                edge.kind(),
                first.get(),
                second,
                angle,
                innerStep,
                firstExposure,
                secondExposure,
                edge.opening()
                        .map(opening -> frameOnly(opening)
                                .under(UNDER_A_LINTEL.contains(edge.kind()) ? opening.lintel() : Optional.empty())),
                edge.floorThickness(),
                rounded(edge.floorRise()),
                edge.isAtJoists(house.body()),
                upstand(edge),
                sill(edge),
                ground(edge, firstExposure, secondExposure),
                house.site().indoorTemperature(),
                house.site().outdoorTemperature(),
                edge.kind() == JunctionKind.PARTY_WALL ? edge.first().use() : Body.Use.WALL,
                materials));
    }

    /** A step that leaves none outside, either, is none. */
    private static double innerStep(Edge edge) {
        return Math.abs(edge.innerStep()) <= Edge.FLUSH ? 0 : rounded(edge.innerStep());
    }

    /** An opening without its name, place, size and glass, on which a section does not depend. */
    private static Opening frameOnly(Opening opening) {
        return new Opening(
                "opening",
                opening.kind(),
                "wall",
                1,
                1,
                OptionalDouble.empty(),
                0,
                new Opening.Declared(opening.frameTransmittance(), opening.frameTransmittance()),
                opening.frameDepth(),
                opening.setBack());
    }

    private double upstand(Edge edge) {
        return edge.kind().parapet()
                ? house.body().parapetHeight(edge.first().name(), edge.first().storey())
                : 0;
    }

    private static OptionalDouble sill(Edge edge) {
        return edge.kind() == JunctionKind.TERRACE_THRESHOLD
                ? OptionalDouble.of(rounded(edge.sillHeight()))
                : OptionalDouble.empty();
    }

    private Optional<JunctionSetup.GroundBlock> ground(Edge edge, Exposure first, Exposure second) {
        boolean meetsGround = first.kind() == Exposure.Kind.GROUND || second.kind() == Exposure.Kind.GROUND;
        if (!meetsGround) {
            return Optional.empty();
        }
        Surface inGround = first.kind() == Exposure.Kind.GROUND
                ? edge.first()
                : edge.second().orElseThrow();
        boolean sunk = first.kind() == Exposure.Kind.GROUND && !edge.kind().groundAtFloor();
        double depth = sunk ? rounded(heats.depth(edge.first())) : 0;
        return heats.onGround(inGround)
                .map(floor -> new JunctionSetup.GroundBlock(
                        floor.groundConductivity(),
                        rounded(floor.characteristicDimension()),
                        rounded(floor.wallThickness()),
                        depth > 0 ? OptionalDouble.of(depth) : OptionalDouble.empty(),
                        heats.edgeInsulation(inGround)));
    }

    /** To the lattice of places, so that round-off does not make two setups of one. */
    static double rounded(double metres) {
        return Math.rint(metres * PARTS_OF_A_METRE) / PARTS_OF_A_METRE;
    }
}
