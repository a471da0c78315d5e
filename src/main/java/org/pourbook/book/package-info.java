/** Workbooks and CSV files: what their sheets hold, read and written. */
@NullMarked
package org.pourbook.book;

import org.jspecify.annotations.NullMarked;
