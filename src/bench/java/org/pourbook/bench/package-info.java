/** Measures the program beside a bare copy of its bytes and beside a spreadsheet program. */
@NullMarked
package org.pourbook.bench;

import org.jspecify.annotations.NullMarked;
