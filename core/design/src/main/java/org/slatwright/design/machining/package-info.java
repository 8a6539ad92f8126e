/**
 * Real-size patterns for a router, a laser or a plotter: what is cut, drilled or engraved.
 *
 * <p>Start with {@link org.slatwright.design.machining.Patterns}. Geometry is nominal, plate by
 * plate and nested on sheets; where the cutter is known, the sheets are drawn again as the path
 * that its middle takes.
 */
package org.slatwright.design.machining;
