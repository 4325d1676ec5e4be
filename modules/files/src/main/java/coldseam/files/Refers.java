package coldseam.files;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** A name, or a list of names, that must be defined: by {@link Defines} of the same kind, or as the binder was told. */
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.RECORD_COMPONENT})
public @interface Refers {
    /** The kind of name. */
    String value();

    /** A word that may stand instead of a name; empty where there is none. */
    String or() default "";
}
