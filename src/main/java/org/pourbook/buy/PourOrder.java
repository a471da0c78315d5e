package org.pourbook.buy;

/** The concrete ordered for one pour and mix, and its loads. */
record PourOrder(Portion portion, LoadPlan plan) {}
