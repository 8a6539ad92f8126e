package org.slatwright.design.checks;

import java.util.Optional;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.plan.Jig;
import org.slatwright.api.plan.Quantities;
import org.slatwright.design.sizing.Rack;

/**
 * What is checked.
 *
 * @param jig empty when none can be made
 */
public record Design(Rack rack, Assembly assembly, Quantities quantities, Optional<Jig> jig) {}
