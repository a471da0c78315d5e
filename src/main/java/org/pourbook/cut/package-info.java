/** Demand and stock turned into a cut plan with its lower bound. */
package org.pourbook.cut;
