package coldseam.envelope;

/** What a layer controls. */
public enum Control {
    HEAT,
    AIR,
    WATER,
    VAPOUR
}
