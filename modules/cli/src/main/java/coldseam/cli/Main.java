package coldseam.cli;

import coldseam.audit.house.BuiltInWorkshop;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalInt;

/** The command. */
public final class Main {

    private Main() {}

    /** Runs the command and ends the process with its exit code. */
    public static void main(String[] arguments) {
        if (!Files.isDirectory(Path.of(""))) {
            System.exit(
                    refused("The folder that this runs in has a name that this machine, as it is set up, cannot read;"
                            + " set LC_ALL=C.UTF-8, or run it from another folder"));
        }
        OptionalInt elsewhere = Restart.line(
                        Path.of(System.getProperty("java.home"), "bin", "java"),
                        Restart.given(List.of(arguments)),
                        System.getProperty("java.class.path"),
                        List.of(arguments))
                .map(Restart::run)
                .orElse(OptionalInt.empty());
        System.exit(elsewhere.orElseGet(() -> here(arguments)));
    }

    private static int here(String... arguments) {
        Restart.endWithParent();
        int code = Coldseam.run(Terminal.standard(), new BuiltInWorkshop(), UsualFolder.here(), arguments);
        return Terminal.lost().map(Main::refused).orElse(code);
    }

    private static int refused(String why) {
        System.err.println(why);
        return Exit.REFUSED.code();
    }
}
