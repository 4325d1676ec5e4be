package coldseam.files;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** What messages call a record of this type, with its article, such as "a layer". */
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.TYPE})
public @interface Noun {
    /** See the type. */
    String value();
}
