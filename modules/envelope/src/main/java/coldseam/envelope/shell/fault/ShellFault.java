package coldseam.envelope.shell.fault;

/**
 * What keeps a shell from being built.
 *
 * @param part of the house that is at fault
 * @param name of that part; empty for parts there is one of
 * @param message what was asked, the value, what is allowed, the place, the next step
 */
public record ShellFault(Part part, String name, String message) {

    /** The name of one of a stack's other bases; the main stack's name is empty. */
    public static String otherBase(String stack, int number) {
        return "Other base " + number + (stack.isEmpty() ? "" : " of \"" + stack + "\"");
    }

    /** Parts of a house that can be at fault. */
    public enum Part {
        BODY,
        STOREY,
        WALL,
        BASE,
        ROOF,
        DORMER,
        SURFACE,
        OPENING,
        SEAM
    }
}
