package coldseam.junctions.store;

import coldseam.conduction.Accuracy;
import coldseam.conduction.Section;
import coldseam.conduction.Solution;
import coldseam.files.JarDirectory;
import coldseam.junctions.SectionSolving;
import java.io.IOException;
import java.net.JarURLConnection;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.collections.impl.factory.Lists;

/**
 * Keeps solved sections on disk, each under the hash of what was asked: the section, the accuracy, and the solver's own
 * code.
 *
 * <p>An entry carries its own hash; one that is torn or altered is solved again and replaced.
 */
public final class SolutionStore implements SectionSolving {

    /** Of the solver, and of how its answers are written: in another form they are other answers. */
    static final byte[] HASH = Seal.digest(Core.HASH, Core.hash(SolutionStore.class));

    private final KeptFolder folder;
    private final SectionSolving solver;
    private final byte[] core;
    private final boolean fields;

    public SolutionStore(KeptFolder folder, SectionSolving solver) {
        this(folder, solver, HASH);
    }

    public SolutionStore(KeptFolder folder, SectionSolving solver, byte[] core) {
        this(folder, solver, core, true);
    }

    private SolutionStore(KeptFolder folder, SectionSolving solver, byte[] core, boolean fields) {
        this.folder = folder;
        this.solver = solver;
        this.core = core.clone();
        this.fields = fields;
    }

    /** One that keeps no fields, which are nearly all of an answer: what asks for one nevertheless has it solved again. */
    public static SolutionStore ofNumbers(KeptFolder folder, SectionSolving solver) {
        return new SolutionStore(folder, solver, Seal.digest(HASH, new byte[] {1}), false);
    }

    @Override
    public Solution solve(Section section, Accuracy accuracy) {
        return folder.answer(
                name(section, accuracy),
                content -> SolutionBytes.read(
                        content,
                        section,
                        accuracy,
                        packed -> fields
                                ? KeptField.unpacked(packed, section)
                                : solver.solve(section, accuracy).field()),
                () -> solver.solve(section, accuracy),
                solution -> solution.outcome().byMemory()
                        ? Optional.empty()
                        : Optional.of(fields ? SolutionBytes.write(solution) : SolutionBytes.numbers(solution)));
    }

    /** The hash of a question. */
    String name(Section section, Accuracy accuracy) {
        return Seal.name(core, RecordBytes.inFull(Lists.immutable.of(section, accuracy)));
    }

    /** Hashes of the classes of a package and all below it: whatever changes in them, older answers are no longer found. */
    static final class Core {

        /** Of the solver. */
        static final byte[] HASH = hash(Section.class);

        /** @param inIt a class of the package itself */
        static byte[] hash(Class<?> inIt) {
            try {
                URL one = inIt.getResource(inIt.getSimpleName() + ".class");
                return one.openConnection() instanceof JarURLConnection jar
                        ? hash(
                                JarDirectory.ofOpen(Path.of(jar.getJarFileURL().toURI())),
                                inIt.getPackageName().replace('.', '/') + "/",
                                ".class")
                        : hash(Path.of(one.toURI()).getParent());
            } catch (URISyntaxException | IOException broken) {
                throw new IllegalStateException(
                        "the classes of " + inIt.getPackageName() + " cannot be read; please report this", broken);
            }
        }

        /** Of the names and check sums that the jar's directory has: nothing is unpacked for it. */
        static byte[] hash(JarDirectory jar, String folder, String ending) throws IOException {
            MessageDigest digest = Seal.sha256();
            jar.entries(folder, ending)
                    .collect(each -> each.name() + " " + each.sum() + "\n")
                    .toSortedList()
                    .forEach(each -> digest.update(each.getBytes(StandardCharsets.UTF_8)));
            return digest.digest();
        }

        static byte[] hash(Path classes) throws IOException {
            MessageDigest digest = Seal.sha256();
            try (Stream<Path> files = Files.walk(classes)) {
                for (Path file : files.filter(each -> each.toString().endsWith(".class"))
                        .sorted()
                        .toList()) {
                    digest.update(Files.readAllBytes(file));
                }
            }
            return digest.digest();
        }
    }
}
