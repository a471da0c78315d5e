/** Values for what is wrong with an input: where, what was found, what would be right. */
package org.pourbook.problem;
