package coldseam.junctions.section;

import coldseam.envelope.BridgeKind;
import coldseam.envelope.Exposure;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.KindForm;
import coldseam.envelope.Opening;
import coldseam.envelope.Role;
import coldseam.files.quantity.Format;
import coldseam.files.quantity.Phrase;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.detail.BandDrawing;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.detail.Rank;
import coldseam.junctions.kind.Chart;
import coldseam.junctions.language.DrawingNames;
import coldseam.junctions.language.Expression;
import coldseam.junctions.language.Statement;
import coldseam.junctions.plan.SectionPlan.Zone;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.map.ImmutableMap;
import org.eclipse.collections.api.map.MutableMap;
import org.eclipse.collections.impl.factory.Lists;
import org.eclipse.collections.impl.factory.Maps;

/**
 * A drawing laid on a house's layers: its bands, its chart, and the value of every name.
 *
 * @param second band; empty where the kind has one surface
 * @param chart from lines to the plane
 * @param scope value of every name: m, or a plain number
 * @param frameOutside m, the frame's outer face: across the first band, or for a door across the wall
 */
record Scene(
        BandDrawing drawing,
        JunctionSetup setup,
        KindForm form,
        Band first,
        Optional<Band> second,
        Chart chart,
        ImmutableMap<String, Double> scope,
        double frameOutside) {

    /** m, of a floor or partition where neither the house nor the detail says. */
    private static final double THING_THICKNESS = 0.2;

    private static final double SLACK = 1e-9;

    /** m; nobody measures a cellar or a floor closer. */
    private static final double GIVEN_SLACK = 0.001;

    /** Degrees from flat within which two crossing bands no longer meet in a point. */
    private static final double FLAT = 12;

    /** Degrees, by which corners given to the millimetre turn a wall of a metre, and what a message shows of an angle. */
    private static final double MEASURED = 0.05;

    /**
     * Lays a drawing on a junction.
     *
     * @throws DetailDoesNotFit with every reason
     */
    static Scene of(Detail detail, BandDrawing drawing, JunctionSetup setup) {
        MutableList<Phrase> reasons = Lists.mutable.empty();
        KindForm form = setup.form();
        String who = detail.who();
        if (setup.kind() != drawing.kind()) {
            reasons.add(Phrase.of(who + " is for: "
                    + detail.kinds().collect(BridgeKind::label).makeString(", ") + "; the junction is: "
                    + setup.kind().label() + ". Choose a detail of that kind."));
        }
        if (form.twoSurfaces() && setup.second().isEmpty()) {
            reasons.add(Phrase.of(who + " needs the build-up of the "
                    + drawing.kind().second() + "; the junction gives none. Give that surface an assembly."));
        }
        if (form.framed() && setup.opening().isEmpty()) {
            reasons.add(
                    Phrase.of(who + " needs a window or door; the junction gives none. Choose it for openings only."));
        }
        if (form.ground() && setup.ground().isEmpty()) {
            reasons.add(Phrase.of(
                    who + " stands in the ground; the junction gives no ground. Choose it for floors on ground only."));
        }
        if (!reasons.isEmpty()) {
            throw new DetailDoesNotFit(reasons.toImmutable());
        }
        if (!isFor(drawing, setup)) {
            throw DetailDoesNotFit.of(who + " is drawn for one build alone: "
                    + drawing.only().words() + "; the layers here are others. Choose another detail.");
        }
        Scene scene = build(drawing, setup, form);
        scene.check(detail, reasons);
        if (!reasons.isEmpty()) {
            throw new DetailDoesNotFit(reasons.toImmutable());
        }
        return scene;
    }

    /** Whether a drawing is meant for such layers at all; it may still not fit them. */
    static boolean isFor(BandDrawing drawing, JunctionSetup setup) {
        BandDrawing.Only only = drawing.only();
        if (only.anything()) {
            return true;
        }
        Band first = first(setup);
        Optional<Band> second = second(setup);
        return only.bands().allSatisfy(each -> Band.built(each.first() ? Optional.of(first) : second, each.build()))
                && only.contrasts()
                        .allSatisfy(each -> second.filter(other -> differ(first, other, each))
                                .isPresent());
    }

    private static boolean differ(Band first, Band second, BandDrawing.Contrast contrast) {
        return switch (contrast) {
            case SIDES_CHANGE -> second.carrying().opposite(first.carrying());
            case ONE_MONOLITHIC -> oneIs(Statement.Build.MONOLITHIC, first, second);
            case ONE_IN_ITS_FRAME -> oneIs(Statement.Build.IN_ITS_FRAME, first, second);
            case ONE_INSIDE -> oneIs(Statement.Build.INSULATED_INSIDE, first, second);
            case NOT_BOTH_INSIDE -> first.carrying() != Zone.OUTSIDE || second.carrying() != Zone.OUTSIDE;
        };
    }

    private static boolean oneIs(Statement.Build build, Band first, Band second) {
        return Band.built(Optional.of(first), build) != Band.built(Optional.of(second), build);
    }

    private static Band first(JunctionSetup setup) {
        return Band.of(setup.kind(), 0, setup.first(), setup.firstExposure()).bearing(setup.joists());
    }

    private static Optional<Band> second(JunctionSetup setup) {
        return setup.kind().form().twoBuildUps()
                ? setup.second()
                        .map(each -> Band.of(setup.kind(), 1, each, setup.secondExposure())
                                .moved(setup.innerStep())
                                .bearing(setup.joists()))
                : Optional.empty();
    }

    private static Scene build(BandDrawing drawing, JunctionSetup setup, KindForm form) {
        JunctionKind kind = setup.kind();
        Band first = first(setup);
        Optional<Band> second = second(setup);
        Chart chart = Chart.of(form, angle(form, setup));
        MutableMap<String, Double> scope = Maps.mutable.empty();
        first.nameLines(kind.first(), scope);
        second.ifPresent(band -> band.nameLines(kind.second(), scope));
        scope.put(DrawingNames.UPSTAND, setup.upstand());
        // End to end the upper band begins on the floor.
        double underside = form.meeting() == KindForm.Meeting.END_TO_END ? -setup.floorThickness() : setup.floorRise();
        scope.put(DrawingNames.STOREY_FLOOR + ".near", underside);
        scope.put(DrawingNames.STOREY_FLOOR + ".far", underside + setup.floorThickness());
        scope.put(DrawingNames.SEAM, 0.0);
        scope.put(DrawingNames.BEND, chart.bend());
        scope.put(DrawingNames.LEAN, chart.lean());
        drawing.terms().parameters().each(each -> scope.put(each.name(), each.value()));
        setup.sill().ifPresent(sill -> scope.put(DrawingNames.UPTURN, sill));
        double thing = setup.floorThickness() > 0
                ? setup.floorThickness()
                : scope.getIfAbsentValue(DrawingNames.THICKNESS, THING_THICKNESS);
        scope.put(kind.second() + ".near", 0.0);
        scope.put(kind.second() + ".far", thing);
        setup.ground()
                .ifPresent(ground -> scope.put(
                        DrawingNames.GROUND_TOP,
                        -ground.depth().orElseGet(() -> scope.getIfAbsentValue(DrawingNames.DEPTH, 0.0))));
        double frameOutside = form.framed() ? frame(drawing, setup, form, first, second, scope) : 0;
        drawing.terms().lines().each(each -> scope.put(each.name(), each.line().value(scope.toImmutable())));
        return new Scene(drawing, setup, form, first, second, chart, scope.toImmutable(), frameOutside);
    }

    private static double angle(KindForm form, JunctionSetup setup) {
        return switch (form.second()) {
            case SURFACE -> setup.angle();
            case DOOR -> form.floorLines() ? 270 : 90;
            case FRAME, THING -> 90;
        };
    }

    /** Names the frame's lines and returns its outer face's. */
    private static double frame(
            BandDrawing drawing,
            JunctionSetup setup,
            KindForm form,
            Band first,
            Optional<Band> second,
            MutableMap<String, Double> scope) {
        Opening opening = setup.opening().orElseThrow();
        Optional<Band> wall = wall(form, first, second);
        double depth = opening.frameDepth();
        double thickness = wall.map(Band::thickness).orElse(depth);
        if (form.second() == KindForm.Second.DOOR) {
            wall.ifPresentOrElse(
                    band -> band.nameLines(drawing.kind().bands().getLast(), scope), () -> bareWall(scope, depth));
        }
        Optional<Expression> placed = drawing.statements()
                .selectInstancesOf(Statement.Frame.class)
                .getFirstOptional()
                .flatMap(Statement.Frame::outside);
        double outside;
        if (setBack(setup).isPresent()) {
            outside = thickness - setBack(setup).getAsDouble();
        } else if (placed.isPresent()) {
            outside = placed.get().value(scope.toImmutable());
        } else {
            double middle = wall.map(band -> (band.inside(Role.INSULATION) + band.outside(Role.INSULATION)) / 2)
                    .orElse(depth / 2);
            outside = Math.min(thickness, Math.max(depth, middle + depth / 2));
        }
        String name = drawing.kind().second();
        scope.put(name + ".outside", outside);
        scope.put(name + ".inside", outside - depth);
        Optional<Expression> sill = drawing.statements()
                .selectInstancesOf(Statement.Frame.class)
                .getFirstOptional()
                .flatMap(Statement.Frame::sill);
        double floor = form.floorLines() ? scope.get(DrawingNames.STOREY_FLOOR + ".far") : 0;
        scope.put("door.sill", sill.map(each -> each.value(scope.toImmutable())).orElse(floor));
        scope.put("frame.edge", 0.0);
        scope.put("frame.glass", Composer.FRAME_WIDTH);
        return outside;
    }

    /** m, where the house says how deep the frame stands; overhead it stands on its kerb, whatever the house says. */
    private static OptionalDouble setBack(JunctionSetup setup) {
        boolean overhead = setup.kind().form().second() == KindForm.Second.FRAME
                && setup.kind().faces().getFirst() != BridgeKind.Facing.SIDE;
        return overhead
                ? OptionalDouble.empty()
                : setup.opening().map(Opening::setBack).orElse(OptionalDouble.empty());
    }

    /** m, from the outer face of the wall that the frame stands in to the frame's; empty where either is not in the section. */
    OptionalDouble setBack() {
        return wall(form, first, second).filter(wall -> form.framed()).stream()
                .mapToDouble(wall -> wall.outside() - frameOutside)
                .findFirst();
    }

    private static Optional<Band> wall(KindForm form, Band first, Optional<Band> second) {
        return form.second() == KindForm.Second.DOOR ? second : Optional.of(first);
    }

    private void checkFrame(MutableList<Phrase> reasons) {
        if (!form.framed() || setBack(setup).isEmpty()) {
            return;
        }
        Opening opening = setup.opening().orElseThrow();
        double wall = frameOutside + setBack(setup).getAsDouble();
        if (frameOutside - opening.frameDepth() < -SLACK) {
            reasons.add(Phrase.of("a frame ")
                    .andMillimetres(opening.frameDepth())
                    .and(" deep that is set back ")
                    .andMillimetres(setBack(setup).getAsDouble())
                    .and(" stands out of the wall of ")
                    .andMillimetres(wall)
                    .and(" into the room; allowed is a set-back of at most ")
                    .andMillimetres(Math.max(0, wall - opening.frameDepth()))
                    .and(". Correct set-back or frame-depth."));
        }
    }

    private static void bareWall(MutableMap<String, Double> scope, double depth) {
        scope.put("wall.inside", 0.0);
        scope.put("wall.outside", depth);
        for (Role role : Role.values()) {
            scope.put("wall." + DrawingNames.word(role) + ".inside", depth);
            scope.put("wall." + DrawingNames.word(role) + ".outside", depth);
        }
    }

    private void check(Detail detail, MutableList<Phrase> reasons) {
        String who = detail.who();
        checkAngle(who, reasons);
        if (detail.rank() != Rank.WORST || drawing.only().contrasts().contains(BandDrawing.Contrast.SIDES_CHANGE)) {
            checkSides(who, reasons);
        }
        checkFrame(reasons);
        TermsCheck terms = new TermsCheck(who, drawing.terms(), reasons);
        terms.layers(name -> band(name.equals(setup.kind().first())));
        checkGiven(
                who,
                DrawingNames.DEPTH,
                setup.ground().map(JunctionSetup.GroundBlock::depth).orElseGet(OptionalDouble::empty),
                reasons);
        checkGiven(who, DrawingNames.UPTURN, setup.sill(), reasons);
        checkSill(who, reasons);
        checkGiven(
                who,
                DrawingNames.THICKNESS,
                form.second() == KindForm.Second.THING && setup.floorThickness() > 0
                        ? OptionalDouble.of(setup.floorThickness())
                        : OptionalDouble.empty(),
                reasons);
        terms.conditions(this::value);
    }

    /** A house's own geometry goes before a parameter; one that was set to something else would be passed over in silence. */
    private void checkGiven(String who, String name, OptionalDouble ofHouse, MutableList<Phrase> reasons) {
        double there = ofHouse.orElse(Double.NaN);
        drawing.terms()
                .parameters()
                .select(each ->
                        each.given() && each.name().equals(name) && Math.abs(each.value() - there) > GIVEN_SLACK)
                .forEach(each -> reasons.add(Phrase.of(who + " was given " + name + " ")
                        .andMillimetres(each.value())
                        .and(", but the house itself says ")
                        .andMillimetres(there)
                        .and(". Leave the parameter out.")));
    }

    /** A copy may draw the sill without {@link DrawingNames#UPTURN}; it then stands for doors that lie so alone. */
    private void checkSill(String who, MutableList<Phrase> reasons) {
        if (setup.sill().isEmpty()) {
            return;
        }
        double drawn = scope.get("door.sill") - first.outside();
        if (Math.abs(drawn - setup.sill().getAsDouble()) > GIVEN_SLACK) {
            reasons.add(Phrase.of(who + " draws the door's sill ")
                    .andMillimetres(drawn)
                    .and(" above the deck; the house has it ")
                    .andMillimetres(setup.sill().getAsDouble())
                    .and(" above it. Draw the sill on deck.outside + " + DrawingNames.UPTURN
                            + ", or give the opening a sill that lies so."));
        }
    }

    /**
     * Insulation that changes from one side of what carries to the other needs a drawing made for it: layers that end by their
     * roles would join it through the structure. The worst of a kind shows what is wrong, and may, unless it is drawn for a change
     * of sides itself, which is the other way round then.
     */
    private void checkSides(String who, MutableList<Phrase> reasons) {
        Zone one = first.carrying();
        Zone other = second.map(Band::carrying).orElse(Zone.WITHIN);
        if (!form.twoSurfaces() || !one.opposite(other)) {
            return;
        }
        String inner = one == Zone.OUTSIDE ? first.name() : second.orElseThrow().name();
        String outer = one == Zone.OUTSIDE ? second.orElseThrow().name() : first.name();
        if (!drawing.insulatedInside().contains(inner)) {
            reasons.add(Phrase.of(who + " is not drawn for insulation that changes sides; here that of the " + inner
                    + " lies inside what carries it, that of the " + outer
                    + " outside. Choose a detail that is, draw one that"
                    + " says insulated-inside: [" + inner + "], or insulate both on one side."));
        }
    }

    private void checkAngle(String who, MutableList<Phrase> reasons) {
        if (form.second() != KindForm.Second.SURFACE) {
            return;
        }
        double angle = setup.angle();
        boolean flat = form.meeting() == KindForm.Meeting.CROSSING && Math.abs(angle - 180) < FLAT;
        double least = drawing.angles().map(BandDrawing.Angles::least).orElse(20.0);
        double most = drawing.angles().map(BandDrawing.Angles::most).orElse(340.0);
        if (flat || !(angle >= least - MEASURED && angle <= most + MEASURED)) {
            reasons.add(Phrase.of(Format.of(
                    "%s is drawn for angles of %.0f° to %.0f°%s between the surfaces, measured indoors; here it is %.1f°."
                            + " Choose another detail, or draw the section by hand.",
                    who, least, most, flat ? " and at least " + (int) FLAT + "° from flat" : "", angle)));
        }
    }

    /** m, by which a cellar's floor lies below the ground outdoors; zero where it does not. */
    double depth() {
        return drawing.statements()
                .selectInstancesOf(Statement.Ground.class)
                .collectDouble(ground -> Math.max(0, -value(ground.level())))
                .maxIfEmpty(0);
    }

    /** Whether a surface faces the ground and the drawing has none. */
    boolean isWithoutItsGround() {
        return (setup.firstExposure().kind() == Exposure.Kind.GROUND
                        || setup.secondExposure().kind() == Exposure.Kind.GROUND)
                && drawing.statements()
                        .selectInstancesOf(Statement.Ground.class)
                        .isEmpty();
    }

    /** A band with an assembly. */
    Optional<Band> band(boolean ofFirst) {
        return ofFirst ? Optional.of(first) : second;
    }

    double value(Expression expression) {
        return expression.value(scope);
    }

    /** m, of the plane in which the first axis' thing, frame or second band has its outer face. */
    double secondOutside() {
        if (second.isPresent()) {
            return second.get().outside();
        }
        return switch (form.second()) {
            case DOOR -> scope.get("wall.outside");
            case FRAME -> Composer.FRAME_WIDTH;
            default -> scope.get(drawing.kind().second() + ".far");
        };
    }
}
