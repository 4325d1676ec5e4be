package coldseam.cli;

import coldseam.assemblies.AssemblyException;
import coldseam.conduction.SectionException;
import coldseam.files.FileFaultException;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.DetailDoesNotFit;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import picocli.CommandLine;

/** What an exception means to whoever ran the command: the only place where exceptions become exit codes. */
final class Failures {

    private static final Pattern ONE_OF = Pattern.compile(
            "Invalid value for (?:option |positional parameter at index \\d+ )['(](.*?)[')](?: \\(.*?\\))?: expected one of"
                    + " \\[(.*)\\] \\(case-insensitive\\) but was '(.*)'");

    private static final Pattern NO_NUMBER =
            Pattern.compile("Invalid value for option '(.*?)'(?: \\(.*?\\))?: '(.*)' is not an? (int|double)");

    private Failures() {}

    /**
     * Says what went wrong.
     *
     * @param units in which a refusal measures
     * @param verbose whether our own faults show their stack trace
     */
    static Exit report(Throwable thrown, Terminal terminal, UnitSystem units, boolean verbose) {
        Optional<ImmutableList<String>> refusal = refusal(thrown, units);
        if (refusal.isPresent()) {
            refusal.get().forEach(terminal.err()::println);
            return Exit.REFUSED;
        }
        terminal.err().println("coldseam made a mistake of its own: " + thrown);
        terminal.err().println("Please report it with the input file; --verbose shows where it happened.");
        if (verbose) {
            thrown.printStackTrace(terminal.err());
        }
        return Exit.FAULT;
    }

    /** The faults of refused input; empty where it is our own fault. */
    private static Optional<ImmutableList<String>> refusal(Throwable thrown, UnitSystem units) {
        if (thrown instanceof FileFaultException fault) {
            return Optional.of(fault.faults().collect(each -> each.message(units)));
        }
        if (thrown instanceof RefusedException refused) {
            return Optional.of(refused.faults().collect(units::told));
        }
        if (thrown instanceof DetailDoesNotFit misfit) {
            return Optional.of(misfit.reasons().collect(each -> each.in(units)));
        }
        if (thrown instanceof SectionException || thrown instanceof AssemblyException) {
            return Optional.of(
                    Lists.immutable.of(thrown.getMessage().split("\n")).collect(units::told));
        }
        if (thrown instanceof UncheckedIOException unchecked) {
            return Optional.of(Lists.immutable.of(io(unchecked.getCause())));
        }
        if (thrown instanceof IOException io) {
            return Optional.of(Lists.immutable.of(io(io)));
        }
        return Optional.empty();
    }

    /** Why a file could not be read or written, and what to do. */
    static String io(IOException thrown) {
        if (thrown instanceof NoSuchFileException missing) {
            return missing.getFile() + ": no such file; check the path";
        }
        if (thrown instanceof AccessDeniedException denied) {
            return place(denied)
                    + ": no right to read or write it; close it where another program has it open, or choose another"
                    + " place";
        }
        if (thrown instanceof FileSystemException failed && failed.getReason() != null) {
            return place(failed) + ": " + failed.getReason()
                    + "; check the path, the disk, and whether another program has it open";
        }
        return "a file could not be read or written: " + thrown.getMessage() + "; check the path and the disk";
    }

    /** The file that was meant: where one was to be moved into its place, that place. */
    private static String place(FileSystemException failed) {
        return failed.getOtherFile() == null ? failed.getFile() : failed.getOtherFile();
    }

    /** For options and arguments that picocli refuses. */
    static int refuseArguments(CommandLine.ParameterException thrown, Terminal terminal) {
        // Its cause is not kept for arguments, but named in the message.
        terminal.err()
                .println(
                        thrown.getMessage().contains(InvalidPathException.class.getName())
                                ? "A file's name has a letter that no name can have on this machine as it is set up: on Windows one"
                                        + " of ? * < > | \" or of another language than the machine's, elsewhere letters beyond"
                                        + " a to z without a setting such as LC_ALL=C.UTF-8. Set it, or rename the file."
                                : thrown instanceof CommandLine.UnmatchedArgumentException more
                                        ? tooMuch(more)
                                        : plainly(thrown.getMessage()));
        CommandLine command = thrown.getCommandLine();
        CommandLine.UnmatchedArgumentException.printSuggestions(thrown, terminal.err());
        terminal.err().println("Run \"" + command.getCommandSpec().qualifiedName() + " --help\" for what it takes.");
        return Exit.REFUSED.code();
    }

    /** Words and options that nothing asked for; a name with spaces, typed without marks, comes as several words. */
    private static String tooMuch(CommandLine.UnmatchedArgumentException more) {
        String command = more.getCommandLine().getCommandSpec().qualifiedName();
        boolean named = more.getUnmatched().stream().noneMatch(each -> each.startsWith("-"));
        return "\"" + String.join(" ", more.getUnmatched()) + "\" is nothing that " + command + " takes"
                + (named ? "; a file's name with spaces in it stands in quotation marks" : "");
    }

    /** What picocli says of a value, as the tool says it of any. */
    private static String plainly(String message) {
        Matcher one = ONE_OF.matcher(message);
        if (one.matches()) {
            return one.group(1) + ": got \"" + one.group(3) + "\"; one of "
                    + one.group(2).toLowerCase(Locale.ROOT);
        }
        Matcher number = NO_NUMBER.matcher(message);
        return number.matches()
                ? number.group(1) + ": got \"" + number.group(2) + "\"; a "
                        + (number.group(3).equals("int") ? "whole number" : "number")
                        + " alone, without a unit, a currency or a mark for thousands"
                : message;
    }
}
