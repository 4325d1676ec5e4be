package coldseam.envelope.shell.fault;

/**
 * What keeps a shell from being built.
 *
 * @param part of the house that is at fault
 * @param name of that part; empty for parts there is one of
 * @param message what was asked, the value, what is allowed, the place, the next step
 */
public record ShellFault(Part part, String name, String message) {

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
