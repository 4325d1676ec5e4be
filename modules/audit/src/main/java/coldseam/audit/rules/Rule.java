package coldseam.audit.rules;

import org.eclipse.collections.api.list.ImmutableList;

/** Something a house must keep. */
public interface Rule {

    /** Unique, in small letters and hyphens: the class's name without its last word. */
    String id();

    /** What must hold, in one sentence. */
    String says();

    /** How to close what it finds, in one sentence. */
    String closing();

    /**
     * How much it weighs among the rules that find fault with one subject: the lowest leads the finding.
     *
     * @return 0 to 99
     */
    int gravity();

    /** What breaks it; empty where nothing does. */
    ImmutableList<Draft> find(Facts facts);
}
