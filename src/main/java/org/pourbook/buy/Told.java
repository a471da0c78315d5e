package org.pourbook.buy;

/** A caution that goes with an option, and its rule. */
record Told(String says, String rule) {}
