/**
 * The formulas that the checks rest on, each with its source and its domain of validity. Pure
 * arithmetic in {@code double}: N, mm, MPa, kg, radians; no rack and no part is known here.
 */
package org.slatwright.design.mechanics;
