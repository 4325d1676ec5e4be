package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldseam.envelope.Assembly;
import coldseam.envelope.BridgeKind;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Layer;
import coldseam.envelope.file.house.BuildUps;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.TypicalBuild;
import coldseam.junctions.catalogue.Catalogue;
import coldseam.junctions.catalogue.CatalogueFile;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.language.DetailParameter;
import coldseam.junctions.section.Composer;
import coldseam.junctions.section.Composition;
import java.io.IOException;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.ConcurrentSkipListSet;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.eclipse.collections.impl.factory.Maps;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.algorithm.Area;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.union.UnaryUnionOp;

/**
 * Every option between every pair of typical build-ups, whatever side their insulation lies on: what is offered is drawn without
 * a void, and where nothing is offered a page says so.
 */
@Tag("slow")
class EveryBuildTest {

    private static final Catalogue CATALOGUE = CatalogueFile.builtIn();

    private static final String HEAD = """
            # Build-ups without an option

            At a junction of these typical build-ups no option of the catalogue fits, not even a worst one: such a seam has no
            value, and H_T is told as "at least", until the house file gives a detail or a psi of its own. Floors of joists on the
            ground are left out. `EveryBuildTest` writes this page.

            | kind | first surface | second surface |
            |---|---|---|
            """;

    /** Every way to build a surface: as its kind usually has it, insulated inside, in its frame alone, or of blocks. */
    private static ImmutableList<Assembly> builds(JunctionKind kind, int which) {
        BridgeKind.Facing facing = kind.faces().get(which);
        JunctionKind.Typical typical = kind.typical();
        ImmutableList<String> uses = Lists.immutable.of(
                which == 0 ? typical.first() : typical.second().orElseThrow(),
                BuildUps.insulatedInside(facing),
                BuildUps.inItsFrame(kind, which),
                BuildUps.frameInsulatedInside(facing),
                facing == BridgeKind.Facing.SIDE ? BuildUps.monolithic() : BuildUps.insulatedInside(facing));
        return uses.collect(BuildUps.all()::get)
                .flatCollect(each -> Lists.immutable.of(each.masonry(), each.frame()))
                .distinct()
                .reject(each -> kind.form().ground() && facing == BridgeKind.Facing.DOWN && framed(each));
    }

    /** One layer of it thin or thick, as houses have them. */
    private static JunctionSetup otherThickness(JunctionSetup setup, Random random) {
        boolean first = setup.second().isEmpty() || random.nextBoolean();
        Assembly built = first ? setup.first() : setup.second().orElseThrow();
        ImmutableList<Layer> thick = built.layers().select(layer -> layer.thickness() > 0.05);
        Layer changed = thick.get(random.nextInt(thick.size()));
        double thickness = random.nextBoolean() ? 0.06 + 0.04 * random.nextDouble() : 0.3 + 0.15 * random.nextDouble();
        Assembly other = new Assembly(
                built.name(),
                built.layers().collect(layer -> layer == changed ? layer.thick(thickness) : layer),
                built.fasteners(),
                built.gaps(),
                built.rain());
        return first ? setup.between(other, setup.second()) : setup.between(setup.first(), Optional.of(other));
    }

    private static boolean framed(Assembly assembly) {
        return assembly.layers().anySatisfy(layer -> layer.framing().isPresent());
    }

    /** m²: a slot beside a plate is smaller. */
    private static final double VOID = 2e-4;

    private static Optional<Composition> composed(Detail detail, JunctionSetup setup) {
        try {
            return Composer.isFor(detail, setup) ? Optional.of(Composer.compose(detail, setup)) : Optional.empty();
        } catch (DetailDoesNotFit notOffered) {
            return Optional.empty();
        }
    }

    /** m², of the largest void that what is computed encloses. */
    private static double largestVoid(Composition composition) {
        // Only then is it worth its time to put the faces together.
        if (composition.notes().noneSatisfy(note -> note.startsWith("A hole in the drawing"))) {
            return 0;
        }
        Geometry solid = UnaryUnionOp.union(
                composition.faces().collect(Composition.Face::area).castToList());
        double largest = 0;
        for (int part = 0; part < solid.getNumGeometries(); part++) {
            Polygon outline = (Polygon) solid.getGeometryN(part);
            for (int ring = 0; ring < outline.getNumInteriorRing(); ring++) {
                largest = Math.max(
                        largest,
                        Math.abs(Area.ofRing(outline.getInteriorRingN(ring).getCoordinates())));
            }
        }
        return largest;
    }

    @Test
    void whatIsOfferedIsDrawnWholeAndWhatIsNotIsTold() throws IOException {
        Set<String> rows = new ConcurrentSkipListSet<>();
        Set<String> voids = new ConcurrentSkipListSet<>();
        JunctionKind.all().castToList().parallelStream().forEach(kind -> {
            JunctionSetup typical = TypicalBuild.MASONRY.setup(kind);
            ImmutableList<Optional<Assembly>> seconds = typical.second().isPresent()
                    ? builds(kind, 1).collect(Optional::of)
                    : Lists.immutable.of(Optional.empty());
            for (Assembly first : builds(kind, 0)) {
                for (Optional<Assembly> second : seconds) {
                    JunctionSetup setup = typical.between(first, second);
                    String where = " | " + first.name() + " | "
                            + second.map(Assembly::name).orElse("") + " |\n";
                    boolean offered = false;
                    for (Detail detail : CATALOGUE.options(kind)) {
                        Optional<Composition> composition = composed(detail, setup);
                        offered |= composition.isPresent();
                        if (composition.isPresent()) {
                            JunctionSetup other = otherThickness(setup, new Random((detail.id() + where).hashCode()));
                            for (Optional<Composition> drawn :
                                    Lists.immutable.of(composition, composed(detail, other))) {
                                double area =
                                        drawn.map(EveryBuildTest::largestVoid).orElse(0.0);
                                if (area > VOID) {
                                    voids.add(detail.id() + where.strip() + Math.round(area * 1e4) + " cm², layers of "
                                            + (drawn == composition ? setup : other));
                                }
                            }
                        }
                    }
                    if (!offered) {
                        rows.add("| " + kind + where);
                    }
                }
            }
        });
        assertEquals("", String.join("\n", voids));
        CommittedReport.check("builds.md", HEAD + String.join("", rows));
    }

    /** A house may set a detail's lengths to either end of what makes sense. */
    @Test
    void lengthsAtEitherEndLeaveNoVoid() {
        Set<String> voids = new ConcurrentSkipListSet<>();
        CATALOGUE.junctions().castToList().parallelStream().forEach(detail -> {
            for (TypicalBuild build : TypicalBuild.values()) {
                JunctionSetup setup = build.setup(detail);
                for (DetailParameter length : detail.parameters()) {
                    for (double end : new double[] {length.least(), length.most()}) {
                        Optional<Composition> composition =
                                composed(detail.with(Maps.immutable.of(length.name(), end)), setup);
                        if (composition.map(EveryBuildTest::largestVoid).orElse(0.0) > VOID) {
                            voids.add(detail.id() + ": " + length.name() + " of " + end + " m");
                        }
                    }
                }
            }
        });
        assertEquals("", String.join("\n", voids));
    }
}
