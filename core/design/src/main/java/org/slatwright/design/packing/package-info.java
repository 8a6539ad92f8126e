/**
 * Lays flat shapes on as few sheets as may be, clear of one another. A shelf of its own: knows
 * shapes and sheets, not what they are for.
 *
 * <p>Start with {@link org.slatwright.design.packing.Packing}.
 */
package org.slatwright.design.packing;
