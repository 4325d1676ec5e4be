package coldseam.junctions.vertex;

import coldseam.junctions.DetailDoesNotFit;

/** Computes vertices; equal questions are answered once. Asked from several threads at once. */
@FunctionalInterface
public interface VertexComputing {

    /**
     * Computes a vertex.
     *
     * @throws DetailDoesNotFit where its edges' sections do not say how it is built, with the reason
     */
    VertexResult compute(VertexSetup setup);
}
