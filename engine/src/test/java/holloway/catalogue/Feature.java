package holloway.catalogue;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * The feature of a house, or of what is wanted in it, that a test of the catalogue shows. On a
 * class: of all its tests that name none themselves.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.TYPE, ElementType.METHOD})
@interface Feature {
  String value();
}
