/**
 * The rack file, format 1: read, checked key by key, and handed on as it stands.
 *
 * <p>{@link org.slatwright.design.rackfile.RackFile} is what was read; whatever the maker left out
 * is empty here and is solved in {@code sizing}. Every complaint names its {@link
 * org.slatwright.design.rackfile.Place}.
 */
package org.slatwright.design.rackfile;
