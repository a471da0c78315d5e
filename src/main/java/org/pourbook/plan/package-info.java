/** Drawings of jobs, as lines and words on a page; whoever writes them knows the file format. */
package org.pourbook.plan;
