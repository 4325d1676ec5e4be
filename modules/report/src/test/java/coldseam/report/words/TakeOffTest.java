package coldseam.report.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.engine.Sample;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.api.Test;

/** What is brought, of what and how much. */
class TakeOffTest {

    private static ImmutableList<TakeOff.OfMaterial> brought(String yaml) {
        return TakeOff.materials(Sample.audit(yaml, Sample.good()));
    }

    private static double volume(ImmutableList<TakeOff.OfMaterial> all, String material) {
        return all.select(each -> each.material().equals(material)).sumOfDouble(TakeOff.OfMaterial::volume);
    }

    /** Of a roof of 48 m² with boards of 160 mm that rise to 300 mm, by the mean of both. */
    @Test
    void whatIsCutToFallsIsOfItsMeanThickness() {
        String falls = Sample.yaml()
                .replace(
                        "thickness: 160 mm, role: insulation, controls: [heat]}\n    - {material: bitumen",
                        "thickness: 160 mm, taper: {shape: rectangle, thickest: 300 mm}, role: insulation,"
                                + " controls: [heat]}\n    - {material: bitumen");
        ImmutableList<TakeOff.OfMaterial> all = brought(falls);
        assertEquals(48 * 0.23, volume(all, "polyisocyanurate board"), 1e-9);
        assertEquals(48 * 0.16 + 48 * 0.15, volume(all, "reinforced concrete"), 1e-9);
    }

    /** What carries stays, and the plaster that was found; what is blown into the cavity comes, and all of what is built new. */
    @Test
    void ofAnOldHouseWhatComes() {
        String cavity = Sample.yaml()
                .replaceFirst(
                        "    - \\{material: old solid brick, thickness: 240 mm, role: structure}\n",
                        "    - {material: old solid brick, thickness: 115 mm, role: structure}\n"
                                + "    - {material: loose mineral wool, thickness: 65 mm, role: structure}\n"
                                + "    - {material: old solid brick, thickness: 115 mm, role: structure}\n");
        ImmutableList<TakeOff.OfMaterial> anew = brought(cavity);
        double bricks = volume(anew, "old solid brick");
        assertTrue(bricks > 10, anew::toString);
        ImmutableList<TakeOff.OfMaterial> old = brought(cavity.replace(
                        "  bare wall:\n",
                        "  old wall:\n    layers:\n"
                                + "    - {material: lime plaster, thickness: 15 mm, role: finish, controls: [air, vapour]}\n"
                                + "    - {material: old solid brick, thickness: 115 mm, role: structure}\n"
                                + "    - {material: air, thickness: 65 mm, role: air layer, air: {ventilation: unventilated}}\n"
                                + "    - {material: old solid brick, thickness: 115 mm, role: structure}\n  bare wall:\n")
                + "retrofit: {built-new: [roof], found: {assemblies: {wall: old wall}}}\n");
        assertEquals(0, volume(old, "old solid brick"));
        assertEquals(0, volume(old, "lime plaster"));
        assertEquals(bricks * 65 / 230, volume(old, "loose mineral wool"), 1e-9);
        assertEquals(48 * 0.16, volume(old, "reinforced concrete"), 1e-9);
    }

    /**
     * A box of 8 m by 6 m outside and 7.07 m by 5.07 m within its walls of 465 mm; outside it is 3.478 m high, with slab and roof,
     * and between their inner faces 2.84 m.
     */
    @Test
    void whatLiesInsideEndsAtTheInnerFaces() {
        ImmutableList<TakeOff.OfMaterial> all = brought(Sample.yaml());
        double inner = 7.07 * 5.07;
        assertArea(2 * (7.07 + 5.07) * 2.84, 2 * (7.07 + 5.07) * 2.84, all, "lime plaster");
        assertArea(28 * 3.478, 28 * 3.478, all, "thin-coat render");
        assertArea(2 * inner, 2 * 48, all, "reinforced concrete");
        assertArea(inner, 48, all, "extruded polystyrene board");
        assertArea(48, 48, all, "polyisocyanurate board");
    }

    /** Of the front of 8 m by 3.478 m a window of 2 m by 1.5 m is taken off. */
    @Test
    void whatASurfaceIsWithoutItsWindows() {
        TakeOff.OfSurface front = TakeOff.surfaces(Sample.audit(
                        Sample.yaml()
                                + "openings:\n  pane: {kind: window, surface: ground floor south wall, width: 2 m,"
                                + " height: 1.5 m, sill: 0.8 m, transmittance: 0.9 W/(m²·K)}\n",
                        Sample.good()))
                .detect(each -> each.surface().name().equals("ground floor south wall"));
        assertEquals(8 * 3.478, front.gross(), 1e-9);
        assertEquals(8 * 3.478 - 3, front.net(), 1e-9);
    }

    private static void assertArea(double least, double most, ImmutableList<TakeOff.OfMaterial> all, String material) {
        ImmutableList<TakeOff.OfMaterial> of =
                all.select(each -> each.material().equals(material));
        assertEquals(least, of.sumOfDouble(TakeOff.OfMaterial::least), 1e-9, material);
        assertEquals(most, of.sumOfDouble(TakeOff.OfMaterial::area), 1e-9, material);
    }
}
