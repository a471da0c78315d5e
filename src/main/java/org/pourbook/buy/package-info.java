/** Quantities turned into priced lines and orders. */
package org.pourbook.buy;
