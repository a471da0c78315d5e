/** The command line: arguments, exit status and the two output streams. */
@NullMarked
package org.pourbook.cli;

import org.jspecify.annotations.NullMarked;
