package coldseam.assemblies.load;

import coldseam.assemblies.internal.Arguments;

/**
 * Screws in a row across a board, evenly: half a spacing stays at either edge, so that boards side by side keep the spacing. Common
 * practice, no source.
 *
 * @param boardWidth m
 * @param screws in each row, at least one
 */
public record ScrewRow(double boardWidth, int screws) {

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException where one is outside its range
     */
    public ScrewRow {
        Arguments.positive("the width of a board", boardWidth, "m");
        Arguments.positive("the number of screws in a row", screws, "");
    }

    /** m, from screw to screw. */
    public double spacing() {
        return boardWidth / screws;
    }

    /** m, from the outer screws to the board's edges. */
    public double edgeDistance() {
        return spacing() / 2;
    }

    /**
     * How many screws pierce a square metre.
     *
     * @param rowSpacing m, along the board
     * @return 1/m²
     */
    public double perSquareMetre(double rowSpacing) {
        return screws / (boardWidth * Arguments.positive("the spacing of rows", rowSpacing, "m"));
    }
}
