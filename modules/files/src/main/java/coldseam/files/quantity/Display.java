package coldseam.files.quantity;

/**
 * How a dimension is shown in one unit system.
 *
 * @param label of the unit
 * @param factor inside units in one unit shown
 * @param decimals digits after the point
 */
record Display(String label, double factor, int decimals) {

    /** A display before its inside unit is known. */
    interface Form {
        Display in(Measure inside);
    }

    /** A unit shown that is {@code factor} inside units. */
    static Form si(String label, double factor, int decimals) {
        return inside -> new Display(label, factor, decimals);
    }

    /** A unit shown whose factor follows from its expression. */
    static Form us(String label, String unit, int decimals) {
        return inside -> {
            Measure shown = UnitExpression.parse(unit);
            if (!shown.sameKindAs(inside)) {
                throw new IllegalStateException("unit " + unit + " is of another kind than its dimension");
            }
            return new Display(label, shown.factor() / inside.factor(), decimals);
        };
    }
}
