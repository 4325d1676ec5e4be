package coldseam.envelope.file.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.envelope.Material;
import coldseam.envelope.Provenance.Sureness;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MaterialLibraryTest {

    private static final ImmutableList<Material> ALL = MaterialLibrary.materials();

    @Test
    void holdsAtLeastSixtyMaterialsEachWithASource() {
        assertTrue(ALL.size() >= 60);
        assertTrue(ALL.allSatisfy(each -> each.provenance().source().length() > 10));
        // A value remembered or usual must say so; only those looked up claim to be read.
        assertTrue(ALL.allSatisfy(each -> each.provenance().sureness() != Sureness.DECLARED));
        assertTrue(ALL.select(each -> each.provenance().sureness() == Sureness.COMMON_PRACTICE)
                .allSatisfy(each -> each.provenance().source().contains("common practice")));
        assertTrue(ALL.select(each -> each.provenance().sureness() == Sureness.READ)
                .allSatisfy(each -> each.provenance().source().contains("read in")));
    }

    // Conductivity W/(m·K) and dry vapour resistance factor of ISO 10456:2007 table 3, from memory; those of softwood,
    // steel, stainless steel, aluminium and PVC read in a public copy of prEN ISO 10077-2's table of EN 12524 values.
    @ParameterizedTest
    @CsvSource({
        "softwood, 0.13, 50",
        "oriented strand board, 0.13, 50",
        "gypsum plasterboard, 0.25, 10",
        "reinforced concrete, 2.3, 130",
        "dense concrete, 2.0, 130",
        "cement render, 1.0, 10",
        "steel, 50, Infinity",
        "stainless steel, 17, Infinity",
        "aluminium, 160, Infinity",
        "rigid PVC, 0.17, 50000",
        "glass, 1.0, Infinity",
        "bitumen sheet, 0.23, 50000",
        "EPDM, 0.25, 6000",
        "granite, 2.8, 10000"
    })
    void givesTheStandardsValues(String name, double conductivity, double vapourResistanceFactor) {
        Material material = MaterialLibrary.named(name).orElseThrow();
        assertEquals(conductivity, material.conductivity());
        assertEquals(vapourResistanceFactor, material.vapourResistanceFactor().orElseThrow());
    }

    // Ranges W/(m·K) of ISO 10456:2007 as remembered; each generic value lies within its kind's range.
    @ParameterizedTest
    @CsvSource({
        "mineral wool batt, 0.032, 0.040",
        "mineral wool board, 0.032, 0.040",
        "expanded polystyrene board, 0.031, 0.040",
        "extruded polystyrene board, 0.029, 0.036",
        "polyisocyanurate board, 0.022, 0.028",
        "phenolic foam board, 0.020, 0.025",
        "cellular glass board, 0.040, 0.055",
        "wood fibre insulation board, 0.038, 0.050",
        "cork board, 0.040, 0.045",
        "perlite board, 0.050, 0.060",
        "wood wool board, 0.07, 0.10"
    })
    void staysWithinTheRangeOfItsKind(String name, double least, double most) {
        double conductivity = MaterialLibrary.named(name).orElseThrow().conductivity();
        assertTrue(least <= conductivity && conductivity <= most);
    }

    @Test
    void saysWhatInsulates() {
        assertTrue(MaterialLibrary.named("mineral wool board").orElseThrow().insulates());
        assertTrue(MaterialLibrary.named("foam glass gravel").orElseThrow().insulates());
        assertTrue(ALL.select(Material::insulates).allSatisfy(each -> each.conductivity() <= 0.09));
        assertEquals(false, MaterialLibrary.named("softwood").orElseThrow().insulates());
        // Still air conducts less than any insulation, yet nobody fills a seam with it.
        assertEquals(false, MaterialLibrary.named("air").orElseThrow().insulates());
    }

    /** Density and conductivity of solids go together; a slipped decimal point would show. */
    @Test
    void keepsDensitiesPlausible() {
        assertTrue(ALL.allSatisfy(
                each -> each.density().orElseThrow() >= 1 && each.density().orElseThrow() <= 9000));
        // Filled blocks of clay are heavy, and insulate by what is in their cells.
        assertTrue(ALL.select(Material::insulates)
                .reject(each -> each.name().equals("filled clay block"))
                .allSatisfy(each -> each.density().orElseThrow() <= 400));
        assertTrue(ALL.reject(Material::insulates)
                .reject(each -> each.name().equals("air"))
                .allSatisfy(each -> each.density().orElseThrow() >= 300));
    }
}
