package coldseam.benchmarks;

import coldseam.audit.house.BuiltInWorkshop;
import coldseam.audit.house.HouseAudit;
import coldseam.audit.house.Workshop;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;

/**
 * Times new audits of Heron Row in a JVM that lives on: from the text of the house file to the whole record, with what was
 * solved for earlier ones remembered.
 *
 * <p>Arguments: the house file, a folder to work in, and how many of each.
 */
public final class LivingAudit {

    /** The wall's insulation in the demo house. */
    private static final String LAYER = "thickness: 200 mm";

    private LivingAudit() {}

    /** Runs everything and prints two rows. */
    public static void main(String[] arguments) throws IOException {
        PrintStream out = new PrintStream(new FileOutputStream(FileDescriptor.out), true, StandardCharsets.UTF_8);
        String text = Files.readString(Path.of(arguments[0]));
        Path file = Files.createDirectories(Path.of(arguments[1])).resolve("house.yaml");
        int times = Integer.parseInt(arguments[2]);
        Workshop workshop = new BuiltInWorkshop();
        for (int warm = 0; warm < 3; warm++) {
            seconds(file, text, workshop);
        }
        double[] same = new double[times];
        double[] thickness = new double[times];
        for (int i = 0; i < times; i++) {
            thickness[i] = seconds(file, text.replaceFirst(LAYER, "thickness: " + (161 + i) + " mm"), workshop);
            same[i] = seconds(file, text, workshop);
        }
        out.printf(Locale.ROOT, "read and audited again, nothing new to solve: %s%n", row(same));
        out.printf(Locale.ROOT, "another thickness of the wall, all its sections solved: %s%n", row(thickness));
    }

    private static double seconds(Path file, String text, Workshop workshop) throws IOException {
        Files.writeString(file, text);
        long start = System.nanoTime();
        HouseAudit.of(file, workshop).compute();
        return 1e-9 * (System.nanoTime() - start);
    }

    private static String row(double[] seconds) {
        double[] sorted = seconds.clone();
        Arrays.sort(sorted);
        return String.format(
                Locale.ROOT, "least %.3f s, median %.3f s of %d", sorted[0], sorted[sorted.length / 2], sorted.length);
    }
}
