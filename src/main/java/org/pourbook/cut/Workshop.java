package org.pourbook.cut;

/** What every stage of one search shares. */
record Workshop(Knapsack knapsack, Effort effort, Effort.Steps steps) {}
