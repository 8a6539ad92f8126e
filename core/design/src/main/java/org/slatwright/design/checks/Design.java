package org.slatwright.design.checks;

import java.util.Optional;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.plan.Jig;
import org.slatwright.api.plan.Quantities;
import org.slatwright.design.sizing.Rack;

/**
 * What is checked.
 *
 * @param jig that holes are drilled with, from offcuts where none can be made from sheet; empty
 *     when there is neither
 */
public record Design(Rack rack, Assembly assembly, Quantities quantities, Optional<Jig> jig) {}
