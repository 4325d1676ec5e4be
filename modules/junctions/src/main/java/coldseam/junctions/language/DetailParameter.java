package coldseam.junctions.language;

/**
 * A length of a detail's own, such as how far one board laps another.
 *
 * @param name as the detail's file has it
 * @param value m, in use
 * @param least m, that makes sense
 * @param most m, that makes sense
 * @param insulates whether a greater value may let less heat through, so that advice tries some
 * @param given whether a house file set the value; otherwise it is the detail's own
 */
public record DetailParameter(
        String name, double value, double least, double most, String says, boolean insulates, boolean given) {

    /** m; what is written as the range's own end lies in it. */
    private static final double SLACK = 1e-9;

    /** Whether a value lies in the detail's range; NaN does not. */
    public boolean allows(double metres) {
        return metres >= least - SLACK && metres <= most + SLACK;
    }

    public DetailParameter with(double metres) {
        if (!allows(metres)) {
            throw new IllegalArgumentException(
                    "parameter " + name + ": got " + metres + " m; allowed is " + least + " m to " + most + " m");
        }
        return new DetailParameter(name, metres, least, most, says, insulates, true);
    }
}
