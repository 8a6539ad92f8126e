/**
 * The contract that every exporter passes, as JUnit 5 tests.
 *
 * <p>Extend {@link org.slatwright.testkit.ExporterContract} and implement its one method. {@link
 * org.slatwright.testkit.SamplePlans} and {@link org.slatwright.testkit.RecordingDestination} serve
 * tests of your own, and {@link org.slatwright.testkit.OutsideTool} and {@link
 * org.slatwright.testkit.Ink} those that have another program read or draw what was written.
 */
package org.slatwright.testkit;
