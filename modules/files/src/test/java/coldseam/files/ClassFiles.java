package coldseam.files;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** The classes of a module for a test: from a folder, or, where modules are packaged before they are tested, from a jar. */
public final class ClassFiles {

    private ClassFiles() {}

    /**
     * Contents by the names of the files, such as {@code coldseam/files/Range.class}.
     *
     * @throws UncheckedIOException where it cannot be read
     */
    public static Map<String, byte[]> of(Path folderOrJar) {
        try {
            if (Files.isDirectory(folderOrJar)) {
                return in(folderOrJar);
            }
            try (FileSystem jar = FileSystems.newFileSystem(folderOrJar)) {
                return in(jar.getPath("/"));
            }
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static Map<String, byte[]> in(Path folder) throws IOException {
        Map<String, byte[]> found = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            List<Path> classes =
                    files.filter(file -> file.toString().endsWith(".class")).toList();
            for (Path each : classes) {
                String name = folder.relativize(each).toString();
                found.put(name.replace(folder.getFileSystem().getSeparator(), "/"), Files.readAllBytes(each));
            }
        }
        return found;
    }
}
