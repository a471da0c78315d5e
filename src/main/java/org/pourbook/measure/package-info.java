/** Exact lengths, units, trade sizes and money. */
package org.pourbook.measure;
