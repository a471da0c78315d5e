/** The rules themselves: static functions, one class a rule or family, each with its source. */
package org.pourbook.takeoff.rule;
