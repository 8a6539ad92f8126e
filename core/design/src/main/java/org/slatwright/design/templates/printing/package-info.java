/**
 * Full-scale drafts on the maker's paper.
 *
 * <p>Start with {@link org.slatwright.design.templates.printing.Printing}, which is given {@link
 * org.slatwright.design.templates.printing.Draft}s as large as they are.
 */
package org.slatwright.design.templates.printing;
