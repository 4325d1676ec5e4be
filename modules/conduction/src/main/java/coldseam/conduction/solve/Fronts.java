package coldseam.conduction.solve;

import coldseam.conduction.mesh.Mesh;
import java.util.Arrays;

/**
 * The symbolic half of the multifrontal factorisation: which unknowns meet in each block of a dissection, and which of
 * them end there. Both systems, temperature and stream function, share it.
 *
 * <p>Unknowns are numbered by what they belong to: nodes first, then adiabatic arcs, then cuts. An unknown ends in the
 * smallest block that holds all triangles it occurs in; {@code rank} sorts unknowns by the block they end in, so that
 * every block's list of ranks ({@code list[start[b]..start[b+1]-1]}, ascending) begins with its {@code gone[b]} ending
 * ones, which follow one another, and maps into its parent's list in ascending order ({@code into}).
 */
final class Fronts {

    private Mesh mesh;
    private Unknowns unknowns;

    int count;
    int[] start = new int[0];
    int[] gone = new int[0];
    int[] list = new int[4096];
    /** For each list entry that does not end in its block, its place in the parent's list. */
    int[] into = new int[4096];
    /** The largest list. */
    int widest;
    /** Six places for each triangle, in the dissection's order. */
    int[] nodePlace = new int[0];

    int[] rank = new int[0];

    /** Of a block. */
    private int[] parent = new int[0];
    /** Where an unknown ends. */
    private int[] block = new int[0];
    /** Of a rank, its place in the leaf last worked on, and that leaf. */
    private int[] place = new int[0];

    private int[] listedIn = new int[0];
    private int[] firstRank = new int[0];
    private int[] blockCount = new int[0];
    private final int[] extra = new int[64];

    void build(Mesh of, Unknowns numbered, Dissection cut) {
        mesh = of;
        unknowns = numbered;
        count = unknowns.all();
        reserve(cut);
        findEnds(cut);
        sortByEnd(cut);
        buildLists(cut);
    }

    private void reserve(Dissection cut) {
        if (block.length < count) {
            int room = count + count / 2;
            block = new int[room];
            rank = new int[room];
            place = new int[room];
            listedIn = new int[room];
        }
        if (gone.length < cut.blocks) {
            int room = cut.blocks + cut.blocks / 2;
            start = new int[room + 1];
            gone = new int[room];
            parent = new int[room];
            blockCount = new int[room + 1];
            firstRank = new int[room + 1];
        }
        if (nodePlace.length < 6 * mesh.triangles) {
            nodePlace = new int[9 * mesh.triangles];
        }
    }

    private void findEnds(Dissection cut) {
        int root = cut.blocks - 1;
        for (int b = 0; b <= root; b++) {
            if (cut.half[2 * b] >= 0) {
                parent[cut.half[2 * b]] = b;
                parent[cut.half[2 * b + 1]] = b;
            }
        }
        Arrays.fill(block, 0, count, -1);
        for (int b = 0; b <= root; b++) {
            for (int i = cut.first[b]; i < cut.end[b] && cut.half[2 * b] < 0; i++) {
                int t = cut.order[i];
                for (int j = 6 * t; j < 6 * t + 6; j++) {
                    seen(mesh.node[j], b, i, cut);
                }
                int n = unknowns.extras(t, extra);
                for (int j = 0; j < n; j++) {
                    seen(extra[j], b, i, cut);
                }
            }
        }
        for (int d = 0; d < count; d++) {
            block[d] = block[d] < 0 ? root : block[d];
        }
    }

    /** Widens the block that holds what an unknown was seen in to one that also holds a later triangle, of a leaf. */
    private void seen(int d, int leaf, int at, Dissection cut) {
        int b = block[d] < 0 ? leaf : block[d];
        while (cut.end[b] <= at) {
            b = parent[b];
        }
        block[d] = b;
    }

    private void sortByEnd(Dissection cut) {
        Arrays.fill(blockCount, 0, cut.blocks + 1, 0);
        for (int d = 0; d < count; d++) {
            blockCount[block[d] + 1]++;
        }
        for (int b = 0; b < cut.blocks; b++) {
            blockCount[b + 1] += blockCount[b];
        }
        System.arraycopy(blockCount, 0, firstRank, 0, cut.blocks + 1);
        for (int d = 0; d < count; d++) {
            rank[d] = blockCount[block[d]]++;
        }
    }

    private void buildLists(Dissection cut) {
        int end = 0;
        widest = 0;
        Arrays.fill(listedIn, 0, count, -1);
        for (int b = 0; b < cut.blocks; b++) {
            int left = cut.half[2 * b];
            int right = cut.half[2 * b + 1];
            int most = left < 0 ? 40 * (cut.end[b] - cut.first[b]) : remaining(left) + remaining(right);
            if (end + most > list.length) {
                list = Arrays.copyOf(list, 2 * (end + most));
                into = Arrays.copyOf(into, 2 * (end + most));
            }
            start[b] = end;
            end = left < 0 ? leaf(cut, b, end) : merge(left, right, end);
            start[b + 1] = end;
            int g = start[b];
            while (g < end && list[g] < firstRank[b + 1]) {
                g++;
            }
            gone[b] = g - start[b];
            widest = Math.max(widest, end - start[b]);
        }
    }

    private int remaining(int b) {
        return start[b + 1] - start[b] - gone[b];
    }

    private int leaf(Dissection cut, int b, int from) {
        int end = from;
        for (int i = cut.first[b]; i < cut.end[b]; i++) {
            int t = cut.order[i];
            for (int j = 6 * t; j < 6 * t + 6; j++) {
                end = list(rank[mesh.node[j]], b, end);
            }
            int n = unknowns.extras(t, extra);
            for (int j = 0; j < n; j++) {
                end = list(rank[extra[j]], b, end);
            }
        }
        for (int i = from + 1; i < end; i++) {
            int r = list[i];
            int j = i;
            while (j > from && list[j - 1] > r) {
                list[j] = list[j - 1];
                j--;
            }
            list[j] = r;
        }
        for (int i = from; i < end; i++) {
            place[list[i]] = i - from;
        }
        for (int i = cut.first[b]; i < cut.end[b]; i++) {
            int o = 6 * cut.order[i];
            for (int j = 0; j < 6; j++) {
                nodePlace[6 * i + j] = place[rank[mesh.node[o + j]]];
            }
        }
        return end;
    }

    private int list(int r, int b, int end) {
        if (listedIn[r] == b) {
            return end;
        }
        listedIn[r] = b;
        list[end] = r;
        return end + 1;
    }

    private int merge(int left, int right, int from) {
        int i = start[left] + gone[left];
        int iEnd = start[left + 1];
        int j = start[right] + gone[right];
        int jEnd = start[right + 1];
        int end = from;
        while (i < iEnd || j < jEnd) {
            int ri = i < iEnd ? list[i] : Integer.MAX_VALUE;
            int rj = j < jEnd ? list[j] : Integer.MAX_VALUE;
            list[end] = Math.min(ri, rj);
            if (ri <= rj) {
                into[i++] = end - from;
            }
            if (rj <= ri) {
                into[j++] = end - from;
            }
            end++;
        }
        return end;
    }
}
