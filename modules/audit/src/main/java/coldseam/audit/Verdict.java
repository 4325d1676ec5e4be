package coldseam.audit;

/**
 * The verdict; unbroken only if nothing is open, broken or unknown.
 *
 * @param unbroken whether insulation, air, water and vapour control pass everywhere
 * @param gaps number of findings that break a layer or leave it unknown
 * @param weakSpots number of findings that pinch it or miss a limit
 * @param sentence in plain words
 */
public record Verdict(boolean unbroken, int gaps, int weakSpots, String sentence) {}
