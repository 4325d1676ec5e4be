package coldseam.junctions.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.conduction.Point;
import coldseam.envelope.BridgeKind;
import coldseam.envelope.Control;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Layer;
import coldseam.envelope.Role;
import coldseam.files.ResourceFolder;
import coldseam.junctions.BuiltIn;
import coldseam.junctions.ControlLine;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.PenLine;
import coldseam.junctions.TypicalBuild;
import coldseam.junctions.TypicalSetups;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.detail.Photograph;
import coldseam.junctions.detail.PointDrawing;
import coldseam.junctions.language.DetailParameter;
import coldseam.junctions.path.ControlLines;
import coldseam.junctions.path.PenLines;
import coldseam.junctions.plan.PlanarSubdivision;
import coldseam.junctions.plan.SectionPlan;
import coldseam.junctions.section.Composition;
import coldseam.junctions.section.Shapes;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentSkipListSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.eclipse.collections.impl.list.Interval;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;

/** What a detail's text tells the builder to make is in its drawing, as far as the words say it. */
@Tag("slow")
final class CatalogueDrawnTest {

    /** Parts that shed water or keep the wind out: how the text names each, and how the drawing does. */
    private static final Map<Pattern, Pattern> PARTS = Map.ofEntries(
            part("\\bpan\\b", "\\bpan\\b"),
            part("\\bdrip\\b", "\\bdrip\\b"),
            part("\\bgutter\\b", "gutter"),
            part("\\binsect mesh\\b|\\b[Tt]he mesh\\b|\\bmesh in the (gap|foot|head)\\b", "insect mesh"),
            part("\\boverhang (outside|is|bolted)|\\b(new|light) overhang\\b", "overhang"),
            part("\\brim board\\b", "rim board|rim"),
            part("\\b(sill|sole) plate\\b", "(sill|sole) plate"),
            part("\\b(edge|corner|verge) trim\\b|\\b[Nn]ail trim\\b|\\bwith trim\\b", "trim"),
            part("\\bcurb\\b", "curb"),
            part("\\bnosing\\b", "nosing"),
            part("\\bcapping\\b|\\bcap with\\b", "capping"),
            part("\\bbaffles?\\b", "baffle"),
            part("\\b[Ff]lash", "flashing"),
            part("\\bouter sill\\b", "outer sill"),
            part("\\b(upstand|upturn)\\b", "upstand|upturn|turned up|up the|up behind"),
            part("\\bstarter strip\\b", "starter strip"));

    /** Kinds whose section lies across the upright: what runs level above and below is not in its plane. */
    private static final ImmutableList<JunctionKind> IN_PLAN =
            Lists.immutable.of(JunctionKind.JAMB, JunctionKind.of("unheated neighbour"));

    /** A gutter behind the kerb's upper side, which a section through its other sides does not meet. */
    private static final String ABOVE_THE_KERB = "gutter above the kerb";

    private static Map.Entry<Pattern, Pattern> part(String told, String drawn) {
        return Map.entry(Pattern.compile(told), Pattern.compile(drawn));
    }

    @Test
    void whatIsToldIsDrawn() {
        MutableList<String> faults = Lists.mutable.empty();
        for (Detail detail : CatalogueFile.builtIn().junctions().reject(each -> IN_PLAN.contains(each.junction()))) {
            String drawn = detail.drawing().pieces().makeString("; ");
            ImmutableList<String> told = Lists.immutable
                    .of(detail.name(), detail.looksLike())
                    .newWithAll(detail.order())
                    .newWithAll(detail.photographs().collect(Photograph::shows))
                    .collect(line -> line.replace(ABOVE_THE_KERB, ""));
            PARTS.forEach(
                    (words, name) -> told.select(line -> words.matcher(line).find())
                            .reject(line -> name.matcher(drawn).find())
                            .forEach(line -> faults.add(detail.id() + ": " + line)));
        }
        assertEquals("", faults.sortThis().makeString("\n"));
    }

    /** A length that is told, or a range of them; one that only says when something else is needed is none of the drawing's. */
    private static final Pattern LENGTH =
            Pattern.compile("(?<!less than )(?<!lower than )(?:\\b(\\d+)(?: mm)? to )?\\b(\\d+) mm\\b(?! lower)");

    /** m, of what a detail's file gives between its parameters and its order. */
    private static final Pattern SIZE = Pattern.compile("\\b(\\d+(?:\\.\\d+)?) (mm|m)\\b");

    private static final Pattern PART = Pattern.compile("(?m)^  - part: (.+)$");

    /** A drawing with what stands in the files of its parts, each called as its part. */
    private static String withParts(String drawing) {
        return PART.matcher(drawing)
                .replaceAll(part -> Matcher.quoteReplacement(withParts(new ResourceFolder("/parts/")
                        .text(part.group(1).replace(' ', '-').replace("'", "") + ".yaml"))));
    }

    /** A lap, an upstand or a height over the ground is as long in the text as in the drawing, or a parameter of it. */
    @Test
    void lengthsThatAreToldAreInTheDrawing() {
        ResourceFolder files = new ResourceFolder("/details/");
        MutableList<String> faults = Lists.mutable.empty();
        int compared = 0;
        for (Detail detail : CatalogueFile.builtIn().junctions()) {
            String file = files.text(detail.id() + ".yaml");
            int parameters = file.indexOf("\nparameters:");
            String drawing = withParts(
                    file.substring(parameters < 0 ? file.indexOf("\ndrawing:") : parameters, file.indexOf("\norder:")));
            boolean ground = drawing.contains("- ground:");
            MutableList<Double> sizes = Lists.mutable.empty();
            SIZE.matcher(drawing)
                    .results()
                    .forEach(size -> sizes.add(
                            Double.parseDouble(size.group(1)) * (size.group(2).equals("m") ? 1000 : 1)));
            for (String line : Lists.immutable
                    .of(detail.looksLike())
                    .newWithAll(detail.order())
                    .newWithAll(detail.photographs().collect(Photograph::shows))
                    // Of the ground, where none is drawn, the drawing says nothing.
                    .reject(line -> !ground && line.contains("ground"))) {
                for (MatchResult told : LENGTH.matcher(line).results().toList()) {
                    compared++;
                    double most = Double.parseDouble(told.group(2));
                    double least = told.group(1) == null ? most : Double.parseDouble(told.group(1));
                    if (sizes.noneSatisfy(size -> least <= size && size <= most)) {
                        faults.add(detail.id() + ": " + told.group() + " in: " + line);
                    }
                }
            }
        }
        assertEquals("", faults.makeString("\n"));
        assertTrue(compared >= 30, compared + " lengths");
    }

    /** What goes through at a spot: how the text names each of its own parts, and how a body or what was left out does. */
    private static final Map<Pattern, Pattern> POINT_PARTS = Map.ofEntries(
            part("\\b[Ff]lash", "flashing"),
            part("\\bboot\\b", "boot|stand-offs"),
            part("\\bcollar of the membrane\\b", "collar of the membrane"),
            part("\\bblock\\b", "block"),
            part("\\bpads?\\b", "pad"),
            part("\\bsmall roof\\b", "small roof"),
            part("\\bwrapp?(ed|s)?\\b|\\bWrap\\b", "wrap|shell|sleeve|boards round|collar"),
            part("\\bgap to the face\\b|\\bits gap\\b", "gap"));

    @Test
    void whatIsToldOfPointsIsDrawnOrSaidToBeLeftOut() {
        MutableList<String> faults = Lists.mutable.empty();
        for (Detail detail : CatalogueFile.builtIn().details()) {
            if (!(detail.drawing() instanceof PointDrawing drawing)) {
                continue;
            }
            String drawn = drawing.bodies()
                    .collect(PointDrawing.Body::what)
                    .newWith(drawing.drawnRound())
                    .newWithAll(drawing.parameters().collect(DetailParameter::name))
                    .makeString("; ");
            POINT_PARTS.forEach((words, name) -> Lists.immutable
                    .of(detail.name(), detail.looksLike())
                    .newWithAll(detail.order())
                    .select(line -> words.matcher(line).find())
                    .reject(line -> name.matcher(drawn).find())
                    .forEach(line -> faults.add(detail.id() + ": " + line)));
        }
        assertEquals("", faults.sortThis().makeString("\n"));
    }

    /** m beside which a sheet must have something that holds it, besides its own thickness. */
    private static final double HELD = 0.002;

    /** m; a sheet may span a slit as wide. */
    private static final double SLIT = 0.05;

    /** A sheet hangs in no air: along its whole length it lies on, in or under something else. */
    @Test
    void sheetsOfTheLayersLieOnSomething() {
        Set<String> faults = new ConcurrentSkipListSet<>();
        inEitherBuild((detail, build, composition) -> {
            SectionPlan plan = composition.plan();
            ImmutableList<Geometry> areas = areas(plan);
            for (int face = 0; face < areas.size(); face++) {
                if (piece(plan, face).origin() instanceof SectionPlan.Origin.OfLayer layer
                        && layer.layer().role() == Role.MEMBRANE) {
                    int sheet = face;
                    Geometry holds = Shapes.union(Interval.zeroTo(areas.size() - 1)
                            .select(other -> other != sheet
                                    && !piece(plan, other).origin().equals(layer)
                                    && piece(plan, other).role() != Role.AIR_LAYER)
                            .collect(areas::get));
                    double thickness = layer.layer().thickness();
                    double free = Shapes.difference(areas.get(face), holds.buffer(thickness + HELD))
                                    .getArea()
                            / thickness;
                    if (free > SLIT) {
                        faults.add(String.format(
                                Locale.ROOT,
                                "%s, %s: %.0f mm of %s",
                                detail.id(),
                                build,
                                free * 1000,
                                piece(plan, face).material().name()));
                    }
                }
            }
        });
        assertEquals("", String.join("\n", faults));
    }

    /** A flashing that is only stuck to the face of a cladding leads the water that runs down behind it into the wall. */
    @Test
    void flashingsBeginAtALayerThatShedsWater() {
        Set<String> faults = new ConcurrentSkipListSet<>();
        inEitherBuild((detail, build, composition) -> {
            SectionPlan plan = composition.plan();
            ImmutableList<Geometry> areas = areas(plan);
            Geometry flashings = Shapes.union(Interval.zeroTo(areas.size() - 1)
                    .select(face -> own(piece(plan, face).origin()).contains("flashing"))
                    .collect(areas::get));
            Geometry sheds = Shapes.union(Interval.zeroTo(areas.size() - 1)
                    .select(face -> sheds(piece(plan, face).origin()))
                    .collect(areas::get));
            Geometry cladding = Shapes.union(Interval.zeroTo(areas.size() - 1)
                    .select(face -> piece(plan, face).origin() instanceof SectionPlan.Origin.OfLayer layer
                            && layer.layer().role() == Role.CLADDING)
                    .collect(areas::get));
            // One that lies under boards that stand out over it begins in their shelter.
            if (!flashings.isEmpty()
                    && !sheds.isEmpty()
                    && flashings.distance(cladding) < HELD
                    && flashings.distance(sheds) > HELD) {
                faults.add(String.format(
                        Locale.ROOT, "%s, %s: %.0f mm off", detail.id(), build, flashings.distance(sheds) * 1000));
            }
        });
        assertEquals("", String.join("\n", faults));
    }

    /** m; what is shorter may cross a thing aslant. */
    private static final double SHORT = 0.08;

    /** How far from the direction of a face a line may be, or from straight across: the sine of 5°. */
    private static final double ASLANT = 0.087;

    /** What seals, sheds water or brakes vapour lies on a face of something, or goes straight through it. */
    @Test
    void linesOfControlRunAlongFaces() {
        Set<String> faults = new ConcurrentSkipListSet<>();
        inEitherBuild((detail, build, composition) -> {
            PenLine pen = PenLines.of(
                    composition.insulation(),
                    composition.ends().getFirst(),
                    composition.ends().getLast(),
                    0.1);
            for (ControlLine line : ControlLines.of(composition, detail, pen)) {
                for (int i = 1; i < line.path().size(); i++) {
                    Point a = line.path().get(i - 1);
                    Point b = line.path().get(i);
                    double length = Math.hypot(b.x() - a.x(), b.y() - a.y());
                    PlanarSubdivision seen = composition.plan().seen();
                    int face = seen.faceAt((a.x() + b.x()) / 2, (a.y() + b.y()) / 2);
                    if (length > SHORT
                            && face != PlanarSubdivision.NOTHING
                            && seen.faces().get(face).rings().noneSatisfy(ring -> square(ring, a, b))) {
                        faults.add(String.format(
                                Locale.ROOT,
                                "%s, %s: %s through %s from (%.3f, %.3f) to (%.3f, %.3f)",
                                detail.id(),
                                build,
                                line.control(),
                                piece(composition.plan(), face).material().name(),
                                a.x(),
                                a.y(),
                                b.x(),
                                b.y()));
                    }
                }
            }
        });
        assertEquals("", String.join("\n", faults));
    }

    /** Whether a way runs along a side of a ring or at a right angle to it. */
    private static boolean square(ImmutableList<Point> ring, Point a, Point b) {
        for (int i = 0; i < ring.size(); i++) {
            Point c = ring.get(i);
            Point d = ring.get((i + 1) % ring.size());
            double lengths = Math.hypot(b.x() - a.x(), b.y() - a.y()) * Math.hypot(d.x() - c.x(), d.y() - c.y());
            double across = (b.x() - a.x()) * (d.y() - c.y()) - (b.y() - a.y()) * (d.x() - c.x());
            double along = (b.x() - a.x()) * (d.x() - c.x()) + (b.y() - a.y()) * (d.y() - c.y());
            if (Math.min(Math.abs(across), Math.abs(along)) < ASLANT * lengths) {
                return true;
            }
        }
        return false;
    }

    /** kg/m³ from which on a wall is masonry: aerated blocks are heavier, timber is told by its own mark. */
    private static final double MASONRY = 350;

    /** m of a wall's foot that may lie on bays: half a brick. */
    private static final double ON_BAYS = 0.06;

    /** m that a deck's board is thick at most. */
    private static final double BOARD = 0.032;

    /** A wall or parapet of masonry stands on masonry or a beam, on no bays between the timbers of a roof, a deck or a floor. */
    @Test
    void masonryStandsOnNoBays() {
        Set<String> faults = new ConcurrentSkipListSet<>();
        inEitherBuild((detail, build, composition) -> {
            if (detail.junction().faces().get(0) == BridgeKind.Facing.SIDE) {
                return;
            }
            SectionPlan plan = composition.plan();
            ImmutableList<Geometry> areas = areas(plan);
            ImmutableList<Integer> faces =
                    Interval.zeroTo(areas.size() - 1).toList().toImmutable();
            Geometry bays = Shapes.union(
                    faces.select(face -> framed(piece(plan, face).origin())).collect(areas::get));
            Geometry masonry = Shapes.union(
                    faces.select(face -> masonry(piece(plan, face))).collect(areas::get));
            if (bays.isEmpty() || masonry.isEmpty()) {
                return;
            }
            // What lies under its foot, and under a deck's board that may be there.
            Geometry under = Shapes.difference(
                    Shapes.difference(lowered(masonry, BOARD), lowered(masonry, BOARD - HELD)), masonry);
            double length = under.intersection(bays).getArea() / HELD;
            if (length > ON_BAYS) {
                faults.add(String.format(Locale.ROOT, "%s, %s: %.0f mm", detail.id(), build, length * 1000));
            }
        });
        assertEquals("", String.join("\n", faults));
    }

    private static Geometry lowered(Geometry area, double by) {
        return AffineTransformation.translationInstance(0, -by).transform(area);
    }

    private static Optional<Layer> built(SectionPlan.Origin origin) {
        if (origin instanceof SectionPlan.Origin.OfLayer of) {
            return Optional.of(of.layer());
        }
        return origin instanceof SectionPlan.Origin.OfDetail of ? of.like() : Optional.empty();
    }

    private static boolean framed(SectionPlan.Origin origin) {
        return built(origin).map(layer -> layer.framing().isPresent()).orElse(false);
    }

    /** Of the wall, or like it: a slab or a screed lies on what it must. */
    private static boolean masonry(SectionPlan.Piece piece) {
        return piece.role() == Role.STRUCTURE
                && !framed(piece.origin())
                && built(piece.origin()).isPresent()
                && !piece.material().timber()
                && piece.material().density().orElse(0) >= MASONRY;
    }

    private interface Look {
        void at(Detail detail, TypicalBuild build, Composition composition);
    }

    /** A detail as it is composed. */
    private record Drawn(Detail detail, TypicalBuild build, Composition composition) {}

    /** Every detail in both builds, its boards as usual, thin and thick, as far as it is offered there; composed once. */
    private static final class EveryDrawing {
        static final ImmutableList<Drawn> ALL =
                CatalogueFile.builtIn().junctions().flatCollect(CatalogueDrawnTest::drawn);
    }

    private static ImmutableList<Drawn> drawn(Detail detail) {
        MutableList<Drawn> drawn = Lists.mutable.empty();
        for (TypicalBuild build : TypicalBuild.values()) {
            Lists.immutable
                    .of(
                            build.setup(detail),
                            TypicalSetups.of(detail, build, 0.05),
                            TypicalSetups.of(detail, build, 0.30))
                    .forEach(setup -> composed(detail, setup)
                            .ifPresent(composition -> drawn.add(new Drawn(detail, build, composition))));
        }
        return drawn.toImmutable();
    }

    private static Optional<Composition> composed(Detail detail, JunctionSetup setup) {
        try {
            return Optional.of(BuiltIn.composed(detail, setup));
        } catch (DetailDoesNotFit notOffered) {
            return Optional.empty();
        }
    }

    private static void inEitherBuild(Look look) {
        EveryDrawing.ALL.castToList().parallelStream()
                .forEach(each -> look.at(each.detail(), each.build(), each.composition()));
    }

    private static SectionPlan.Piece piece(SectionPlan plan, int face) {
        return plan.pieces().get(plan.seen().faces().get(face).painted());
    }

    private static ImmutableList<Geometry> areas(SectionPlan plan) {
        return plan.seen()
                .faces()
                .collect(face -> Shapes.difference(
                        Shapes.of(face.rings().getFirst()),
                        Shapes.union(face.rings().drop(1).collect(Shapes::of))));
    }

    private static boolean sheds(SectionPlan.Origin origin) {
        if (origin instanceof SectionPlan.Origin.OfStrip strip) {
            return strip.carries().contains(Control.WATER) && !strip.what().contains("flashing");
        }
        return origin instanceof SectionPlan.Origin.OfLayer layer
                && layer.layer().controls().contains(Control.WATER);
    }

    private static String own(SectionPlan.Origin origin) {
        if (origin instanceof SectionPlan.Origin.OfStrip strip) {
            return strip.what();
        }
        return origin instanceof SectionPlan.Origin.OfDetail detail ? detail.what() : "";
    }
}
