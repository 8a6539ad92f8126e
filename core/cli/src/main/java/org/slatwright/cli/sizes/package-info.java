/**
 * Tables of sizes, read row by row, and the threads that work on the rows. Read {@link
 * org.slatwright.cli.sizes.SizesTable} first.
 */
package org.slatwright.cli.sizes;
