package coldseam.report.words;

import coldseam.audit.HoldPoint;
import coldseam.files.quantity.UnitSystem;

/** What is said of a hold point's items. */
public final class HoldPointWords {

    private HoldPointWords() {}

    /**
     * What an item is called by, on paper and in the data, so that a photograph can be filed under it.
     *
     * @param point from 1, in order of building
     * @param item from 1, of that point
     */
    public static String number(int point, int item) {
        return point + "." + item;
    }

    /** What to look at, and at which sheets' seams. */
    public static String item(HoldPoint.Item item, UnitSystem units) {
        String words = units.told(item.lookAt());
        return item.sheets().isEmpty() ? words : words + " (" + item.sheets().makeString(", ") + ")";
    }
}
