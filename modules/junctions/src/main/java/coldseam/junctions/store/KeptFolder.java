package coldseam.junctions.store;

import coldseam.files.AtomicFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * A folder in which answers lie under the hash of their question, any part of which may be removed at any time.
 *
 * <p>An entry is written beside its place and moved into it, so two runs at once write the same entry twice and neither sees
 * half of one. What takes more room than allowed goes, the longest unused first. A folder that cannot be written, or a disk
 * that is full, costs time and nothing else: the first failure is kept to be told, and nothing more is written.
 */
public final class KeptFolder {

    /** Of the folder that every run shares, bytes: some ten houses. */
    public static final long USUAL_LIMIT = 256L << 20;

    /** Where too much is kept, so much of the limit stays. */
    private static final double LEFT = 0.75;

    /** An entry's time of use is written anew when it is older than this: most readings then write nothing. */
    private static final Duration USED = Duration.ofHours(1);

    private final Path folder;
    private final long limit;
    private long held = -1;
    private int found;
    private int added;
    private boolean betterable;
    private Optional<IOException> trouble = Optional.empty();

    private KeptFolder(Path folder, long limit) {
        this.folder = folder;
        this.limit = limit;
    }

    /** A folder of somebody's own, as large as it grows; made where it is missing. */
    public static KeptFolder in(Path folder) {
        return new KeptFolder(folder, Long.MAX_VALUE);
    }

    /** A folder that is held to a size, bytes; made where it is missing. */
    public static KeptFolder in(Path folder, long limit) {
        return new KeptFolder(folder, limit);
    }

    /** Where it is. */
    public Path folder() {
        return folder;
    }

    /** How many answers were found in it. */
    public synchronized int found() {
        return found;
    }

    /** How many were added to it. */
    public synchronized int added() {
        return added;
    }

    /** Why nothing more is kept in it; empty where all is well. */
    public synchronized Optional<IOException> trouble() {
        return trouble;
    }

    /** Where an entry is; two characters of folder keep each folder small. */
    Path entry(String name) {
        return folder.resolve(name.substring(0, 2)).resolve(name);
    }

    /** An entry's content; empty where there is none, or it cannot be read. */
    Optional<byte[]> get(String name) {
        Path entry = entry(name);
        try {
            BasicFileAttributes attributes = Files.readAttributes(entry, BasicFileAttributes.class);
            byte[] content = Files.readAllBytes(entry);
            used(entry, attributes.lastModifiedTime().toInstant());
            return Optional.of(content);
        } catch (IOException unreadable) {
            return Optional.empty();
        }
    }

    /** The time of an entry only decides what goes first; no answer depends on it. */
    private void used(Path entry, Instant last) {
        Instant now = Instant.now();
        if (limit == Long.MAX_VALUE || last.plus(USED).isAfter(now)) {
            return;
        }
        try {
            Files.setLastModifiedTime(entry, FileTime.from(now));
        } catch (IOException readOnly) {
            // It will go a little earlier than it should.
            return;
        }
    }

    /**
     * What is kept under a name, or a new answer that is kept from now on. What is torn or altered counts as not kept.
     *
     * @param <T> the answer
     * @param writer gives nothing for an answer that another run may better
     */
    <T> T answer(String name, Function<byte[], T> reader, Supplier<T> solver, Function<T, Optional<byte[]>> writer) {
        Optional<T> kept = get(name).flatMap(Seal::opened).map(reader);
        if (kept.isPresent()) {
            answered();
            return kept.get();
        }
        T solved = solver.get();
        writer.apply(solved).ifPresentOrElse(content -> put(name, Seal.sealed(content)), this::passedOver);
        return solved;
    }

    /** Counts an entry that answered a question. */
    synchronized void answered() {
        found++;
    }

    private synchronized void passedOver() {
        betterable = true;
    }

    /** Whether an answer was not kept, since another run may better it. */
    synchronized boolean betterable() {
        return betterable;
    }

    /** Keeps an entry, unless keeping has failed before. */
    synchronized void put(String name, byte[] content) {
        if (trouble.isPresent()) {
            return;
        }
        try {
            if (!kept(entry(name), content)) {
                return;
            }
            added++;
            if (limit < Long.MAX_VALUE) {
                held = held < 0 ? size(files()) : held + content.length;
                if (held > limit) {
                    clear();
                }
            }
        } catch (IOException full) {
            trouble = Optional.of(full);
        }
    }

    /**
     * Whether an entry was written. What another run has kept meanwhile, and holds open on a system that forbids to replace it, is
     * the same.
     */
    private static boolean kept(Path entry, byte[] content) throws IOException {
        try {
            AtomicFiles.write(entry, content);
            return true;
        } catch (IOException failed) {
            if (Files.isRegularFile(entry)) {
                return false;
            }
            throw failed;
        }
    }

    private record Kept(Path path, long size, FileTime used) {}

    private MutableList<Kept> files() throws IOException {
        MutableList<Kept> all = Lists.mutable.empty();
        try (Stream<Path> paths = Files.walk(folder)) {
            for (Path path : (Iterable<Path>) paths::iterator) {
                try {
                    BasicFileAttributes attributes = Files.readAttributes(path, BasicFileAttributes.class);
                    if (attributes.isRegularFile()) {
                        all.add(new Kept(path, attributes.size(), attributes.lastModifiedTime()));
                    }
                } catch (IOException gone) {
                    // Another run makes room at the same time.
                    continue;
                }
            }
        } catch (java.io.UncheckedIOException gone) {
            throw gone.getCause();
        }
        return all;
    }

    private static long size(MutableList<Kept> files) {
        return files.sumOfLong(Kept::size);
    }

    private void clear() throws IOException {
        MutableList<Kept> all = files();
        held = size(all);
        all.sortThis(Comparator.comparing(Kept::used).thenComparing(Kept::path));
        for (Kept each : all) {
            if (held <= LEFT * limit) {
                return;
            }
            // What another run holds open on a system that forbids to delete it stays.
            if (each.path().toFile().delete() || !Files.exists(each.path())) {
                held -= each.size();
            }
        }
    }
}
