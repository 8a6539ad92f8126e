/**
 * Real-size patterns for a router, a laser or a plotter: what is cut or drilled from one flat face.
 *
 * <p>Start with {@link org.slatwright.design.machining.Patterns}. Geometry is nominal: whoever cuts
 * allows for the cutter.
 */
package org.slatwright.design.machining;
