/**
 * How long it takes to plan a rack and to write a plan, measured with JMH.
 *
 * <p>{@code PlanBenchmark} and {@code ExportBenchmark} are what is measured, {@code BenchmarkRack}
 * the racks that both are measured on.
 */
package org.slatwright.benchmarks;
