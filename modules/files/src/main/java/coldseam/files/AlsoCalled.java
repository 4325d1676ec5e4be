package coldseam.files;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * What else the trade calls a value of a closed list: never read for it, since some mean another thing by it, but asked after where
 * it is written. In lower case, with spaces.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.FIELD})
public @interface AlsoCalled {
    String[] value();
}
