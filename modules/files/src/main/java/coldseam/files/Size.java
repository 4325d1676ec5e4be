package coldseam.files;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** Least and most items of a list or mapping. */
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.RECORD_COMPONENT})
public @interface Size {
    /** See the type. */
    int min() default 0;

    /** Most items. */
    int max() default Integer.MAX_VALUE;

    /** What to do where there are fewer. */
    String fewer() default "add some";
}
