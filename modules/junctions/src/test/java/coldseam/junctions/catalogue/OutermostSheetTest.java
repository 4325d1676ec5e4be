package coldseam.junctions.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.conduction.Point;
import coldseam.envelope.Assembly;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Layer;
import coldseam.envelope.Role;
import coldseam.envelope.file.house.BuildUps;
import coldseam.envelope.file.house.MaterialLibrary;
import coldseam.junctions.BuiltIn;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.TypicalBuild;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.section.Surroundings;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.eclipse.collections.impl.factory.Sets;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A sheet outermost on a surface, which takes no place where heat flows: soil and what is built on lie against it as without it. */
@Tag("slow")
final class OutermostSheetTest {
    /** W/(m·K), of the 4 mm by which floor and wall are measured farther out; outdoor air behind the sheet adds 0.10 to 0.18. */
    private static final double OF_ITS_THICKNESS = 0.001;

    @ParameterizedTest
    @CsvSource({
        "cellar-slab-inner-boards-meet, wall insulated inside",
        "cellar-slab-tight-to-wall, foundation wall",
        "cellar-slab-board-under-footing, foundation wall"
    })
    void noOutdoorAirStandsBehindIt(String detail, String buildUp) {
        Assembly wall = BuildUps.all().get(buildUp).masonry();
        assertEquals(psi(detail, wall), psi(detail, sheeted(wall)), OF_ITS_THICKNESS);
    }

    /** m, by which the outdoor face may grow where it steps round the sheet; a slit behind what is built on has two faces. */
    private static final double ROUND_IT = 0.05;

    @Test
    void nothingBuiltOnStandsOffFromIt() {
        MutableList<String> faults = Lists.mutable.empty();
        int drawn = 0;
        for (Detail detail : CatalogueFile.builtIn().details().select(each -> each.kind() instanceof JunctionKind)) {
            for (TypicalBuild build : TypicalBuild.values()) {
                JunctionSetup plain = build.setup(detail);
                Optional<Double> outdoors = outdoors(detail, plain);
                for (JunctionSetup sheeted : Lists.immutable.of(
                        plain.between(sheeted(plain.first()), plain.second()),
                        plain.between(plain.first(), plain.second().map(OutermostSheetTest::sheeted)))) {
                    if (outdoors.isPresent()) {
                        Optional<Double> with = outdoors(detail, sheeted);
                        drawn++;
                        if (with.isEmpty() || with.get() > outdoors.get() + ROUND_IT) {
                            faults.add(detail.id() + " in " + build + ": " + outdoors.get() + " m, with the sheet "
                                    + with);
                        }
                    }
                }
            }
        }
        assertEquals(Lists.immutable.empty(), faults);
        assertTrue(drawn > 1500, drawn + " drawn");
    }

    /** m of the section's boundary that is not indoors; empty where the detail does not fit. */
    private static Optional<Double> outdoors(Detail detail, JunctionSetup setup) {
        try {
            return Optional.of(BuiltIn.composed(detail, setup)
                    .heatFlow()
                    .boundaries()
                    .reject(boundary -> boundary.environment().equals(Surroundings.INDOOR))
                    .sumOfDouble(boundary -> length(boundary.path())));
        } catch (DetailDoesNotFit misfit) {
            return Optional.empty();
        }
    }

    private static double length(ImmutableList<Point> path) {
        double length = 0;
        for (int i = 1; i < path.size(); i++) {
            length += path.get(i).distance(path.get(i - 1));
        }
        return length;
    }

    /** With a sheet outermost; as it is where outdoor air gets behind its cladding, on which no sheet lies. */
    private static Assembly sheeted(Assembly wall) {
        if (wall.insideVentilation().size() < wall.layers().size()) {
            return wall;
        }
        Layer sheet = new Layer(
                MaterialLibrary.named("bitumen sheet").orElseThrow(),
                0.004,
                Role.MEMBRANE,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Sets.immutable.empty());
        return new Assembly(wall.name(), wall.layers().newWith(sheet), wall.fasteners(), wall.gaps(), wall.rain());
    }

    private static double psi(String detail, Assembly wall) {
        JunctionSetup typical = TypicalBuild.MASONRY.setup(JunctionKind.of("cellar slab to wall"));
        Assembly floor =
                detail.contains("inner") ? BuildUps.all().get("old slab").masonry() : typical.first();
        return CatalogueBreadthTest.psi(
                        CatalogueFile.builtIn().find(detail).orElseThrow(), typical.between(floor, Optional.of(wall)))
                .middle();
    }
}
