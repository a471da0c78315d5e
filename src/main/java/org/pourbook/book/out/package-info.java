/** Workbooks and CSV folders written: a sheet is a list of typed columns over a list of records. */
@NullMarked
package org.pourbook.book.out;

import org.jspecify.annotations.NullMarked;
