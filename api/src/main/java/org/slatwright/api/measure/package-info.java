/**
 * Exact lengths, and the one place that spells and reads them.
 *
 * <p>Start with {@link org.slatwright.api.measure.Length}; {@link
 * org.slatwright.api.measure.LengthFormat} writes one for a person, {@link
 * org.slatwright.api.measure.LengthGrammar} reads what a person wrote.
 */
package org.slatwright.api.measure;
