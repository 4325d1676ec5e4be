package coldseam.junctions.point;

import coldseam.envelope.Duty;
import coldseam.envelope.Material;
import coldseam.envelope.Role;
import coldseam.envelope.file.house.MaterialLibrary;
import coldseam.files.quantity.Format;
import coldseam.files.quantity.Phrase;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.PointSetup;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.detail.PointDrawing;
import coldseam.junctions.language.DrawingNames;
import coldseam.junctions.language.Expression;
import coldseam.junctions.plan.SectionPlan.Fill;
import coldseam.junctions.plan.SectionPlan.Origin;
import coldseam.junctions.section.Band;
import coldseam.junctions.section.TermsCheck;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.map.MutableMap;
import org.eclipse.collections.impl.factory.Lists;
import org.eclipse.collections.impl.factory.Maps;

/** A detail laid on a surface's layers: its sheets, and its bodies with their measures, whatever is made of them. */
final class PointLaying {

    /** m: round-off of unit conversions. */
    static final double SLACK = 1e-9;

    private static final double REACH = 1;
    private static final double REACH_THICKNESSES = 3;

    /** Share of the ground's thickness that may be drawn into it. */
    private static final double INTO_GROUND = 0.75;

    /** What ground is drawn as, whatever it is. */
    static final Material SOIL = MaterialLibrary.named("clay or silt").orElseThrow();

    private final Detail detail;
    private final PointDrawing drawing;
    private final PointSetup setup;
    private final MutableMap<String, Double> scope = Maps.mutable.empty();
    private final MutableList<Phrase> reasons = Lists.mutable.empty();
    final Band band;
    final MutableList<String> notes = Lists.mutable.empty();
    final MutableList<PointSection.Sheet> sheets = Lists.mutable.empty();
    /** What the sheets are. */
    final MutableList<Fill> fills = Lists.mutable.empty();

    final MutableList<Laid> bodies = Lists.mutable.empty();
    /** m, thickness of the ground; zero without. */
    final double ground;

    /**
     * A body with its measures, m.
     *
     * @param round whether it is; its half width is then its radius
     * @param hole half width inside; zero for a solid one
     * @param sideways of its middle from the axis
     * @param upwards likewise
     * @param belowToo whether it is there below the axis as above
     * @param solved whether the heat flow sees it
     */
    record Laid(
            Material material,
            boolean round,
            double hole,
            double halfWidth,
            double halfHeight,
            double sideways,
            double upwards,
            boolean belowToo,
            double from,
            double to,
            boolean solved) {

        /** Whether it lies on another, or in it, on either side of the axis. */
        boolean touches(Laid other) {
            return from <= other.to + SLACK
                    && other.from <= to + SLACK
                    && Math.abs(Math.abs(sideways) - Math.abs(other.sideways)) <= halfWidth + other.halfWidth + SLACK
                    && Math.abs(Math.abs(upwards) - Math.abs(other.upwards)) <= halfHeight + other.halfHeight + SLACK;
        }

        /** How far it reaches from the axis. */
        double reach() {
            return Math.max(Math.abs(sideways) + halfWidth, Math.abs(upwards) + halfHeight);
        }
    }

    /** @throws DetailDoesNotFit where the setup lies outside the detail's valid range, with every reason */
    PointLaying(Detail detail, PointDrawing drawing, PointSetup setup) {
        this.detail = detail;
        this.drawing = drawing;
        this.setup = setup;
        this.band = Band.of(DrawingNames.SURFACE, setup.host(), setup.exposure(), setup.flow());
        if (!drawing.drawnRound().isEmpty()) {
            notes.add(drawing.drawnRound());
        }
        name();
        check();
        stopIfRefused();
        band.strata().select(Band.Stratum::solved).forEach(this::sheet);
        this.ground = setup.ground().map(this::ground).orElse(0.0);
        drawing.bodies().forEach(this::body);
        if (detail.own() && detail.point().carries()) {
            carried();
        }
        stopIfRefused();
    }

    /** Refuses what would stand outside the insulation on nothing that bears it, on wool or on a sheet over it, and foam for a post. */
    private void carried() {
        MutableList<Laid> loose = bodies.select(each -> each.solved() && !isSoft(each.material()));
        MutableList<Laid> held = loose.select(each -> each.from() <= band.outside(Role.STRUCTURE) + SLACK);
        loose.removeAll(held);
        boolean more = true;
        while (more) {
            MutableList<Laid> next = loose.select(each -> held.anySatisfy(each::touches));
            held.addAll(next);
            loose.removeAll(next);
            more = next.notEmpty();
        }
        String where = " outside the insulation of \"" + setup.host().name() + "\"";
        loose.select(each -> isOutside(each) && !inTheWind(each.from()))
                .forEach(each -> reasons.add(
                        Phrase.of(detail.who() + " stands " + each.material().name() + where
                                + " on nothing that bears a load. Draw what joins it to the structure.")));
        if (loose.noneSatisfy(this::isOutside)
                && held.noneSatisfy(each -> isOutside(each) && !each.material().insulates())) {
            reasons.add(Phrase.of(detail.who() + " draws nothing solid" + where + ", and is for: "
                    + detail.kind().label() + ". Draw what carries there."));
        }
    }

    private boolean isOutside(Laid body) {
        return body.to() > band.outside(Role.INSULATION) + SLACK;
    }

    private static boolean isSoft(Material material) {
        return material.isAir() || material.insulates() && !material.canBear(Duty.LOAD);
    }

    private void stopIfRefused() {
        if (reasons.notEmpty()) {
            throw new DetailDoesNotFit(reasons.distinct().toImmutable());
        }
    }

    /** Refuses what stands free of the layers. */
    void refuseFloating(ImmutableList<String> materials) {
        materials.forEach(
                material -> reasons.add(Phrase.of(detail.who() + " draws " + material + " that stands free of \""
                        + setup.host().name() + "\"; everything must be joined to the layers. Choose another detail, or"
                        + " draw what joins it.")));
        stopIfRefused();
    }

    /** Whether a body that stands free there is left out: outside a ventilated cladding only what is joined counts. */
    boolean inTheWind(double from) {
        return band.ventilated() && from >= band.solvedOutside() - SLACK;
    }

    void noteInTheWind() {
        notes.add(
                "What lies on the cladding outside the ventilated air layer is drawn, and left out of the heat flow.");
    }

    /** °C on the far side; of an unheated space by its factor. */
    double farTemperature() {
        double factor = setup.exposure().factor() > 0 ? setup.exposure().factor() : 1;
        return setup.indoorTemperature() - factor * (setup.indoorTemperature() - setup.outdoorTemperature());
    }

    /** m, from the axis to where nothing but the surface is left. */
    double radius() {
        return bodies.collectDouble(Laid::reach).maxIfEmpty(0)
                + Math.max(REACH, Math.max(REACH_THICKNESSES * band.thickness(), ground));
    }

    private void name() {
        scope.put("inside", 0.0);
        scope.put("outside", band.ventilated() ? band.thickness() : band.solvedOutside());
        for (Role role : Role.values()) {
            scope.put(DrawingNames.word(role) + ".inside", band.inside(role));
            scope.put(DrawingNames.word(role) + ".outside", band.outside(role));
        }
        drawing.terms().name(scope);
    }

    private double value(Expression expression) {
        return expression.value(scope.toImmutable());
    }

    private double value(Optional<Expression> expression) {
        return expression.map(this::value).orElse(0.0);
    }

    private void check() {
        TermsCheck terms = new TermsCheck(detail.who(), drawing.terms(), reasons);
        terms.layers(name -> Optional.of(band));
        terms.conditions(this::value);
    }

    private void sheet(Band.Stratum stratum) {
        sheets.add(new PointSection.Sheet(
                stratum.layer().layer().material().name(),
                stratum.conductivity(),
                stratum.solvedOutside() - stratum.solvedInside()));
        fills.add(new Fill(stratum.layer().layer().material(), origin(stratum)));
        if (stratum.layer().layer().framing().isPresent()) {
            notes.add(stratum.layer().layer().material().name()
                    + " between members is drawn even, with the conductivity of both together.");
        }
    }

    /** What a layer of the surface is painted for. */
    Origin origin(Band.Stratum stratum) {
        return new Origin.OfLayer(
                true, band.strata().indexOf(stratum), stratum.layer().layer(), band.zoneOf(stratum));
    }

    /** Adds the ground; returns how thick it is, m. */
    private double ground(PointSetup.GroundBelow below) {
        double resistance = 1 / below.transmittance() - 1 / band.transmittance();
        if (!(resistance > 0)) {
            return 0;
        }
        double thickness = resistance * below.conductivity();
        sheets.add(new PointSection.Sheet("ground", below.conductivity(), thickness));
        fills.add(new Fill(SOIL, new Origin.OfGround()));
        notes.add(Format.of("The ground is drawn %.1f m thick, so that the floor has its U of ISO 13370.", thickness));
        return thickness;
    }

    private void body(PointDrawing.Body drawn) {
        PointDrawing.Shape shape = drawn.shape();
        boolean round = shape.round().isPresent();
        double halfWidth = (round ? value(shape.round()) : value(shape.width())) / 2;
        double halfHeight = round ? halfWidth : value(shape.height()) / 2;
        double hole = Math.max(0, value(shape.hole()) / 2);
        double from = value(drawn.from());
        double to = value(drawn.to());
        Material material = material(drawn);
        if (detail.own() && drawn.drawnOnly() && from < band.outside(Role.INSULATION) - SLACK && to > SLACK) {
            reasons.add(Phrase.of(detail.who() + " draws " + drawn.what() + " inside the insulation of \""
                    + setup.host().name() + "\" and lets it conduct nothing. Leave out drawn-only."));
        }
        if (setup.ground().isPresent()) {
            double deepest = band.solvedOutside() + INTO_GROUND * ground;
            if (to > deepest) {
                to = deepest;
                notes.add("What goes deep into the ground is drawn no deeper than three quarters of it.");
            }
        }
        // Where lines have crossed, because a house's layers are thinner, nothing is there.
        if (Math.min(halfWidth, halfHeight) - hole <= SLACK || to - from <= SLACK || material == null) {
            return;
        }
        Optional<PointDrawing.Where> where = drawn.where();
        bodies.add(new Laid(
                material,
                round,
                hole,
                halfWidth,
                halfHeight,
                where.map(each -> value(each.sideways())).orElse(0.0),
                where.map(each -> value(each.upwards())).orElse(0.0),
                where.filter(PointDrawing.Where::belowToo).isPresent(),
                from,
                to,
                !drawn.drawnOnly()));
    }

    private Material material(PointDrawing.Body drawn) {
        if (drawn.material().like().isPresent()) {
            Role role = drawn.material().like().get();
            Optional<Material> like =
                    band.main(role).map(each -> each.layer().layer().material());
            if (like.isEmpty()) {
                reasons.add(Phrase.of(
                        detail.who() + " draws " + drawn.what() + " of the surface's " + DrawingNames.word(role)
                                + "; \"" + setup.host().name() + "\" has none. Choose another detail."));
            }
            return like.orElse(null);
        }
        String name = drawn.material().name().orElseThrow();
        Optional<Material> found =
                setup.material(name).or(() -> drawing.terms().material(name)).or(() -> MaterialLibrary.named(name));
        if (found.isEmpty()) {
            reasons.add(Phrase.of(detail.who() + " draws " + drawn.what() + " of \"" + name
                    + "\", which is neither in its file nor in \""
                    + setup.host().name()
                    + "\" nor built in. Add it under materials of the point file."));
        }
        return found.orElse(null);
    }
}
