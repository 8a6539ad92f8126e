/**
 * What to buy and how every stock length is cut. Start at {@link
 * org.slatwright.design.cutting.Cutting}.
 */
package org.slatwright.design.cutting;
