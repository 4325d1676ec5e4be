package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.house.HouseAudit;
import coldseam.envelope.shell.Edge;
import coldseam.envelope.shell.Shell;
import coldseam.envelope.shell.Surface;
import coldseam.envelope.shell.fault.ShellException;
import coldseam.files.FileFaultException;
import coldseam.junctions.hand.Drawn;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.collections.api.list.ImmutableList;

/** Reads one file as a command would, and holds what is accepted to what must be true of every accepted one. */
enum Probe {
    HOUSE {
        @Override
        void read(Path file) {
            check(HouseAudit.of(file, Run.REAL).shell());
        }
    },
    SECTION {
        @Override
        void read(Path file) {
            Drawn.load(file);
        }
    },
    DETAIL {
        @Override
        void read(Path file) throws IOException {
            Matcher kind = KIND.matcher(Files.readString(file));
            String word = kind.find() ? kind.group(1) : "parapet";
            besideAHouse(file, "junctions: [{kinds: [" + word + "], detail: " + file.getFileName() + "}]\n");
        }
    },
    POINT {
        @Override
        void read(Path file) throws IOException {
            besideAHouse(
                    file,
                    "points: {probe: {surface: ground floor south wall, detail: " + file.getFileName()
                            + ", number: 1}}\n");
        }
    };

    private static final Pattern KIND = Pattern.compile("^ *\"?kind\"?: \"?([a-z -]+)\"?,?$", Pattern.MULTILINE);

    private static final String BOX = """
            house: Probe
            site: {indoor-temperature: 20 °C, outdoor-temperature: -10 °C}
            assemblies:
              wall: {layers: [{material: mineral wool board, thickness: 200 mm, role: insulation}]}
            body:
              footprint-line: outer face
              storeys:
              - {name: ground floor, height: 3 m, footprint: {rectangle: [8 m, 6 m]}, walls: {all: wall}}
              base: {kind: slab on ground, assembly: wall}
              roof: {form: flat, assembly: wall}
            """;

    /** Reads it; throws what refuses it, and whatever else goes wrong. */
    abstract void read(Path file) throws IOException;

    /**
     * Reads a file.
     *
     * @return why it is refused; empty where it is accepted
     * @throws AssertionError where an accepted one is not as it must be
     */
    Optional<String> refusal(Path file) throws IOException {
        try {
            read(file);
            return Optional.empty();
        } catch (FileFaultException refused) {
            assertTrue(refused.faults().notEmpty());
            return Optional.of(refused.getMessage());
        } catch (ShellException refused) {
            assertTrue(refused.faults().notEmpty());
            return Optional.of(refused.getMessage());
        }
    }

    private static void besideAHouse(Path file, String names) throws IOException {
        Path house = file.resolveSibling("box.yaml");
        Files.writeString(house, BOX + names);
        HouseAudit.of(house, Run.REAL);
    }

    private static void check(Shell shell) {
        positive(shell.externalVolume(), "external volume");
        positive(shell.internalVolume(), "internal volume");
        positive(shell.floorArea(), "floor area");
        assertTrue(shell.internalVolume() < shell.externalVolume(), "the inside is within the outside");
        for (Surface surface : shell.surfaces()) {
            positive(surface.externalArea(), "external area of " + surface.name());
            positive(surface.internalArea(), "internal area of " + surface.name());
            assertTrue(
                    surface.openingArea() >= 0 && surface.openingArea() <= surface.externalArea(),
                    () -> "openings of " + surface.name() + ": " + surface.openingArea());
        }
        ImmutableList<String> names = shell.surfaces().collect(Surface::name);
        assertEquals(names.distinct(), names, "each surface has a name of its own");
        for (Edge edge : shell.edges()) {
            positive(edge.externalLength(), "external length of " + edge.name());
            assertTrue(edge.internalLength() >= 0, () -> "internal length of " + edge.name());
            assertTrue(Double.isFinite(edge.angle()), () -> "angle of " + edge.name());
        }
        double rest = Math.abs(shell.areaVectorSum().x())
                + Math.abs(shell.areaVectorSum().y())
                + Math.abs(shell.areaVectorSum().z());
        double all = shell.surfaces().sumOfDouble(Surface::externalArea);
        assertTrue(!shell.closed() || rest < 1e-6 * all, () -> "closed, yet area vectors add up to " + rest + " m²");
    }

    private static void positive(double value, String what) {
        assertTrue(value > 0 && Double.isFinite(value), () -> what + ": " + value);
    }
}
