package org.slatwright.api.plan;

import org.slatwright.api.model.Part;

/**
 * One line of the cut list.
 *
 * @param part what to cut, how many, and its exact size
 * @param timber what to cut it from, in words: {@code norway spruce, frame stock 44 × 44 mm}
 * @param note what to mind at the saw, or empty
 */
public record CutLine(Part part, String timber, String note) {}
