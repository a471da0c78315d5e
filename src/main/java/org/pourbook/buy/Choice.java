package org.pourbook.buy;

/** The option taken for a lot. */
record Choice(Lot lot, Option option) {}
