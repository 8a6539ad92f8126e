/**
 * The rack file, format 1: read, checked key by key, and handed on as it stands.
 *
 * <p>{@link org.slatwright.design.rackfile.RackFile} is what was read; whatever the maker left out
 * is empty here and is solved in {@code sizing}. Every complaint names its {@link
 * org.slatwright.design.rackfile.Place}.
 *
 * <p>Begin with {@link org.slatwright.design.rackfile.RackFileReader}: bytes become text ({@code
 * SourceText}), text becomes a tree of nodes with their places ({@code YamlTree}), each {@code
 * --set} changes the tree ({@code Setting}), and the tree becomes values ({@code FormatOne} and a
 * class for each group of keys). A new key is asked for in its group's class, and described in
 * {@code rack-file.schema.json} and {@code starter.yaml}; tests hold the three together.
 */
package org.slatwright.design.rackfile;
