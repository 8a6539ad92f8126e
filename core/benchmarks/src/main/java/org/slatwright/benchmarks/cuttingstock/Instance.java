package org.slatwright.benchmarks.cuttingstock;

import java.util.OptionalLong;
import org.slatwright.design.cuttingstock.CuttingProblem;

/**
 * A problem to be measured on.
 *
 * @param name as its file names it
 * @param problem what is to be cut
 * @param optimum the least cost, where it is known
 */
public record Instance(String name, CuttingProblem problem, OptionalLong optimum) {}
