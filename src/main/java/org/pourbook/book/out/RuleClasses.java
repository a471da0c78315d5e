package org.pourbook.book.out;

import java.util.List;

/** The classes whose methods are rules; a test holds the list complete. */
final class RuleClasses {

  static final List<Class<?>> ALL = List.of();

  private RuleClasses() {}
}
