package coldseam.benchmarks;

import java.util.Locale;
import java.util.StringJoiner;

/**
 * Writes house files of any size: storeys over one comb-shaped plan, whose teeth take their build-ups in turn, so that the
 * number of surfaces and that of different sections are chosen apart.
 *
 * @param surfaces about so many walls
 * @param walls different build-ups of walls; each brings some seven different sections
 * @param points sets of brackets, each on a wall of its own
 */
public record HouseGenerator(int surfaces, int walls, int points) {

    /** The house file allows a storey 100 sides. */
    private static final int MOST_SIDES = 100;

    /** Sides of a tooth: its two flanks, its face, and the ground of the gap beside it. */
    private static final int SIDES = 4;

    /** m: how wide teeth and gaps are, how deep, and where the rear wall stands. */
    private static final int WIDE = 4;

    private static final int DEEP = 2;
    private static final int BACK = 10;

    private static final String BEFORE = """
            house: Generated

            site: {indoor-temperature: 20 °C, outdoor-temperature: -10 °C, indoor-humidity: 50 %, ground: clay or silt}

            assemblies:
              slab:
                layers:
                - {material: cement screed, thickness: 60 mm, role: finish}
                - {material: polyethylene foil, thickness: 0.2 mm, role: membrane, controls: [vapour, air]}
                - {material: reinforced concrete, thickness: 180 mm, role: structure}
                - {material: extruded polystyrene board, thickness: 160 mm, role: insulation, controls: [heat, water]}
              flat roof:
                layers:
                - {material: gypsum plaster, thickness: 15 mm, role: finish}
                - {material: reinforced concrete, thickness: 180 mm, role: structure, controls: [air]}
                - {material: bitumen sheet, thickness: 4 mm, role: membrane, controls: [vapour]}
                - {material: polyisocyanurate board, thickness: 160 mm, role: insulation, controls: [heat]}
                - {material: bitumen sheet, thickness: 8 mm, role: membrane, controls: [water]}
            """;

    private static final String WALL = """
              wall %1$d:
                layers:
                - {material: gypsum plaster, thickness: 15 mm, role: finish, controls: [air, vapour]}
                - {material: lightweight clay block, thickness: 215 mm, role: structure}
                - {material: mineral wool board, thickness: %2$d mm, role: insulation, controls: [heat]}
                - {material: thin-coat render, thickness: 10 mm, role: cladding, controls: [water]}
            """;

    private static final String AFTER = """
              base: {kind: slab on ground, assembly: slab}
              roof: {form: flat, assembly: flat roof}

            junctions:
            - {kinds: [slab edge], detail: slab-edge-raft}
            - {kinds: [outside corner], detail: outside-corner-unbroken}
            - {kinds: [inside corner], detail: inside-corner-boards-tight}
            - {kinds: [intermediate floor], detail: intermediate-floor-board-passes}
            - {kinds: [flat roof edge], detail: flat-roof-edge-wall-boards-past}
            """;

    private static final String STOREY = """
              - name: storey %1$d
                footprint: [%2$s]
                height: 3 m
                walls: [%3$s]
            """;

    /** The house file. */
    public String text() {
        StringBuilder text = new StringBuilder(BEFORE);
        for (int wall = 0; wall < walls; wall++) {
            text.append(WALL.formatted(wall, 120 + 4 * wall));
        }
        text.append("\nbody:\n  footprint-line: structure\n  storeys:\n");
        for (int storey = 0; storey < storeys(); storey++) {
            text.append(STOREY.formatted(storey, corners(), sides()));
            if (storey > 0) {
                text.append("    floor-thickness: 260 mm\n");
            }
        }
        text.append(AFTER);
        if (points > 0) {
            text.append("\npoints:\n");
        }
        for (int point = 0; point < points; point++) {
            text.append(String.format(
                    Locale.ROOT,
                    "  bracket %d: {surface: storey %d south wall %d, detail: bracket-stainless-on-pad, number: %d}%n",
                    point,
                    point % storeys(),
                    1 + point / storeys() % (2 * teeth() - 1),
                    1 + point % 3));
        }
        return text.toString();
    }

    private int storeys() {
        return Math.max(5, (surfaces + MOST_SIDES - 1) / MOST_SIDES);
    }

    private int teeth() {
        return Math.max(1, surfaces / storeys() / SIDES);
    }

    /** The teeth stand in a row and face south; behind them the house is one long room. */
    private String corners() {
        StringJoiner corners = new StringJoiner(", ");
        int east = 0;
        for (int tooth = 0; tooth < teeth(); tooth++) {
            int west = WIDE * 2 * tooth;
            if (tooth > 0) {
                corners.add(corner(east, DEEP)).add(corner(west, DEEP));
            }
            east = west + WIDE;
            corners.add(corner(west, 0)).add(corner(east, 0));
        }
        return corners.add(corner(east, BACK)).add(corner(0, BACK)).toString();
    }

    private static String corner(int x, int y) {
        return "[" + x + " m, " + y + " m]";
    }

    private String sides() {
        StringJoiner sides = new StringJoiner(", ");
        for (int tooth = 0; tooth < teeth(); tooth++) {
            String wall = "wall " + tooth % walls;
            if (tooth > 0) {
                sides.add(wall).add(wall).add(wall);
            }
            sides.add(wall);
        }
        return sides.add("wall 0").add("wall 0").add("wall 0").toString();
    }

    /** Arguments: surfaces, walls, points; prints the house file. */
    public static void main(String[] arguments) {
        System.out.print(new HouseGenerator(
                        Integer.parseInt(arguments[0]), Integer.parseInt(arguments[1]), Integer.parseInt(arguments[2]))
                .text());
    }
}
