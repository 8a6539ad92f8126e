/**
 * From a rack file to a plan. {@link org.slatwright.design.Planner} leads through the house, one
 * direction: rackfile, sizing, framing, then jig, machining and drafting.
 */
package org.slatwright.design;
