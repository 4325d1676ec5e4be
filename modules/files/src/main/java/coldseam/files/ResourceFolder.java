package coldseam.files;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.JarURLConnection;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.stream.Stream;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;

/**
 * A folder of YAML files that comes with the tool: a folder while building, in the jar afterwards.
 *
 * @param path absolute, ending in a slash, such as {@code /details/}; to be listed it needs a README.md
 */
public record ResourceFolder(String path) {

    private static final String README = "README.md";
    private static final String SUFFIX = ".yaml";

    /** Makes something of a file; empty where it added faults. */
    public interface Reader<T> {

        /** Reads a file's tree, whose text is at hand too. */
        Optional<T> read(SourceNode tree, String content, Faults faults);
    }

    /** What explains the files. */
    public String readme() {
        return text(README);
    }

    /**
     * Everything that is made of the files, in the order of their names. They are read side by side, on all cores.
     *
     * @throws FileFaultException with every fault of every file
     */
    public <T> ImmutableList<T> read(Reader<T> reader) {
        List<One<T>> each = names().castToList().parallelStream()
                .map(file -> one(file, reader))
                .toList();
        Faults faults = new Faults();
        each.forEach(one -> one.faults().sorted().forEach(faults::add));
        faults.throwIfAny();
        return Lists.immutable
                .withAll(each)
                .flatCollect(one -> one.made().stream().toList());
    }

    /**
     * What is made of one file of the folder.
     *
     * @throws FileFaultException with every fault of the file
     */
    public <T> T read(String file, Reader<T> reader) {
        One<T> one = one(file, reader);
        one.faults().throwIfAny();
        return one.made().orElseThrow();
    }

    /** What came of one file. */
    private record One<T>(Optional<T> made, Faults faults) {}

    private <T> One<T> one(String file, Reader<T> reader) {
        Faults faults = new Faults();
        byte[] bytes = bytes(file);
        return new One<>(
                SourceDocument.read(path + file, bytes, faults)
                        .flatMap(tree -> reader.read(tree, new String(bytes, StandardCharsets.UTF_8), faults)),
                faults);
    }

    /**
     * One file of the folder, bound to a type.
     *
     * @param known names that the file may use without defining them, by what they name
     * @throws FileFaultException with every fault of the file
     */
    public <T> T read(String file, Class<T> type, ImmutableMap<String, KnownNames> known) {
        Faults faults = new Faults();
        Optional<T> read = SourceDocument.read(path + file, bytes(file), faults)
                .flatMap(tree -> Binder.bind(tree, type, faults, known));
        faults.throwIfAny();
        return read.orElseThrow();
    }

    public String text(String file) {
        return new String(bytes(file), StandardCharsets.UTF_8);
    }

    private byte[] bytes(String file) {
        Optional<JarFile> jar = InJar.of(this);
        Optional<JarEntry> entry = jar.map(each -> each.getJarEntry(path.substring(1) + file));
        try (InputStream stream = jar.isPresent()
                ? jar.get().getInputStream(entry.get())
                : ResourceFolder.class.getResourceAsStream(path + file)) {
            // Who does not know how much there is to read asks for room for far more.
            return entry.isPresent() ? stream.readNBytes((int) entry.get().getSize()) : stream.readAllBytes();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** The names of its files, in their order. */
    public ImmutableList<String> names() {
        try {
            Optional<JarFile> jar = InJar.of(this);
            return jar.isPresent()
                    ? names(InJar.files(jar.get()), path.substring(1))
                    : names(Path.of(ResourceFolder.class
                                    .getResource(path + README)
                                    .toURI())
                            .getParent());
        } catch (URISyntaxException | IOException broken) {
            throw new IllegalStateException("the files in " + path + " cannot be listed; please report this", broken);
        }
    }

    private static ImmutableList<String> names(ImmutableList<String> files, String folder) {
        return files.select(each -> each.startsWith(folder) && each.indexOf('/', folder.length()) < 0)
                .collect(each -> each.substring(folder.length()))
                .toImmutableSortedList();
    }

    private static ImmutableList<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return Lists.immutable.withAll(files.map(each -> each.getFileName().toString())
                    .filter(name -> name.endsWith(SUFFIX))
                    .sorted()
                    .toList());
        }
    }

    /** Each jar's files, looked through once for all folders; a jar that classes come from is open anyway, and not ours to close. */
    private static final class InJar {

        private static final Map<String, ImmutableList<String>> FOUND = new ConcurrentHashMap<>();
        private static final Map<String, Optional<JarFile>> JARS = new ConcurrentHashMap<>();

        /** The jar of a folder; to ask the platform for each of its files takes longer than to unpack it. */
        private static Optional<JarFile> of(ResourceFolder folder) {
            return JARS.computeIfAbsent(folder.path(), path -> {
                try {
                    URL readme = ResourceFolder.class.getResource(path + README);
                    return readme != null && readme.openConnection() instanceof JarURLConnection jar
                            ? Optional.of(jar.getJarFile())
                            : Optional.empty();
                } catch (IOException broken) {
                    throw new UncheckedIOException(broken);
                }
            });
        }

        private static ImmutableList<String> files(JarFile jar) throws IOException {
            ImmutableList<String> known = FOUND.get(jar.getName());
            if (known != null) {
                return known;
            }
            ImmutableList<String> found = JarDirectory.ofOpen(Path.of(jar.getName()))
                    .entries("", SUFFIX)
                    .collect(JarDirectory.Entry::name);
            FOUND.put(jar.getName(), found);
            return found;
        }
    }
}
