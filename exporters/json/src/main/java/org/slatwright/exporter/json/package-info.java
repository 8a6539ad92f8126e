/**
 * The whole plan as JSON, and the JSON Schema that describes it.
 *
 * <p>Lengths are decimal millimetres with every digit, at most six: exact, since a nanometre is the
 * finest there is, and readable by anyone. Whole nanometres would be as exact and say nothing to a
 * person. The drawing sheets are left out: they are paper, and everything on them that is a fact of
 * the rack stands here exactly.
 *
 * <p>{@link org.slatwright.exporter.json.PlanJson} says what stands where, {@link
 * org.slatwright.exporter.json.JsonWriter} alone how it is spelt.
 */
package org.slatwright.exporter.json;
