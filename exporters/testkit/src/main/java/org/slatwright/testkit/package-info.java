/**
 * The contract that every exporter passes, as JUnit 5 tests.
 *
 * <p>Extend {@link org.slatwright.testkit.ExporterContract} and implement its one method. {@link
 * org.slatwright.testkit.SamplePlans} and {@link org.slatwright.testkit.RecordingDestination} serve
 * tests of your own.
 */
package org.slatwright.testkit;
