package coldseam.envelope.shell.storeys;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.envelope.Body;
import coldseam.envelope.House;
import coldseam.envelope.file.house.HouseFile;
import coldseam.envelope.shell.fault.ShellFaults;
import coldseam.envelope.shell.mesh.Facet;
import java.io.IOException;
import java.nio.file.Path;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever is lost or doubled among the facets of a house, the second way refuses it: a fault of our own is never audited. */
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
                "two-wings"
            })
    void everyFacetIsMissedAndSeenTwice(String name) throws IOException {
        Path file = Path.of(System.getProperty("coldseam.root"), "fixtures", "houses", "shapes", name + ".yaml");
        House house = HouseFile.read(file).house();
        StoreyFacets storeys = new StoreyFacets(house, (Body.Storeys) house.body(), new ShellFaults());
        ImmutableList<Facet> facets = storeys.build().orElseThrow().facets();
        assertTrue(facets.size() > 5);
        assertDoesNotThrow(() -> storeys.check(facets));
        for (Facet facet : facets) {
            ImmutableList<Facet> others = facets.reject(each -> each == facet);
            refused(storeys, others, facet, "lost");
            refused(storeys, facets.newWith(facet), facet, "doubled");
        }
    }

    private static void refused(StoreyFacets storeys, ImmutableList<Facet> spoilt, Facet facet, String how) {
        assertThrows(IllegalStateException.class, () -> storeys.check(spoilt), () -> facet.name() + ", " + how);
    }
}
