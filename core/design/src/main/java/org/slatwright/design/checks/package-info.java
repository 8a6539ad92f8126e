/**
 * Whether the rack stands, holds and goes together. Each {@link org.slatwright.design.checks.Rule}
 * is one small class with its formula, source and domain of validity in its Javadoc; {@link
 * org.slatwright.design.checks.Checks} lists them all, and a new one is added there and nowhere
 * else.
 */
package org.slatwright.design.checks;
