package coldseam.junctions.store;

import coldseam.conduction.Accuracy;
import coldseam.conduction.Section;
import coldseam.conduction.Solution;
import coldseam.junctions.SectionSolving;
import java.io.IOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Keeps solved sections on disk, each under the hash of what was asked: the section, the accuracy, and the solver's own
 * code.
 *
 * <p>An entry carries its own hash; one that is torn or altered is solved again and replaced.
 */
public final class SolutionStore implements SectionSolving {

    private final KeptFolder folder;
    private final SectionSolving solver;
    private final byte[] core;

    public SolutionStore(KeptFolder folder, SectionSolving solver) {
        this(folder, solver, Core.HASH);
    }

    public SolutionStore(KeptFolder folder, SectionSolving solver, byte[] core) {
        this.folder = folder;
        this.solver = solver;
        this.core = core.clone();
    }

    @Override
    public Solution solve(Section section, Accuracy accuracy) {
        return folder.answer(
                name(section, accuracy),
                content -> SolutionBytes.read(content, section, accuracy),
                () -> solver.solve(section, accuracy),
                solution ->
                        solution.outcome().byMemory() ? Optional.empty() : Optional.of(SolutionBytes.write(solution)));
    }

    /** The hash of a question. */
    String name(Section section, Accuracy accuracy) {
        return Seal.name(core, SolutionBytes.question(section, accuracy));
    }

    /** The hash of the solver's classes, in all its packages: whatever changes in them, older answers are no longer found. */
    static final class Core {

        static final byte[] HASH = hash();

        private static byte[] hash() {
            try {
                URI one = Section.class.getResource("Section.class").toURI();
                if (!one.getScheme().equals("jar")) {
                    return hash(Path.of(one).getParent());
                }
                try (FileSystem jar = FileSystems.newFileSystem(one, Map.of())) {
                    return hash(jar.getPath(Section.class.getPackageName().replace('.', '/')));
                }
            } catch (URISyntaxException | IOException broken) {
                throw new IllegalStateException("the solver's classes cannot be read; please report this", broken);
            }
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
