/**
 * What is known of wood: the species with their numbers and sources, the strength classes that
 * ungraded stock is reckoned as, and the climates that a rack stands in. Begin with {@link
 * org.slatwright.design.wood.Timber}.
 */
package org.slatwright.design.wood;
