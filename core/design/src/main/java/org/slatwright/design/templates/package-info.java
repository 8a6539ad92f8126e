/**
 * Drawings at full scale, to be laid on the work.
 *
 * <p>Start with {@link org.slatwright.design.templates.FullScale}. One class draws each template as
 * a {@code Draft}, as large as it is, most of them as a {@code Strip}; the room {@code printing}
 * cuts the drafts into tiles where they must be, nests the tiles on the maker's paper and gives
 * every page its check rules.
 */
package org.slatwright.design.templates;
