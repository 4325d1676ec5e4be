package coldseam.junctions.store;

import coldseam.files.JarDirectory;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.security.MessageDigest;
import java.time.Instant;
import java.util.HexFormat;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * Keeps what one run came to, under the hash of all that it read: the tool, what was asked of it, one file, and the files that
 * are named in that one.
 *
 * <p>Which those are is known only once the file has been read, so their names are kept beside the answer, under the hash of
 * the file alone.
 */
public final class RunStore {

    private static final String NAMES = "names of files";
    private static final HexFormat HEX = HexFormat.of();

    private final KeptFolder folder;
    private final Instant begun = Instant.now();
    private final Path file;
    private final String digest;
    private final String question;

    private RunStore(KeptFolder folder, Path file, String digest, String question) {
        this.folder = folder;
        this.file = file;
        this.digest = digest;
        this.question = question;
    }

    /**
     * Asks about a file.
     *
     * @param tool what tells the tool's answers from another's
     * @param asked everything else that decides the answer
     * @return empty where the file cannot be read twice, such as a pipe, or not at all
     */
    public static Optional<RunStore> of(KeptFolder folder, String tool, Path file, ImmutableList<String> asked) {
        return content(file)
                .map(content -> HEX.formatHex(Seal.sha256().digest(content)))
                .map(digest -> new RunStore(
                        folder,
                        file,
                        digest,
                        Lists.immutable
                                .of(tool, file.toString(), digest)
                                .newWithAll(asked)
                                .collect(each -> each.length() + " " + each)
                                .makeString("\n")));
    }

    /** What an earlier run came to, that read the same. */
    public Optional<byte[]> find() {
        Optional<byte[]> found = opened(name(question + NAMES))
                .map(names -> Lists.immutable.with(new String(names, StandardCharsets.UTF_8).split("\n", -1)))
                .flatMap(names -> answer(names.drop(1)))
                .flatMap(this::opened);
        found.ifPresent(content -> folder.answered());
        return found;
    }

    /**
     * Keeps what this run came to, unless another may better it, or files changed while it ran.
     *
     * @param read SHA-256 of the file as the run read it, hexadecimal
     * @param names of files that are named in it, from its folder on
     */
    public void keep(String read, ImmutableList<String> names, byte[] content) {
        if (!read.equals(digest) || folder.betterable() || names.anySatisfy(this::changedSince)) {
            return;
        }
        answer(names).ifPresent(name -> {
            String list = Lists.immutable.of(NAMES).newWithAll(names).makeString("\n");
            folder.put(name(question + NAMES), Seal.sealed(list.getBytes(StandardCharsets.UTF_8)));
            folder.put(name, Seal.sealed(content));
        });
    }

    private Optional<byte[]> opened(String name) {
        return folder.get(name).flatMap(Seal::opened);
    }

    /** Where the answer lies; empty where one of the files is not there. */
    private Optional<String> answer(ImmutableList<String> names) {
        StringBuilder all = new StringBuilder(question);
        for (String name : names) {
            Optional<byte[]> content = content(beside(name));
            if (content.isEmpty()) {
                return Optional.empty();
            }
            all.append('\n')
                    .append(name)
                    .append('\n')
                    .append(HEX.formatHex(Seal.sha256().digest(content.get())));
        }
        return Optional.of(name(all.toString()));
    }

    private static String name(String text) {
        return HEX.formatHex(Seal.sha256().digest(text.getBytes(StandardCharsets.UTF_8)));
    }

    private Path beside(String name) {
        return file.toAbsolutePath().resolveSibling(name);
    }

    private boolean changedSince(String name) {
        try {
            return Files.getLastModifiedTime(beside(name)).compareTo(FileTime.from(begun)) >= 0;
        } catch (IOException gone) {
            return true;
        }
    }

    private static Optional<byte[]> content(Path file) {
        try {
            return Files.isRegularFile(file) ? Optional.of(Files.readAllBytes(file)) : Optional.empty();
        } catch (IOException unreadable) {
            return Optional.empty();
        }
    }

    /**
     * What tells this tool's answers from those of another build, JVM or platform: all that lies in the jars of its class path,
     * by the check sums in their directories. Hashed name by name it took a fiftieth of a run.
     *
     * @return empty where its classes lie in folders, which change while it is built
     */
    public static Optional<String> tool(String classPath) {
        MessageDigest digest = Seal.sha256();
        for (String each : classPath.split(java.io.File.pathSeparator)) {
            Path path = Path.of(each);
            if (!Files.isRegularFile(path)) {
                return Optional.empty();
            }
            try {
                digest.update(JarDirectory.of(path).sums());
            } catch (IOException none) {
                return Optional.empty();
            }
        }
        for (String property : new String[] {"java.runtime.version", "java.vm.name", "os.name", "os.arch"}) {
            digest.update(System.getProperty(property, "").getBytes(StandardCharsets.UTF_8));
        }
        digest.update(java.util.Locale.getDefault().toString().getBytes(StandardCharsets.UTF_8));
        return Optional.of(HEX.formatHex(digest.digest()));
    }
}
