/** Plan geometry: areas, moved outlines, clipped lines, triangles. */
package org.pourbook.outline;
