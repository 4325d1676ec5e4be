package coldseam.report.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.engine.Sample;
import coldseam.envelope.House;
import coldseam.files.quantity.UnitSystem;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.api.Test;

class InputWordsTest {

    private static ImmutableList<InputRow> rows(String yaml, UnitSystem units) {
        return InputWords.of(Sample.audit(yaml, Sample.good()), units);
    }

    private static InputRow row(ImmutableList<InputRow> rows, String what) {
        ImmutableList<InputRow> found = rows.select(row -> row.what().equals(what));
        assertEquals(1, found.size(), () -> what + " in " + rows.collect(InputRow::what));
        return found.getFirst();
    }

    @Test
    void theSiteComesWithItsValuesAndTheirSource() {
        ImmutableList<InputRow> rows = rows(Sample.yaml(), UnitSystem.SI);
        assertEquals("20.0 °C", row(rows, "Indoor design temperature").value());
        assertEquals("-10.0 °C", row(rows, "Outdoor design temperature").value());
        assertEquals(
                "50 %", row(rows, "Indoor humidity at the design condition").value());
        assertEquals("3000 K·d", row(rows, "Heating degree days").value());
        assertEquals("external", row(rows, "Dimension system").value());
        assertEquals("0.100 EUR per kWh", row(rows, "Price of heat").value());
        InputRow ground = row(rows, "Conductivity of the ground (clay or silt)");
        assertEquals("1.500 W/(m·K)", ground.value());
        assertTrue(ground.source().contains("ISO 13370"), ground::source);
        assertEquals("none", row(rows, "Monthly climate").value());
        assertEquals(
                "house file, without a source",
                row(rows, "Outdoor design temperature").source());
        ImmutableList<InputRow> sourced = rows(
                Sample.yaml().replace("site:\n", "site:\n  source: the weather service's tables, invented\n"),
                UnitSystem.SI);
        for (String what : new String[] {"Outdoor design temperature", "Heating degree days"}) {
            assertEquals(
                    "the weather service's tables, invented", row(sourced, what).source());
        }
    }

    /** As the trade in feet pays for it: the file's 0.10 EUR/kWh, times the 29.3071 kWh of 100,000 Btu. */
    @Test
    void inUsUnitsHeatIsPaidByTheTherm() {
        assertEquals(
                "2.93 EUR per therm",
                row(rows(Sample.yaml(), UnitSystem.US), "Price of heat").value());
    }

    /** All that its formula takes stands among the inputs. */
    @Test
    void aCrawlSpaceComesWithAllThatItsFormulaTakes() {
        String yaml = Sample.yaml()
                .replace(
                        "kind: slab on ground",
                        "crawl-space: {height: 0.6 m, wall-transmittance: 1.8 W/(m²·K), vents: 0.002 m²/m, wind-shielding: exposed}, kind: suspended");
        InputRow space = row(rows(yaml, UnitSystem.SI), "Crawl space under lowest floor");
        assertEquals(
                "floor 0.60 m over the ground, walls of U 1.800 W/(m²·K), vents of 0.0020 m²/m, wind of 4.0 m/s, shielding"
                        + " factor 0.10, bare ground",
                space.value());
        assertTrue(space.source().contains("ISO 13370"), space::source);
    }

    @Test
    void whatTheFileDoesNotGiveHasNoRow() {
        String yaml = Sample.yaml()
                .replace("  heating-degree-days: 3000 K·d\n", "")
                .replace("prices: {heat: 0.10 EUR/kWh}", "");
        ImmutableList<String> what = rows(yaml, UnitSystem.SI).collect(InputRow::what);
        assertFalse(what.contains("Heating degree days"), what::toString);
        assertFalse(what.contains("Price of heat"), what::toString);
        assertFalse(what.contains("Ventilation heat loss"), what::toString);
    }

    @Test
    void everyTransmittanceOfAnOpeningComesWithItsSource() {
        String yaml = Sample.yaml() + "openings:\n" + window("one", 1, "source: the maker's declaration")
                + window("two", 3, "frame-depth: 80 mm") + window("three", 5, "source: the maker's declaration");
        ImmutableList<InputRow> rows = rows(yaml, UnitSystem.SI);
        assertEquals("the maker's declaration", row(rows, "U of one, three").source());
        assertEquals(
                "house file, without a product's source", row(rows, "U of two").source());
    }

    private static String window(String name, int left, String more) {
        return "  " + name
                + ": {kind: window, surface: ground floor south wall, width: 1 m, height: 1 m, sill: 0.9 m, left: "
                + left + " m, transmittance: 0.9 W/(m²·K), " + more + "}\n";
    }

    @Test
    void everyLimitIsThereWithWhereItComesFrom() {
        ImmutableList<InputRow> rows =
                rows(Sample.yaml() + "limits: {temperature-factor: 0.75, walls: 0.2 W/(m²·K)}\n", UnitSystem.SI);
        assertEquals("0.75", row(rows, "Least temperature factor fRsi").value());
        assertEquals("50 %", row(rows, "Least neck of the insulation").value());
        assertEquals("50 %", row(rows, "Least ratio of the weakest path").value());
        assertEquals(
                "0.010 W/(m·K)", row(rows, "Largest psi, external dimensions").value());
        assertEquals(
                "default: the trade's rule for a bridge-free junction",
                row(rows, "Largest psi, external dimensions").source());
        assertEquals("house file", row(rows, "Least temperature factor fRsi").source());
        assertEquals("house file", row(rows, "Largest U of walls").source());
        assertTrue(row(rows, "Largest U of roofs").source().startsWith("default: "), rows::toString);
    }

    @Test
    void everyMaterialOfTheHouseIsThereOnceAndInOrder() {
        House house = Sample.house(Sample.yaml());
        ImmutableList<InputRow> rows = rows(Sample.yaml(), UnitSystem.SI);
        ImmutableList<String> listed = rows.collect(InputRow::what)
                .select(what -> what.startsWith("Conductivity of ") && !what.startsWith("Conductivity of the ground"))
                .collect(what -> what.substring("Conductivity of ".length()));
        assertEquals(house.materials().collect(each -> each.name()).toSortedList(), listed.toList());
        assertTrue(listed.contains("mineral wool board"), listed::toString);
        assertTrue(rows.noneSatisfy(row -> row.source().isBlank()), "each has a source");
    }

    /** What a layer of air resists is no claim that air insulates: no pen line runs through it. */
    @Test
    void airIsNotSaidToCountAsInsulation() {
        String yaml = Sample.yaml()
                .replaceFirst(
                        "(\\n *- )\\{material: thin-coat render",
                        "$1{material: air, thickness: 40 mm, role: air layer, air: {ventilation: well ventilated}}"
                                + "$1{material: thin-coat render");
        ImmutableList<String> what = rows(yaml, UnitSystem.SI).collect(InputRow::what);
        assertTrue(what.contains("Conductivity of air"), what::toString);
        assertFalse(what.contains("Air counts as insulation"), what::toString);
    }

    @Test
    void anOwnPsiAndANeighbourBringTheirSources() {
        String yaml = Sample.yaml()
                + "own-psi:\n- {kinds: [outside corner], psi: -0.03 W/(m·K), source: our own computation}\n";
        InputRow own = rows(yaml, UnitSystem.SI).detect(row -> row.what().startsWith("psi of outside corner"));
        assertEquals("-0.030 W/(m·K)", own.value());
        assertEquals("our own computation", own.source());
        String beside = Sample.yaml()
                        .replace(
                                "    walls: {all: wall}\n",
                                "    walls: {all: wall, east: {assembly: wall, faces: garage}}\n")
                + "neighbours: {garage: {temperature-factor: 0.8}}\n";
        assertEquals(
                "0.80",
                row(rows(beside, UnitSystem.SI), "Temperature factor b of garage")
                        .value());
        assertEquals(
                "house file",
                row(rows(beside, UnitSystem.SI), "Temperature factor b of garage")
                        .source());
        String sourced =
                beside.replace("temperature-factor: 0.8", "temperature-factor: 0.2, source: balance of 3 October");
        assertEquals(
                "balance of 3 October",
                row(rows(sourced, UnitSystem.SI), "Temperature factor b of garage")
                        .source());
    }

    @Test
    void aClimateIsListedMonthByMonthWithTheMaterialsVapourResistance() {
        String yaml = Sample.yaml()
                .replace(
                        "  dimensions: external\n",
                        "  dimensions: external\n  climate: {source: a station, indoors: site humidity, months: ["
                                + "[5 °C, 85 %],".repeat(11) + "[3 °C, 70 %]]}\n");
        ImmutableList<InputRow> rows = rows(yaml, UnitSystem.SI);
        assertEquals("3.0 °C, 70 %", row(rows, "Outdoor air in December").value());
        assertEquals("a station", row(rows, "Outdoor air in January").source());
        assertEquals(
                "the indoor humidity above, all year",
                row(rows, "Rooms month by month").value());
        assertTrue(
                row(rows, "Conductivity of mineral wool board").value().endsWith("; μ 1"),
                row(rows, "Conductivity of mineral wool board")::value);
    }

    @Test
    void valuesComeInTheUnitsAsked() {
        assertEquals(
                "68.0 °F",
                row(rows(Sample.yaml(), UnitSystem.US), "Indoor design temperature")
                        .value());
    }

    @Test
    void whatInsulationBearsComesWithItsSource() {
        ImmutableList<InputRow> rows = rows(Sample.yaml(), UnitSystem.SI);
        String bears = "Extruded polystyrene board bears ground";
        assertTrue(row(rows, bears).source().contains("in use under ground"), row(rows, bears)::source);
        assertTrue(rows.noneSatisfy(row -> row.what().startsWith("Mineral wool board bears ground")));
    }
}
