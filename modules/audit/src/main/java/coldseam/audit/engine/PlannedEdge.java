package coldseam.audit.engine;

import coldseam.envelope.OwnPsi;
import coldseam.envelope.shell.Edge;
import coldseam.junctions.JunctionSetup;
import java.util.Optional;

/**
 * What is to be computed for an edge.
 *
 * @param bridge how it is built
 * @param own psi of its own, which goes before the computed one
 */
record PlannedEdge(Edge edge, PlannedBridge<JunctionSetup> bridge, Optional<OwnPsi> own) {}
