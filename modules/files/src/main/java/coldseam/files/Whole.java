package coldseam.files;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** A record of one component that is written as that component alone: a list, or a mapping from names. */
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.TYPE})
public @interface Whole {}
