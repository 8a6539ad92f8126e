/**
 * Closes the dimension chains: a {@link org.slatwright.design.rackfile.RackFile} in, a {@link
 * org.slatwright.design.sizing.Rack} in which nothing is unknown out.
 */
package org.slatwright.design.sizing;
