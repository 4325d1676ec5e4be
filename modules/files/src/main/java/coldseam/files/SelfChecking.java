package coldseam.files;

/** A file record that checks itself once it is bound, where one check may find several faults. */
public interface SelfChecking {

    /** Adds a fault for each thing that is wrong. */
    void check(Faults faults);
}
