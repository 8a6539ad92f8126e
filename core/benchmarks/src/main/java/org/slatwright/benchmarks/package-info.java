/**
 * How long it takes to plan a rack and to write a plan, measured with JMH.
 *
 * <p>{@code PlanBenchmark}, {@code ExportBenchmark} and {@code BookBenchmark} are what is measured,
 * {@code BenchmarkRack} the racks that they are measured on.
 */
package org.slatwright.benchmarks;
