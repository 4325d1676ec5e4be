package coldseam.conduction.solid;

/**
 * A piece of surface whose mean temperature is asked for with an interval.
 *
 * @param name unique in its body
 * @param environment which it faces
 * @param box of air: surfaces facing that environment's air inside it belong to the patch
 */
public record Patch(String name, String environment, Cuboid box) {}
