package coldseam.envelope.shell;

import coldseam.envelope.shell.lattice.Vertex;
import coldseam.envelope.shell.mesh.FacetMesh;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/** Edges that are not shared by exactly two surfaces that are there. */
final class OpenEdges {

    /** A piece with the facets beside it that are there, and those that are left out. */
    private record Piece(Vertex a, Vertex b, ImmutableList<Integer> there, ImmutableList<Integer> leftOut) {

        boolean continues(Piece next) {
            return b.equals(next.a)
                    && there.equals(next.there)
                    && leftOut.equals(next.leftOut)
                    && a.goesStraight(b, next.b);
        }
    }

    private OpenEdges() {}

    static ImmutableList<OpenEdge> of(FacetMesh mesh, ImmutableList<Side> sides) {
        MutableList<Piece> pieces = Lists.mutable.empty();
        for (FacetMesh.Line line : mesh.lines()) {
            ImmutableList<Integer> there =
                    line.facets().reject(f -> mesh.facets().get(f).missing());
            ImmutableList<Integer> leftOut =
                    line.facets().select(f -> mesh.facets().get(f).missing());
            if (there.notEmpty() && (!line.shared() || leftOut.notEmpty())) {
                pieces.add(new Piece(line.a(), line.b(), there, leftOut));
            }
        }
        MutableList<OpenEdge> edges = Lists.mutable.empty();
        while (pieces.notEmpty()) {
            Piece piece = pieces.remove(0);
            boolean grown = true;
            while (grown) {
                Piece sofar = piece;
                Piece after = pieces.detect(sofar::continues);
                Piece before = pieces.detect(other -> other.continues(sofar));
                if (after != null) {
                    pieces.remove(after);
                    piece = new Piece(sofar.a(), after.b(), sofar.there(), sofar.leftOut());
                } else if (before != null) {
                    pieces.remove(before);
                    piece = new Piece(before.a(), sofar.b(), sofar.there(), sofar.leftOut());
                }
                grown = after != null || before != null;
            }
            edges.add(edge(piece, mesh, sides));
        }
        return edges.toImmutable();
    }

    private static OpenEdge edge(Piece piece, FacetMesh mesh, ImmutableList<Side> sides) {
        double length = Vertex.metres(1) * piece.b().minus(piece.a()).length();
        ImmutableList<String> names =
                piece.there().collect(f -> mesh.facets().get(f).name());
        ImmutableList<String> leftOut =
                piece.leftOut().collect(f -> mesh.facets().get(f).name());
        int shown = piece.leftOut().isEmpty()
                ? piece.there().get(0)
                : piece.leftOut().get(0);
        String where = Places.word(sides.get(shown), mesh.facets().get(shown).normal()) + " side, "
                + mesh.facets().get(shown).traits().storey();
        String what = leftOut.notEmpty()
                ? "where " + names.makeString(" and ") + " should meet " + leftOut.makeString(" and ")
                        + ", which is left out"
                : names.size() == 1
                        ? "where nothing meets " + names.get(0)
                        : "where " + names.makeString(", ") + " meet in one line";
        return new OpenEdge(piece.a().point(), piece.b().point(), length, names, where + ", " + what);
    }
}
