package coldseam.junctions.section;

import coldseam.assemblies.EquivalentLayer;
import coldseam.assemblies.EquivalentLayers;
import coldseam.assemblies.HeatFlow;
import coldseam.assemblies.OuterSurface;
import coldseam.envelope.Assembly;
import coldseam.envelope.Control;
import coldseam.envelope.Exposure;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Layer;
import coldseam.envelope.Material;
import coldseam.envelope.Role;
import coldseam.junctions.language.DrawingNames;
import coldseam.junctions.language.Statement;
import coldseam.junctions.plan.SectionPlan.Zone;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.map.MutableMap;
import org.eclipse.collections.impl.factory.Lists;

/**
 * A surface's layers as a section draws and solves them.
 *
 * @param name in its kind
 * @param strata inside → outside
 * @param inside m, where its inner face lies: zero but for a second band whose inner face is out of line with the first's
 * @param outside m, where its outer face lies
 * @param solvedOutside m, where the outer face of what is solved lies
 * @param rse m²·K/W, as large as Rsi behind a well-ventilated air layer
 * @param resistance m²·K/W, of what is solved, without surfaces
 * @param exposure what it faces
 * @param joists whether the floor that bears in it, where it is of masonry, is of joists
 */
public record Band(
        String name,
        ImmutableList<Stratum> strata,
        double inside,
        double outside,
        double solvedOutside,
        HeatFlow flow,
        double rse,
        double resistance,
        Exposure exposure,
        boolean joists) {

    /**
     * One layer.
     *
     * @param layer as solved
     * @param role the part it plays: a lining outside of all that carries, such as a garage's, is a cladding
     * @param inside m, on the line across the section that the band's own inner face is on
     * @param outside m, likewise
     * @param solvedInside m; differs from {@code inside} beside a membrane, whose place its neighbour takes
     * @param solvedOutside m, likewise
     * @param conductivity W/(m·K), which keeps the neighbour's resistance
     * @param insulates whether it counts as insulation
     */
    public record Stratum(
            EquivalentLayer layer,
            Role role,
            double inside,
            double outside,
            double solvedInside,
            double solvedOutside,
            double conductivity,
            boolean insulates) {

        /** Whether it takes part in the conduction. */
        public boolean solved() {
            return layer.part() == EquivalentLayer.Part.CARRIES_HEAT;
        }

        private Stratum moved(double metres) {
            return new Stratum(
                    layer,
                    role,
                    inside + metres,
                    outside + metres,
                    solvedInside + metres,
                    solvedOutside + metres,
                    conductivity,
                    insulates);
        }
    }

    /**
     * Puts the lines of its layers among the names of a drawing, m.
     *
     * @param word the band's name in the drawing
     */
    public void nameLines(String word, MutableMap<String, Double> names) {
        names.put(word + ".inside", inside);
        names.put(word + ".outside", outerFace());
        for (Role role : Role.values()) {
            names.put(word + "." + DrawingNames.word(role) + ".inside", inside(role));
            names.put(word + "." + DrawingNames.word(role) + ".outside", outside(role));
        }
        names.put(word + "." + DrawingNames.BEARING + ".outside", bearing());
        for (Control control : DrawingNames.CONTROLS) {
            Optional<Stratum> layer = strata.detectOptional(each -> controls(each, control));
            double usual = control == Control.WATER ? outside : inside(Role.STRUCTURE);
            names.put(
                    word + "." + DrawingNames.word(control) + ".inside",
                    layer.map(Stratum::inside).orElse(usual));
            names.put(
                    word + "." + DrawingNames.word(control) + ".outside",
                    layer.map(Stratum::outside).orElse(usual));
        }
    }

    /** Whether a layer is named for a control that its material can do. */
    private static boolean controls(Stratum stratum, Control control) {
        Layer layer = stratum.layer().layer();
        return layer.controls().contains(control) && layer.material().canControl(control);
    }

    /**
     * The layers of an assembly.
     *
     * @param name in its kind
     * @throws coldseam.assemblies.AssemblyException where the assembly cannot be computed
     */
    public static Band of(String name, Assembly assembly, Exposure exposure, HeatFlow flow) {
        EquivalentLayers stack = EquivalentLayers.of(assembly, flow, OuterSurface.of(exposure));
        MutableList<Stratum> strata = Lists.mutable.empty();
        Continuous continuous = Continuous.of(stack.layers());
        boolean shared = exposure.kind() == Exposure.Kind.PARTY;
        int carries = stack.layers().detectLastIndex(layer -> layer.layer().role() == Role.STRUCTURE);
        double inside = 0;
        double solvedTo = 0;
        double resistance = 0;
        for (EquivalentLayer layer : stack.layers()) {
            Role named = layer.layer().role();
            boolean outer = !shared && named == Role.FINISH && carries >= 0 && strata.size() > carries;
            Role role = outer ? Role.CLADDING : named;
            double outside = inside + layer.thickness();
            if (layer.part() == EquivalentLayer.Part.CARRIES_HEAT) {
                // A membrane is too thin to mesh: the layer outside it begins at its inner face, with its own
                // resistance.
                double wide = outside - solvedTo;
                strata.add(new Stratum(
                        layer,
                        role,
                        inside,
                        outside,
                        solvedTo,
                        outside,
                        wide / layer.resistance(),
                        continuous.has(layer)));
                solvedTo = outside;
                resistance += layer.resistance();
            } else {
                strata.add(new Stratum(layer, role, inside, outside, inside, outside, layer.conductivity(), false));
            }
            inside = outside;
        }
        return new Band(
                name,
                strata.toImmutable(),
                0,
                inside,
                solvedTo,
                flow,
                stack.exteriorSurfaceResistance(),
                resistance,
                exposure,
                false);
    }

    /** The layers of the first or the second band of a kind, 0 or 1, with heat leaving as it does there. */
    public static Band of(JunctionKind kind, int which, Assembly assembly, Exposure exposure) {
        return of(
                kind.bands().get(which),
                assembly,
                exposure,
                HeatFlow.through(kind.faces().get(which)));
    }

    /**
     * What counts as insulation: what members bridge only beside less that they do not, else the pen line would run in the studs'
     * wool past every gap of the boards outside.
     */
    private enum Continuous {
        UNBRIDGED,
        /** What is insulation by its role holds more though members bridge it: trusses full of wool under a thin board. */
        BY_ROLE,
        /** All that insulates is bridged. */
        ANY;

        static Continuous of(ImmutableList<EquivalentLayer> layers) {
            double unbridged = layers.select(UNBRIDGED::has).sumOfDouble(EquivalentLayer::resistance);
            // With what is unbridged: the bridged alone hold more than that.
            double byRole = layers.select(BY_ROLE::has).sumOfDouble(EquivalentLayer::resistance);
            return unbridged == 0 ? ANY : byRole > 2 * unbridged ? BY_ROLE : UNBRIDGED;
        }

        boolean has(EquivalentLayer layer) {
            boolean insulating = layer.part() == EquivalentLayer.Part.CARRIES_HEAT
                    && layer.layer().material().insulates()
                    && !layer.layer().fillsCavity();
            return insulating
                    && (layer.layer().framing().isEmpty()
                            || layer.conductivity() <= Material.INSULATES_UP_TO
                                    && (this == ANY
                                            || this == BY_ROLE && layer.layer().role() == Role.INSULATION));
        }
    }

    /** The same layers farther out, m. */
    public Band moved(double metres) {
        return metres == 0
                ? this
                : new Band(
                        name,
                        strata.collect(each -> each.moved(metres)),
                        inside + metres,
                        outside + metres,
                        solvedOutside + metres,
                        flow,
                        rse,
                        resistance,
                        exposure,
                        joists);
    }

    /** The same layers where a floor of joists bears in them, or of none. */
    Band bearing(boolean ofJoists) {
        return new Band(name, strata, inside, outside, solvedOutside, flow, rse, resistance, exposure, ofJoists);
    }

    /** m, of all layers. */
    public double thickness() {
        return outside - inside;
    }

    /** Rsi, m²·K/W. */
    public double rsi() {
        return flow.interiorSurfaceResistance();
    }

    /** U of what is solved, W/(m²·K). */
    public double transmittance() {
        return 1 / (rsi() + resistance + rse);
    }

    /**
     * m, where what is built against it begins: a sheet outermost takes no place, and no slit of outdoor air stays behind it. On
     * roofs and decks the sheet's own face, from which upstands are measured.
     */
    double outerFace() {
        return ventilated() || flow == HeatFlow.UPWARDS ? outside : solvedOutside;
    }

    /** Whether heat leaves to a ventilated air layer. */
    public boolean ventilated() {
        return strata.anySatisfy(each -> each.layer().part() == EquivalentLayer.Part.VENTILATED);
    }

    /** Whether it has a layer of a role. */
    public boolean has(Role role) {
        return strata.anySatisfy(each -> each.role() == role);
    }

    /**
     * The innermost face of a role's layers, as they are solved: a membrane beneath them takes no place, so that no slit is
     * left where pieces end at the faces on its two sides. Where the band has none, the face where they would lie.
     */
    public double inside(Role role) {
        return inside(usual(role)).orElseGet(() -> place(role));
    }

    /** The outermost face of a role's layers; where the band has none, the face where they would lie. */
    public double outside(Role role) {
        return outside(usual(role)).orElseGet(() -> place(role));
    }

    /** m, the outer face of what floors bear on: of the structure, or of the inner leaf where a cavity parts that. */
    private double bearing() {
        ImmutableList<Stratum> structure = usual(Role.STRUCTURE);
        int cavity = strata.detectIndex(each -> structure.notEmpty()
                && each.inside() > structure.getFirst().inside()
                && (each.layer().layer().fillsCavity() || each.role() == Role.AIR_LAYER));
        double parted =
                cavity < 0 ? Double.POSITIVE_INFINITY : strata.get(cavity).inside();
        return Math.min(outside(Role.STRUCTURE), parted);
    }

    private static Optional<Double> inside(ImmutableList<Stratum> of) {
        return of.getFirstOptional().map(each -> each.solved() ? each.solvedInside() : each.inside());
    }

    private static Optional<Double> outside(ImmutableList<Stratum> of) {
        return of.getLastOptional().map(Stratum::outside);
    }

    private ImmutableList<Stratum> of(Role role) {
        return strata.select(each -> each.role() == role);
    }

    /** A role's layers where they usually lie: a service void is not the air layer behind the cladding. */
    private ImmutableList<Stratum> usual(Role role) {
        ImmutableList<Stratum> all = of(role);
        ImmutableList<Stratum> usual = all.select(each -> switch (role) {
            case FINISH, STRUCTURE -> zone(each) != Zone.OUTSIDE;
            case INSULATION -> zone(each) == Zone.WITHIN;
            case AIR_LAYER, CLADDING -> zone(each) != Zone.INSIDE;
            case MEMBRANE -> true;
        });
        return usual.isEmpty() && role != Role.AIR_LAYER ? all : usual;
    }

    /**
     * W/(m·K), up to which what carries may be all that insulates: 365 mm of it resist as 80 mm of board do (our own definition;
     * solid timber and aerated concrete of any usual density lie below).
     */
    private static final double MONOLITHIC_UP_TO = 0.16;

    /** Whether a band is built so; one that has no layers of its own is solid, and insulated outside. */
    public static boolean built(Optional<Band> band, Statement.Build build) {
        Optional<Layer> structure = band.flatMap(each -> each.main(Role.STRUCTURE))
                .map(each -> each.layer().layer());
        boolean framed = structure.flatMap(Layer::framing).isPresent();
        boolean wooden =
                framed || structure.filter(each -> each.material().timber()).isPresent();
        boolean joists = !wooden && band.filter(Band::joists).isPresent();
        boolean inside = band.map(Band::carrying).filter(Zone.OUTSIDE::equals).isPresent();
        return switch (build) {
            case FRAMED -> framed;
            case SOLID -> !framed;
            case WOODEN -> wooden;
            case MASONRY -> !wooden;
            case BEARS_SLABS -> !wooden && !joists;
            case BEARS_JOISTS -> joists;
            case INSULATED_INSIDE -> inside;
            case INSULATED_OUTSIDE -> !inside;
            case SEALED_BEHIND -> band.filter(Band::sealedBehindBoards).isPresent();
            case MONOLITHIC ->
                !framed
                        && band.filter(each -> !each.has(Role.INSULATION)).isPresent()
                        && structure
                                .filter(each -> each.material().conductivity() <= MONOLITHIC_UP_TO)
                                .isPresent();
            case IN_ITS_FRAME ->
                framed && band.filter(each -> !each.has(Role.INSULATION)).isPresent();
        };
    }

    private boolean sealedBehindBoards() {
        return strata.select(stratum -> controls(stratum, Control.WATER))
                .getLastOptional()
                .filter(stratum -> zone(stratum) == Zone.INSIDE)
                .isPresent();
    }

    /** Whether layers that carry lie inside and outside the insulation, as the two rows of studs of a double wall. */
    boolean carriesOnBothSides() {
        ImmutableList<Zone> zones = of(Role.STRUCTURE).collect(this::zoneOf);
        return zones.contains(Zone.INSIDE) && zones.contains(Zone.OUTSIDE);
    }

    /** Where what carries lies in respect of the insulation; within where one of the two is missing. */
    Zone carrying() {
        return main(Role.STRUCTURE).map(this::zoneOf).orElse(Zone.WITHIN);
    }

    /** Where one of this band's layers lies in respect of its insulation. */
    public Zone zoneOf(Stratum stratum) {
        Zone zone = zone(stratum);
        return zone == null ? Zone.WITHIN : zone;
    }

    /** Where one of this band's layers lies; null without insulation, where there is no side. */
    Zone zone(Stratum stratum) {
        ImmutableList<Stratum> run = insulation();
        if (run.isEmpty()) {
            return null;
        }
        if (stratum.outside() <= run.getFirst().inside()) {
            return Zone.INSIDE;
        }
        return stratum.inside() >= run.getLast().outside() ? Zone.OUTSIDE : Zone.WITHIN;
    }

    /**
     * The face at which a layer of another band that turns the corner with this one meets its like. By the role alone it
     * could be the wrong one: sheathing outside the studs would run to the battens inside them, a ventilated air layer to a
     * service void, and cut the insulation between.
     *
     * @param outer whether the outermost face is meant, at an outer corner
     * @param role of the layer
     * @param zone of the layer in its own band; null where that has no insulation
     */
    double like(boolean outer, Role role, Zone zone) {
        ImmutableList<Stratum> run = insulation();
        if (zone == null || run.isEmpty()) {
            return outer ? outside(role) : inside(role);
        }
        if (zone == Zone.WITHIN) {
            // Whatever insulates joins what insulates, over its whole thickness.
            return outer ? run.getLast().outside() : run.getFirst().solvedInside();
        }
        ImmutableList<Stratum> alike = of(role).select(each -> zone(each) == zone);
        Optional<Double> face = outer ? outside(alike) : inside(alike);
        return face.orElseGet(() -> switch (zone) {
            case OUTSIDE -> Math.max(place(role), run.getLast().outside());
            default -> role == Role.FINISH ? inside : behindFinish();
        });
    }

    private double behindFinish() {
        return inside(strata.select(each -> each.solved() && each.role() != Role.FINISH))
                .orElse(inside);
    }

    private double place(Role role) {
        double face = inside;
        for (Stratum stratum : strata) {
            if (rank(stratum.role()) < rank(role)) {
                face = Math.max(face, stratum.outside());
            }
        }
        return face;
    }

    /** The usual order, inside → outside. */
    private static int rank(Role role) {
        return switch (role) {
            case FINISH -> 0;
            case STRUCTURE -> 1;
            case INSULATION -> 2;
            case MEMBRANE -> 3;
            case AIR_LAYER -> 4;
            case CLADDING -> 5;
        };
    }

    /** The thickest layer of a role that is solved. */
    public Optional<Stratum> main(Role role) {
        ImmutableList<Stratum> of = strata.select(each -> each.role() == role);
        return of.isEmpty() ? Optional.empty() : Optional.of(of.maxBy(each -> each.outside() - each.inside()));
    }

    /** m, of the thickest run of insulating layers that touch. */
    public double insulationThickness() {
        return thickness(insulation());
    }

    private static double thickness(ImmutableList<Stratum> run) {
        return run.sumOfDouble(each -> each.solvedOutside() - each.solvedInside());
    }

    /** The thickest run of insulating layers that touch; a membrane between them does not part them. */
    private ImmutableList<Stratum> insulation() {
        ImmutableList<Stratum> thickest = Lists.immutable.empty();
        ImmutableList<Stratum> run = Lists.immutable.empty();
        for (Stratum stratum : strata) {
            if (stratum.insulates()) {
                run = run.newWith(stratum);
                thickest = thickness(run) > thickness(thickest) ? run : thickest;
            } else if (stratum.layer().part() != EquivalentLayer.Part.NEGLIGIBLE) {
                run = Lists.immutable.empty();
            }
        }
        return thickest;
    }
}
