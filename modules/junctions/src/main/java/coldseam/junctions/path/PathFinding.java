package coldseam.junctions.path;

import coldseam.junctions.WeakestPath;

/** Finds a weakest path; from the start, or from what was kept of an earlier run. */
@FunctionalInterface
public interface PathFinding {

    /** See {@link WeakestPaths#of}. */
    WeakestPath find(PathQuestion question);
}
