package coldseam.audit.rules;

import coldseam.audit.Audit;
import coldseam.audit.engine.Sample;
import coldseam.audit.engine.Sample.Made;
import coldseam.envelope.Control;
import coldseam.envelope.JunctionKind;
import coldseam.junctions.detail.Connection;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Supplier;

/** A house for each rule that breaks it; the good box keeps them all. Words are tested with these houses, too. */
public final class RuleHouses {

    private static final Made CORNER = Made.good("corner-good", JunctionKind.OUTSIDE_CORNER);

    private static final String MONTHS = "  dimensions: external\n  climate: {source: made up, months: ["
            + "[-1 °C, 85 %],".repeat(6) + "[15 °C, 70 %],".repeat(5) + "[-1 °C, 85 %]]}\n";

    private static final String COLD_DECK =
            "    - {material: mineral wool board, thickness: 200 mm, role: insulation, controls: [air, vapour]}\n"
                    + "    - {material: reinforced concrete, thickness: 160 mm, role: structure}\n"
                    + "    - {material: extruded polystyrene board, thickness: 20 mm, role: insulation, controls:"
                    + " [heat]}\n";

    private RuleHouses() {}

    /** The box with two windows, one 1 m wide from 1 m on. */
    static String touching(String other) {
        return Sample.yaml()
                .replace(
                        "junctions:\n",
                        "openings:\n" + window("one", "1 m") + window("other", other)
                                + "junctions:\n- {kinds: [jamb], detail: jamb-good}\n");
    }

    /** The good box. */
    public static Audit keepingAll() {
        return Sample.audit(Sample.yaml(), Sample.good());
    }

    /** By the rule's id. */
    public static Map<String, Supplier<Audit>> breaking() {
        Map<String, Supplier<Audit>> houses = new TreeMap<>();
        houses.put("condensation-inside", () -> Sample.audit(withMonths(Sample.yaml()), Sample.good()));
        houses.put(
                "control-layer-misplaced",
                () -> Sample.audit(
                        Sample.yaml()
                                .replace(
                                        "160 mm, role: structure, controls: [air, vapour]",
                                        "160 mm, role: structure, controls: [air]")
                                .replace("membrane, controls: [water]", "membrane, controls: [water, vapour]"),
                        Sample.good()));
        houses.put("control-layer-unable", () -> changed("material: lime plaster", "material: softwood"));
        houses.put(
                "control-line-broken",
                () -> Sample.audit(
                        Sample.yaml().replace("corner-good", "corner-changing-side"),
                        Sample.good().newWith(Made.good("corner-changing-side", JunctionKind.OUTSIDE_CORNER))));
        houses.put("corner-out-of-range", () -> Sample.misfitAtCorners(Sample.yaml(), Sample.good()));
        houses.put("corner-under-limit", () -> Sample.audit(Sample.yaml(), Sample.good(), 0.69));
        houses.put(
                "detail-not-chosen",
                () -> Sample.audit(
                        Sample.yaml().replace("- {kinds: [outside corner], detail: corner-good}\n", ""),
                        Sample.good()));
        houses.put(
                "detail-out-of-range",
                () -> Sample.audit(
                        Sample.yaml().replace("corner-good", "corner-misfit"),
                        Sample.good().newWith(Made.good("corner-misfit", JunctionKind.OUTSIDE_CORNER))));
        houses.put("frames-apart", () -> windows("jamb-frame-in", "head-frame-out"));
        houses.put(
                "humidity-over-limit",
                () -> Sample.audit(
                        Sample.yaml().replace("indoor-humidity: 50 %", "indoor-humidity: 60 %"),
                        Sample.goodBut(CORNER.fRsi(0.71))));
        houses.put(
                "insulation-unfit",
                () -> changed("extruded polystyrene board, thickness: 160", "mineral wool board, thickness: 160"));
        houses.put("layer-broken", () -> with(CORNER.broken()));
        houses.put("layer-not-shown", () -> with(CORNER.connection(Control.AIR, Connection.NOT_SHOWN)));
        houses.put(
                "light-well-floods",
                () -> Sample.audit(
                        Sample.yaml()
                                .replace(
                                        "{kind: slab on ground, assembly: slab}",
                                        "{kind: heated cellar, assembly: slab, depth: 2 m}")
                                .replace(
                                        "junctions:\n",
                                        "openings:\n"
                                                + "  low: {kind: window, surface: ground floor south wall, width: 1 m, height: 1 m, sill:"
                                                + " 1.2 m, transmittance: 0.9 W/(m²·K), light-well: {width: 1.4 m, below-sill: 200 mm,"
                                                + " projection: 1 m, drain: none}}\n"
                                                + "junctions:\n"),
                        Sample.good()));
        houses.put("mould-by-month", () -> Sample.audit(withMonths(Sample.yaml()), Sample.goodBut(CORNER.fRsi(0.71))));
        houses.put("neck-pinched", () -> with(CORNER.share(0.4)));
        houses.put("open-edge", () -> changed("{all: wall}", "{all: wall, south: none}"));
        houses.put(
                "opening-over-limit",
                () -> changed(
                        "junctions:\n",
                        "openings:\n"
                                + "  single glass: {kind: window, surface: ground floor south wall, width: 1 m, height: 1"
                                + " m, sill: 1 m, transmittance: 5 W/(m²·K)}\n"
                                + "junctions:\n"));
        houses.put(
                "own-psi-below-computed",
                () -> changed(
                        "junctions:\n",
                        "own-psi:\n- {kinds: [outside corner], psi: -0.1 W/(m·K), source: made up}\njunctions:\n"));
        houses.put(
                "pair-under-limit",
                () -> Sample.pairs(
                        touching("2.1 m"), Sample.good().newWith(Made.good("jamb-good", JunctionKind.JAMB)), 0.69));
        houses.put(
                "rain-not-counted",
                () -> changed(
                        "    - {material: polyisocyanurate board, thickness: 160 mm, role: insulation, controls: [heat]}\n"
                                + "    - {material: bitumen sheet, thickness: 8 mm, role: membrane, controls: [water]}\n",
                        "    - {material: bitumen sheet, thickness: 8 mm, role: membrane, controls: [water]}\n"
                                + "    - {material: extruded polystyrene board, thickness: 160 mm, role: insulation, controls:"
                                + " [heat]}\n"));
        houses.put(
                "seams-touch",
                () -> Sample.audit(
                        touching("2.01 m"), Sample.good().newWith(Made.good("jamb-good", JunctionKind.JAMB))));
        houses.put("surface-pierced", () -> Sample.audit(Sample.yaml() + brackets("6 per m²"), Sample.good()));
        houses.put(
                "surface-poorly-insulated",
                () -> changed("mineral wool board, thickness: 200 mm", "mineral wool board, thickness: 1 mm"));
        houses.put(
                "surface-without-air-layer",
                () -> changed("finish, controls: [air, vapour]", "finish, controls: [vapour]"));
        houses.put("surface-without-heat-layer", () -> changed("{all: wall}", "{all: bare wall}"));
        houses.put(
                "surface-without-vapour-layer",
                () -> changed("finish, controls: [air, vapour]", "finish, controls: [air]"));
        houses.put("surface-without-water-layer", () -> changed("membrane, controls: [water]", "membrane"));
        houses.put("temperature-factor-under-limit", () -> with(CORNER.fRsi(0.6)));
        houses.put("terrace-below-dew-point", () -> Sample.audit(Sample.terrace(COLD_DECK), Sample.good()));
        houses.put("transmittance-over-limit", () -> with(CORNER.psi(0.2)));
        houses.put("weakest-path", () -> with(CORNER.ratio(0.3)));
        return houses;
    }

    private static String window(String name, String left) {
        return "  " + name + ": {kind: window, surface: ground floor south wall, width: 1 m, height: 1 m, left: " + left
                + ", sill: 1 m, transmittance: 0.9 W/(m²·K)}\n";
    }

    /** Two windows whose jambs and heads are built so. */
    static Audit windows(String jamb, String head) {
        return Sample.audit(
                Sample.yaml()
                        .replace(
                                "junctions:\n",
                                "openings:\n" + window("one", "1 m") + window("other", "5 m") + "junctions:\n"
                                        + "- {kinds: [jamb], detail: " + jamb + "}\n- {kinds: [head], detail: " + head
                                        + "}\n- {kinds: [sill], detail: sill-frame-in}\n"),
                Sample.good()
                        .newWith(Made.good(jamb, JunctionKind.JAMB))
                        .newWith(Made.good(head, JunctionKind.HEAD))
                        .newWith(Made.good("sill-frame-in", JunctionKind.SILL)));
    }

    static String brackets(String perArea) {
        return "points:\n  brackets: {surface: ground floor north wall, detail: cladding-bracket-aluminium, per-area: "
                + perArea + "}\n";
    }

    static String withMonths(String yaml) {
        return yaml.replace("  dimensions: external\n", MONTHS);
    }

    private static Audit with(Made made) {
        return Sample.audit(Sample.yaml(), Sample.goodBut(made));
    }

    private static Audit changed(String from, String to) {
        return Sample.audit(Sample.yaml().replace(from, to), Sample.good());
    }
}
