package coldseam.audit;

import coldseam.conduction.Interval;

/**
 * Corners of windows and doors, where head, sill or threshold meet the jambs: four each, which no sum of heat losses has.
 *
 * <p>What one adds to what its edges lose is known from cases in walls that were worked out apart, in three dimensions
 * ({@code fixtures/published/window-corners.csv}); a frame, reveal or lintel like none of them may lie outside.
 *
 * @param number how many there are
 */
public record OpeningCorners(int number) {

    /** How many cases were worked out. */
    public static final int CASES = 14;

    /** W/K each, rounded outwards, where boards lap the frame on its outer side. */
    public static final Interval LAPPED = new Interval(-0.01, 0.01);

    /** W/K each, rounded outwards, where they do not, the most in a bare reveal of concrete. */
    public static final Interval UNLAPPED = new Interval(-0.02, 0.08);

    public static OpeningCorners of(Audit audit) {
        return new OpeningCorners(4 * audit.house().openings().size());
    }

    /** W/K that all would add to H_T, were every frame lapped. */
    public Interval lapped() {
        return LAPPED.times(number);
    }

    /** W/K that all would add to H_T, were no frame lapped. */
    public Interval unlapped() {
        return UNLAPPED.times(number);
    }
}
