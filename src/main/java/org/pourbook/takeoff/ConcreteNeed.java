package org.pourbook.takeoff;

/**
 * Concrete of one pour and mix (CON-7), before it is rounded to a supplier's order step.
 *
 * @param planM3 plan volume, without pump loss [m3]
 * @param allowedM3 plan volume with each section's allowance, and the pump loss [m3]
 * @param pumpLossM3 the part of it that stays in the pump [m3]
 * @param bagged whether the pour is small enough for bags (CON-9)
 */
public record ConcreteNeed(
    int pour, String mix, double planM3, double allowedM3, double pumpLossM3, boolean bagged) {}
