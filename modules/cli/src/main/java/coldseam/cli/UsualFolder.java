package coldseam.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/** Where a platform keeps what programs can make again: the user's own folder for caches. */
final class UsualFolder {

    private static final String NAME = "coldseam";

    private UsualFolder() {}

    /** On this machine, for this user. */
    static Optional<Path> here() {
        return of(System.getProperty("os.name", ""), System.getProperty("user.home", ""), System::getenv);
    }

    /**
     * By the platforms' conventions: {@code %LOCALAPPDATA%} on Windows, {@code ~/Library/Caches} on macOS, else {@code
     * $XDG_CACHE_HOME} where it is an absolute path (XDG Base Directory Specification 0.8, from memory), else {@code
     * ~/.cache}.
     *
     * @return empty where the platform names no such place
     */
    static Optional<Path> of(String system, String home, Function<String, String> environment) {
        String name = system.toLowerCase(Locale.ROOT);
        if (name.startsWith("windows")) {
            return absolute(environment.apply("LOCALAPPDATA")).map(place -> place.resolve(NAME));
        }
        if (name.startsWith("mac")) {
            return absolute(home).map(place -> place.resolve("Library/Caches").resolve(NAME));
        }
        return absolute(environment.apply("XDG_CACHE_HOME"))
                .or(() -> absolute(home).map(place -> place.resolve(".cache")))
                .map(place -> place.resolve(NAME));
    }

    private static Optional<Path> absolute(String path) {
        try {
            return Optional.ofNullable(path)
                    .filter(each -> !each.isBlank())
                    .map(Path::of)
                    .filter(Path::isAbsolute);
        } catch (InvalidPathException unusable) {
            return Optional.empty();
        }
    }
}
