/**
 * Full-scale drafts on the maker's paper.
 *
 * <p>Start with {@link org.slatwright.design.templates.printing.Printing}, which is given {@link
 * org.slatwright.design.templates.printing.Draft}s as large as they are. {@code Cuts} decides where
 * a draft is cut and {@code Grid} what each tile shows, {@code Clip} shows it exactly that far, and
 * {@code Seam} with {@code SeamMarks} says how tiles are joined. {@code Nesting} lays tiles and the
 * cards on how to use them on pages, {@code PageLayout} tells what else is where, and {@code
 * PrintedPages} draws it all.
 */
package org.slatwright.design.templates.printing;
