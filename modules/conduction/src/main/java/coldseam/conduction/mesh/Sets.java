package coldseam.conduction.mesh;

/** Disjoint sets of small integers. */
final class Sets {

    private final int[] parent;

    Sets(int count) {
        parent = new int[count];
        for (int i = 0; i < count; i++) {
            parent[i] = i;
        }
    }

    int root(int a) {
        int r = a;
        while (parent[r] != r) {
            r = parent[r];
        }
        int i = a;
        while (parent[i] != r) {
            int next = parent[i];
            parent[i] = r;
            i = next;
        }
        return r;
    }

    void join(int a, int b) {
        parent[root(a)] = root(b);
    }
}
