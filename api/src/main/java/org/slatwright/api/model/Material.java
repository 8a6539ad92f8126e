package org.slatwright.api.model;

/**
 * What a part is made of.
 *
 * @param stock which of the rack file's timbers it is cut from
 * @param species such as {@code norway spruce}
 */
public record Material(Stock stock, String species) {}
