package coldseam.envelope;

/** The kinds of thing that go through a surface's insulation at a point. */
public enum PointKind implements BridgeKind {
    FASTENER("fastener through boards"),
    ANCHOR_BOLT("anchor bolt"),
    STEEL_POST("steel post"),
    TIMBER_POST("timber post"),
    COLUMN("column"),
    BRACKET("bracket"),
    CLADDING_BRACKET("cladding bracket"),
    PIPE("pipe"),
    DUCT("duct");

    private final String label;

    PointKind(String label) {
        this.label = label;
    }

    @Override
    public String label() {
        return label;
    }
}
