package org.pourbook.takeoff;

import java.lang.annotation.ElementType;
import java.lang.annotation.Repeatable;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.pourbook.problem.Standing;

/** Which rule a method is, where it comes from, and how sure that is; the Rules sheet reads it. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.METHOD)
@Repeatable(Source.List.class)
public @interface Source {

  /** Returns the rule's id, e.g. {@code CON-6}. */
  String rule();

  /** Returns the rule in one sentence, as the Rules sheet prints it. */
  String says();

  /** Returns its figures, e.g. {@code 10 % to 200 yd3}; empty when it has none. */
  String value() default "";

  /** Returns the key of the document in {@code sources.md}; empty for common practice. */
  String key() default "";

  /** Returns the clause, table or page. */
  String at() default "";

  Standing standing();

  /** Several sources of one method. */
  @Retention(RetentionPolicy.RUNTIME)
  @Target(ElementType.METHOD)
  @interface List {
    Source[] value();
  }
}
