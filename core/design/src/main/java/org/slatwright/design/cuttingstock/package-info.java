/**
 * The one-dimensional cutting stock problem, in whole numbers and without a word of racks: start at
 * {@link org.slatwright.design.cuttingstock.CuttingStock}.
 */
package org.slatwright.design.cuttingstock;
