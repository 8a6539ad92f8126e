/**
 * How good and how quick the cutting plans are, beside first fit decreasing and a general-purpose
 * solver: start at {@link org.slatwright.benchmarks.cuttingstock.CuttingBenchmark}.
 */
package org.slatwright.benchmarks.cuttingstock;
