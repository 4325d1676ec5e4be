package coldseam.junctions.point;

import coldseam.conduction.Polygon;
import coldseam.envelope.Layer;
import coldseam.envelope.Material;
import coldseam.envelope.Role;
import coldseam.envelope.file.house.MaterialLibrary;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.PointSetup;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.detail.RoundDrawing;
import coldseam.junctions.language.DrawingNames;
import coldseam.junctions.language.Expression;
import coldseam.junctions.plan.SectionPlan.Origin;
import coldseam.junctions.plan.SectionPlan.Piece;
import coldseam.junctions.section.Band;
import coldseam.junctions.section.TermsCheck;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.map.MutableMap;
import org.eclipse.collections.impl.factory.Lists;
import org.eclipse.collections.impl.factory.Maps;

/**
 * From a point detail and a surface's layers to a section that can be solved.
 *
 * <p>The disc reaches at least 1 m and three times the build-up's thickness past the widest body (ISO 10211:2017 clause 5.3,
 * from memory); its rim is adiabatic.
 *
 * @param section that is solved
 * @param pieces what is drawn, in painting order
 * @param notes what was simplified, in plain words
 */
public record PointComposition(PointSection section, ImmutableList<Piece> pieces, ImmutableList<String> notes) {

    private static final double REACH = 1;
    private static final double REACH_THICKNESSES = 3;

    /** m: round-off of unit conversions. */
    private static final double SLACK = 1e-9;

    /** Share of the ground's thickness that may be drawn into it. */
    private static final double INTO_GROUND = 0.75;

    /** Lays a detail on a surface's layers. */
    private static final class Laying {
        private final Detail detail;
        private final RoundDrawing drawing;
        private final PointSetup setup;
        private final Band band;
        private final MutableMap<String, Double> scope = Maps.mutable.empty();
        private final MutableList<String> reasons = Lists.mutable.empty();
        private final MutableList<String> notes = Lists.mutable.empty();
        private final MutableList<PointSection.Sheet> sheets = Lists.mutable.empty();
        private final MutableList<PointSection.Body> bodies = Lists.mutable.empty();
        private final MutableList<Painted> painted = Lists.mutable.empty();

        /** A body as it is drawn. */
        private record Painted(Material material, double inner, double outer, double from, double to, boolean solved) {}

        Laying(Detail detail, RoundDrawing drawing, PointSetup setup) {
            this.detail = detail;
            this.drawing = drawing;
            notes.add(drawing.drawnRound());
            this.setup = setup;
            this.band = Band.of(DrawingNames.SURFACE, setup.host(), setup.exposure(), setup.flow());
        }

        private String who() {
            return detail.who();
        }

        PointComposition laid() {
            name();
            check();
            stopIfRefused();
            band.strata().select(Band.Stratum::solved).forEach(this::sheet);
            double ground = setup.ground().map(this::ground).orElse(0.0);
            drawing.bodies().forEach(each -> body(each, ground));
            stopIfRefused();
            double widest = painted.collectDouble(Painted::outer).maxIfEmpty(0);
            double radius = widest + Math.max(REACH, Math.max(REACH_THICKNESSES * band.thickness(), ground));
            PointSection section = new PointSection(
                    detail.name(),
                    sheets.toImmutable(),
                    bodies.toImmutable(),
                    band.rsi(),
                    band.rse(),
                    radius,
                    setup.indoorTemperature(),
                    farTemperature());
            ImmutableList<PointSection.Body> floating = section.floating();
            ImmutableList<PointSection.Body> inTheWind =
                    floating.select(body -> band.ventilated() && body.from() >= band.solvedThickness() - SLACK);
            floating.reject(inTheWind::contains)
                    .collect(PointSection.Body::material)
                    .forEach(material -> reasons.add(who() + " draws " + material + " that stands free of \""
                            + setup.host().name()
                            + "\"; everything must be joined to the layers. Choose another detail, or"
                            + " draw what joins it."));
            inTheWind.forEach(
                    body -> notes.add("What lies on the cladding outside the ventilated air layer is drawn, and"
                            + " left out of the heat flow."));
            stopIfRefused();
            return new PointComposition(
                    section.without(inTheWind),
                    pieces(radius, ground),
                    notes.distinct().toImmutable());
        }

        private void stopIfRefused() {
            if (reasons.notEmpty()) {
                throw new DetailDoesNotFit(reasons.distinct().toImmutable());
            }
        }

        /** °C on the far side; of an unheated space by its factor. */
        private double farTemperature() {
            double factor = setup.exposure().factor() > 0 ? setup.exposure().factor() : 1;
            return setup.indoorTemperature() - factor * (setup.indoorTemperature() - setup.outdoorTemperature());
        }

        private void name() {
            scope.put("inside", 0.0);
            scope.put("outside", band.ventilated() ? band.thickness() : band.solvedThickness());
            for (Role role : Role.values()) {
                scope.put(DrawingNames.word(role) + ".inside", band.inside(role));
                scope.put(DrawingNames.word(role) + ".outside", band.outside(role));
            }
            drawing.parameters().forEach(each -> scope.put(each.name(), each.value()));
            drawing.terms().lines().forEach(each -> scope.put(each.name(), value(each.line())));
        }

        private double value(Expression expression) {
            return expression.value(scope.toImmutable());
        }

        private void check() {
            TermsCheck terms = new TermsCheck(who(), drawing.terms(), reasons);
            terms.layers(name -> Optional.of(band));
            terms.conditions(this::value);
        }

        private void sheet(Band.Stratum stratum) {
            sheets.add(new PointSection.Sheet(
                    stratum.layer().layer().material().name(),
                    stratum.conductivity(),
                    stratum.solvedOutside() - stratum.solvedInside()));
            if (stratum.layer().layer().framing().isPresent()) {
                notes.add(stratum.layer().layer().material().name()
                        + " between members is drawn even, with the conductivity of both together.");
            }
        }

        /** Adds the ground; returns how thick it is, m. */
        private double ground(PointSetup.GroundBelow below) {
            double resistance = 1 / below.transmittance() - 1 / band.transmittance();
            if (!(resistance > 0)) {
                return 0;
            }
            double thickness = resistance * below.conductivity();
            sheets.add(new PointSection.Sheet("ground", below.conductivity(), thickness));
            notes.add(String.format(
                    Locale.ROOT,
                    "The ground is drawn %.1f m thick, so that the floor has its U of ISO 13370.",
                    thickness));
            return thickness;
        }

        private void body(RoundDrawing.Turned turned, double ground) {
            double outer = value(turned.diameter()) / 2;
            double inner = turned.hole().map(each -> value(each) / 2).orElse(0.0);
            double from = value(turned.from());
            double to = value(turned.to());
            Material material = material(turned);
            if (setup.ground().isPresent()) {
                double deepest = band.solvedThickness() + INTO_GROUND * ground;
                if (to > deepest) {
                    to = deepest;
                    notes.add("What goes deep into the ground is drawn no deeper than three quarters of it.");
                }
            }
            // Where lines have crossed, because a house's layers are thinner, nothing is there.
            if (outer - inner <= SLACK || to - from <= SLACK || material == null) {
                return;
            }
            painted.add(new Painted(material, Math.max(0, inner), outer, from, to, !turned.drawnOnly()));
            if (!turned.drawnOnly()) {
                bodies.add(new PointSection.Body(
                        material.name(), material.conductivity(), Math.max(0, inner), outer, from, to));
            }
        }

        private Material material(RoundDrawing.Turned turned) {
            if (turned.material().like().isPresent()) {
                Role role = turned.material().like().get();
                Optional<Material> like =
                        band.main(role).map(each -> each.layer().layer().material());
                if (like.isEmpty()) {
                    reasons.add(who() + " draws " + turned.what() + " of the surface's " + DrawingNames.word(role)
                            + "; \"" + setup.host().name() + "\" has none. Choose another detail.");
                }
                return like.orElse(null);
            }
            String name = turned.material().name().orElseThrow();
            Optional<Material> found = Optional.ofNullable(
                            drawing.terms().materials().get(name))
                    .or(() -> setup.host()
                            .layers()
                            .collect(Layer::material)
                            .detectOptional(each -> each.name().equals(name)))
                    .or(() -> MaterialLibrary.named(name));
            if (found.isEmpty()) {
                reasons.add(who() + " draws " + turned.what() + " of \"" + name
                        + "\", which is neither in its file nor in \""
                        + setup.host().name()
                        + "\" nor built in. Add it under materials of the point file.");
            }
            return found.orElse(null);
        }

        private ImmutableList<Piece> pieces(double radius, double ground) {
            MutableList<Piece> all = Lists.mutable.empty();
            for (Band.Stratum stratum : band.strata()) {
                all.add(new Piece(
                        Polygon.rectangle(0, stratum.inside(), radius, stratum.outside()),
                        stratum.layer().layer().material(),
                        stratum.role(),
                        stratum.solved(),
                        new Origin.OfLayer(
                                true,
                                band.strata().indexOf(stratum),
                                stratum.layer().layer(),
                                band.zoneOf(stratum))));
            }
            if (ground > 0) {
                Material soil = MaterialLibrary.named("clay or silt").orElseThrow();
                all.add(new Piece(
                        Polygon.rectangle(0, band.thickness(), radius, band.solvedThickness() + ground),
                        soil,
                        Role.STRUCTURE,
                        true,
                        new Origin.OfGround()));
            }
            painted.forEach(each -> all.add(new Piece(
                    Polygon.rectangle(each.inner(), each.from(), each.outer(), each.to()),
                    each.material(),
                    each.material().isAir()
                            ? Role.AIR_LAYER
                            : each.material().insulates() ? Role.INSULATION : Role.STRUCTURE,
                    each.solved(),
                    new Origin.OfDetail(each.material().name()))));
            return all.toImmutable();
        }
    }

    /**
     * Composes a detail's section.
     *
     * @throws DetailDoesNotFit where the setup lies outside the detail's valid range, with every reason
     */
    public static PointComposition compose(Detail detail, PointSetup setup) {
        if (!(detail.drawing() instanceof RoundDrawing drawing)) {
            throw new DetailDoesNotFit(Lists.immutable.of(
                    detail.who() + " is for: " + detail.kind().label() + ". Choose a detail of a point."));
        }
        return new Laying(detail, drawing, setup).laid();
    }
}
