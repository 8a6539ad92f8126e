/**
 * Everything that is known about one rack: the single value that an exporter sees.
 *
 * <p>Start with {@link org.slatwright.api.plan.Plan}. It is complete: an exporter spells what
 * stands here and never computes a dimension, places a view or decides a cut.
 */
package org.slatwright.api.plan;
