/**
 * What to buy and how every stock length is cut. Start at {@link
 * org.slatwright.design.cutting.Cutting}: each timber's {@link org.slatwright.design.cutting.Need}
 * is laid on {@link org.slatwright.design.cutting.Blank}s, in the {@link
 * org.slatwright.design.cutting.Lane}s that the saw can use; spare pieces take what is over; then
 * boards get their marks.
 */
package org.slatwright.design.cutting;
