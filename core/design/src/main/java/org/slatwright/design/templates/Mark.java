package org.slatwright.design.templates;

import org.slatwright.api.measure.Length;

/**
 * A height on a face and what is said of it.
 *
 * @param at from the lower end of the face
 */
record Mark(Length at, String text) {}
