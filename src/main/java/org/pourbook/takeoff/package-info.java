/** A job turned into quantities, each with its working and its rule. */
package org.pourbook.takeoff;
