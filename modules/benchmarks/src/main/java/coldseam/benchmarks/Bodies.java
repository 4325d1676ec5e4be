package coldseam.benchmarks;

import coldseam.conduction.solid.SolidBody;
import coldseam.junctions.hand.Drawn;
import coldseam.junctions.hand.DrawnBody;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;

/** The bodies of {@code fixtures/sections} that have couplings from outside the project; read in the project's folder. */
final class Bodies {

    private static final Path REFERENCES = Path.of("fixtures", "published", "conduction.csv");
    private static final Path SECTIONS = Path.of("fixtures", "sections");

    private Bodies() {}

    /** Couplings by body, then by pair of environments, W/K. */
    static Map<String, Map<String, Double>> references() throws IOException {
        Map<String, Map<String, Double>> all = new LinkedHashMap<>();
        for (String line : Files.readAllLines(REFERENCES, StandardCharsets.UTF_8)) {
            String[] fields = line.split(";", -1);
            if (fields.length > 5 && fields[1].strip().equals("coupling")) {
                all.computeIfAbsent(fields[0].strip(), key -> new LinkedHashMap<>())
                        .put(fields[2].strip(), Double.parseDouble(fields[5].strip()));
            }
        }
        return all;
    }

    /** Those bodies by their files' names. */
    static Map<String, SolidBody> all() throws IOException {
        Map<String, SolidBody> bodies = new LinkedHashMap<>();
        for (String name : references().keySet()) {
            if (Drawn.load(SECTIONS.resolve(name + ".yaml")) instanceof DrawnBody drawn) {
                bodies.put(name, drawn.body());
            }
        }
        return bodies;
    }
}
