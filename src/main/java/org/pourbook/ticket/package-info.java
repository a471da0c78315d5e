/** Delivery tickets and invoices matched with what was ordered. */
package org.pourbook.ticket;
