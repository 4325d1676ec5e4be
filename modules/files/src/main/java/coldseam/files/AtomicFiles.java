package coldseam.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Writes a file whole or not at all. */
public final class AtomicFiles {

    private AtomicFiles() {}

    /**
     * Writes to a temporary file in the same folder, then moves it into place. Missing folders are made. Of a link the file is
     * written that it leads to; a device or a pipe stays what it is, and takes the bytes as they come.
     *
     * @throws IOException where the folder cannot be written; the old file is then untouched
     */
    public static void write(Path path, byte[] bytes) throws IOException {
        if (isDevice(path)) {
            Files.write(path, bytes);
            return;
        }
        Path target = linked(path.toAbsolutePath());
        Files.createDirectories(target.getParent());
        // Made beside the target, since a move is atomic within one file system only; not createTempFile, whose files
        // only their owner may read; not named in full, since the longest names that there may be would be too long.
        Path temporary = target.resolveSibling("."
                + Integer.toHexString(target.getFileName().toString().hashCode()) + "."
                + ProcessHandle.current().pid() + "-" + Thread.currentThread().getId() + ".tmp");
        try {
            Files.write(temporary, bytes);
            try {
                Files.move(temporary, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            } catch (AtomicMoveNotSupportedException notHere) {
                Files.move(temporary, target, StandardCopyOption.REPLACE_EXISTING);
            }
        } finally {
            Files.deleteIfExists(temporary);
        }
    }

    /** Where a link leads, though nothing may be there yet. */
    private static Path linked(Path path) throws IOException {
        if (!Files.isSymbolicLink(path)) {
            return path;
        }
        try {
            return path.toRealPath();
        } catch (NoSuchFileException notYet) {
            return linked(path.resolveSibling(Files.readSymbolicLink(path)));
        }
    }

    private static boolean isDevice(Path path) {
        return Files.exists(path) && !Files.isRegularFile(path) && !Files.isDirectory(path);
    }

    /** Writes text in UTF-8; see {@link #write(Path, byte[])}. */
    public static void write(Path path, String text) throws IOException {
        write(path, text.getBytes(StandardCharsets.UTF_8));
    }
}
