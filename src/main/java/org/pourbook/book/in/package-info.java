/** Workbooks and CSV files read into batches, with every problem found on the way. */
@NullMarked
package org.pourbook.book.in;

import org.jspecify.annotations.NullMarked;
