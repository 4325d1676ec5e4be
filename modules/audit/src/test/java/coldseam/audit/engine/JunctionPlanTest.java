package coldseam.audit.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.Audit;
import coldseam.audit.JunctionSheet;
import coldseam.audit.engine.Sample.Made;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Selector;
import coldseam.envelope.shell.Edge;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Sets;
import org.eclipse.collections.api.set.ImmutableSet;
import org.junit.jupiter.api.Test;

class JunctionPlanTest {

    private static final ImmutableSet<JunctionKind> ANY = Sets.immutable.empty();

    private final Edge southSlab = Sample.audit(Sample.yaml(), Sample.good())
            .shell()
            .edges()
            .detect(edge -> edge.name().contains("slab edge") && edge.name().contains("south"));

    private boolean matches(ImmutableSet<JunctionKind> kinds, String... surfaces) {
        return JunctionPlan.matches(new Selector(kinds, Lists.immutable.of(surfaces)), southSlab);
    }

    @Test
    void aSelectorNeedsOneKindAndAllSurfaces() {
        assertTrue(matches(Sets.immutable.of(JunctionKind.SLAB_EDGE, JunctionKind.JAMB)));
        assertFalse(matches(Sets.immutable.of(JunctionKind.JAMB)));
        assertTrue(matches(ANY, "ground floor south wall"));
        assertTrue(matches(ANY, "ground floor south wall", southSlab.first().name()));
        assertFalse(matches(ANY, "ground floor south wall", "ground floor north wall"));
        assertFalse(matches(Sets.immutable.of(JunctionKind.JAMB), "ground floor south wall"));
    }

    @Test
    void theFirstChoiceThatMatchesWins() {
        String yaml = Sample.yaml()
                .replace(
                        "- {kinds: [slab edge], detail: slab-good}",
                        "- {kinds: [slab edge], surfaces: [ground floor south wall], detail: slab-south}\n"
                                + "- {kinds: [slab edge], detail: slab-good}");
        Audit audit = Sample.audit(yaml, Sample.good().newWith(Made.good("slab-south", JunctionKind.SLAB_EDGE)));
        JunctionSheet south =
                audit.sheets().detect(sheet -> sheet.result().detail().id().equals("slab-south"));
        JunctionSheet others =
                audit.sheets().detect(sheet -> sheet.result().detail().id().equals("slab-good"));
        assertEquals(Lists.immutable.of(southSlab.name()), south.edges());
        assertEquals(3, others.edges().size());
    }

    @Test
    void likeEdgesShareOneSheetAndItsLengthIsTheirSum() {
        Audit audit = Sample.audit(Sample.yaml(), Sample.good());
        assertEquals(3, audit.sheets().size());
        JunctionSheet slab =
                audit.sheets().detect(sheet -> sheet.result().setup().kind() == JunctionKind.SLAB_EDGE);
        assertEquals(28, slab.length(), 1e-3);
        // B' = 48 m² over half of 28 m
        assertEquals(48 / 14.0, slab.result().setup().ground().orElseThrow().floorWidth(), 1e-3);
    }

    @Test
    void theBestOptionHasAnUnbrokenPenLineAndTheLeastPsi() {
        Made cheap = Made.good("slab-leaky", JunctionKind.SLAB_EDGE).psi(-0.5).broken();
        Made better = Made.good("slab-better", JunctionKind.SLAB_EDGE).psi(-0.1);
        Audit audit = Sample.audit(Sample.yaml(), Sample.good().newWith(cheap).newWith(better));
        JunctionSheet slab =
                audit.sheets().detect(sheet -> sheet.result().setup().kind() == JunctionKind.SLAB_EDGE);
        assertEquals("slab-better", slab.best().orElseThrow().detail().id());
    }
}
