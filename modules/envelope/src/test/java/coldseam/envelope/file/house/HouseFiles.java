package coldseam.envelope.file.house;

import coldseam.files.KnownNames;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.eclipse.collections.api.factory.Lists;

/** House files in tests, whose details no catalogue is asked for. */
public final class HouseFiles {

    private static final KnownNames ANY = KnownNames.of(Lists.immutable.empty()).or(any -> true);

    private HouseFiles() {}

    public static LoadedHouse read(Path path) {
        try {
            return read(path.toString(), Files.readAllBytes(path));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    public static LoadedHouse read(String file, byte[] content) {
        return read(file, content, ANY);
    }

    static LoadedHouse read(String file, byte[] content, KnownNames details) {
        return HouseFile.read(file, content, details, ANY, ANY);
    }
}
