/** What the builder wrote, checked, with every default filled in. */
package org.pourbook.job;
