package coldseam.junctions;

import coldseam.conduction.Accuracy;
import java.nio.file.Path;
import java.util.Locale;

/** Prints what each detail comes to on the sample layers, while details are written. */
final class Table {

    private Table() {}

    public static void main(String... files) {
        for (String file : files) {
            long start = System.nanoTime();
            try {
                Detail detail = DetailFile.read(Path.of(file));
                Composition composition = Composer.compose(
                        detail,
                        (Boolean.getBoolean("framed")
                                ? Samples.framedSetup(detail.kind())
                                : Samples.setup(detail.kind())),
                        BuiltIn.LIBRARY);
                long composed = System.nanoTime();
                JunctionResult r = Junctions.computer(new Accuracy(1e-3, 100_000))
                        .compute(
                                detail,
                                (Boolean.getBoolean("framed")
                                        ? Samples.framedSetup(detail.kind())
                                        : Samples.setup(detail.kind())));
                System.out.printf(
                        Locale.ROOT,
                        "%-36s psi e %.4f..%.4f i %.4f f %.3f neck %.4f share %.2f path %.2f ratio %.2f  %s %.0f+%.0f ms n=%d pen=%d%n",
                        detail.id(),
                        r.psiExternal().lower(),
                        r.psiExternal().upper(),
                        r.psiInternal().middle(),
                        r.temperatureFactor(),
                        r.penLine().neck(),
                        r.penLine().share(),
                        r.weakestPath().resistance(),
                        r.weakestPath().ratio(),
                        r.legs().collect(l -> String.format(Locale.ROOT, "%s %.3f", l.name(), l.transmittance())),
                        (composed - start) / 1e6,
                        (System.nanoTime() - composed) / 1e6,
                        r.solution().unknowns(),
                        r.penLine().path().size());
            } catch (RuntimeException failed) {
                System.out.println(file + ": " + failed);
                StackTraceElement[] at = failed.getStackTrace();
                for (int i = 0; i < Math.min(6, at.length); i++) {
                    System.out.println("    " + at[i]);
                }
            }
        }
    }
}
