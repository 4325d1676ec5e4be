package coldseam.envelope.shell.storeys;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.envelope.Body;
import coldseam.envelope.House;
import coldseam.envelope.Vectors;
import coldseam.envelope.file.house.HouseFiles;
import coldseam.envelope.shell.fault.ShellFaults;
import coldseam.envelope.shell.lattice.Vertex;
import coldseam.envelope.shell.mesh.Facet;
import java.io.IOException;
import java.nio.file.Path;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever is lost, doubled or out of its place among the facets of a house, the second way refuses it: a fault of our own is never audited. */
class SecondWayTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "atrium",
                "cellar-in-a-slope",
                "court-over-terrace",
                "dormers",
                "ell-roof",
                "lean-to",
                "over-the-garage",
                "part-cellar",
                "two-wings",
                "deck-on-a-wing",
                "closed-court",
                "deck-under-the-floor"
            })
    void everyFacetIsMissedAndSeenTwice(String name) throws IOException {
        Path file = Path.of(System.getProperty("coldseam.root"), "fixtures", "houses", "shapes", name + ".yaml");
        House house = HouseFiles.read(file).house();
        StoreyFacets storeys = new StoreyFacets(house, (Body.Storeys) house.body(), new ShellFaults());
        ImmutableList<Facet> facets = storeys.build().orElseThrow().facets();
        assertTrue(facets.size() > 5);
        assertDoesNotThrow(() -> storeys.check(facets));
        for (Facet facet : facets) {
            ImmutableList<Facet> others = facets.reject(each -> each == facet);
            refused(storeys, others, facet, "lost");
            refused(storeys, facets.newWith(facet), facet, "doubled");
            if (upright(facet)) {
                // Beside slopes a section is held less closely.
                double by = facet.name().startsWith("gable") || facet.name().endsWith("cheek") ? 0.5 : 0.05;
                refused(storeys, others.newWith(moved(facet, by)), facet, "moved");
                // Which encloses nothing and leaves nothing open, but is twice as long.
                Facet back = facet.withOutline(facet.outline().toReversed());
                if (facet.name().matches("(?!wall beside).*wall.*")
                        && high(facet) > 1.5 * Vertex.PER_METRE
                        && by < 0.1) {
                    refused(storeys, facets.newWith(facet).newWith(back), facet, "with a slit before it");
                }
            }
        }
    }

    private static boolean upright(Facet facet) {
        return Math.abs(facet.normal().z()) < 1e-6 && facet.doubleArea().length() > Vertex.PER_METRE * Vertex.PER_METRE;
    }

    private static long high(Facet facet) {
        return facet.outline().collectLong(Vertex::z).max()
                - facet.outline().collectLong(Vertex::z).min();
    }

    private static Facet moved(Facet facet, double by) {
        Vertex way = Vertex.of(Vectors.times(facet.normal(), by));
        return facet.withOutline(facet.outline().collect(corner -> corner.plus(way)));
    }

    private static void refused(StoreyFacets storeys, ImmutableList<Facet> spoilt, Facet facet, String how) {
        assertThrows(IllegalStateException.class, () -> storeys.check(spoilt), () -> facet.name() + ", " + how);
    }
}
