/**
 * The order of work: what is done after what, how long it takes, and the check that ends each step.
 *
 * <p>Start with {@link org.slatwright.design.steps.BuildOrder}. Each {@code …Tasks} class tells the
 * tasks of one stage and names those that must be done before; {@code Schedule} puts them in an
 * order for one pair of hands, so that nobody waits for glue while there is something left to do.
 *
 * <p>Times are rough and common practice, no source; waiting times say where they come from in
 * {@code Times}.
 */
package org.slatwright.design.steps;
