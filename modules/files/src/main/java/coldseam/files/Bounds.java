package coldseam.files;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** The range of a number or quantity, each bound as a file would write it; an empty one does not bind. */
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.RECORD_COMPONENT})
public @interface Bounds {
    /** Must be greater. */
    String above() default "";

    /** Must not be less. */
    String atLeast() default "";

    /** Must not be greater. */
    String atMost() default "";

    /** Must be less. */
    String below() default "";

    /** What is usual, as a message says it beside the range; empty where that would help nobody. */
    String usual() default "";
}
