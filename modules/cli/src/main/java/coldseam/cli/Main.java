package coldseam.cli;

import coldseam.audit.house.BuiltInWorkshop;

/** The command. */
public final class Main {

    private Main() {}

    /** Runs the command and ends the process with its exit code. */
    public static void main(String[] arguments) {
        System.exit(Coldseam.run(Terminal.standard(), new BuiltInWorkshop(), UsualFolder.here(), arguments));
    }
}
