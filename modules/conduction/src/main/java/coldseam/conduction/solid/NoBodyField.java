package coldseam.conduction.solid;

import java.io.DataOutputStream;

/** The field of a solution that was asked for its heat alone: nobody draws it, and it would take most of what a corner keeps. */
final class NoBodyField extends LaterBodyField {

    @Override
    BodyField field() {
        throw new IllegalStateException("a body that is asked for its heat alone keeps no temperatures");
    }

    @Override
    public void write(DataOutputStream to) {}
}
