package coldseam.conduction;

/** Solves sections. */
public final class Conduction {

    private Conduction() {}

    /**
     * Solves a section to the accuracy asked for.
     *
     * @throws SectionException with every fault of the section at once
     */
    public static Solution solve(Section section, Accuracy accuracy) {
        throw new UnsupportedOperationException("not built yet");
    }
}
