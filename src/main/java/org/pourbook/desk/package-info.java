/** What each desk asks for, as a sentence of steps. */
package org.pourbook.desk;
