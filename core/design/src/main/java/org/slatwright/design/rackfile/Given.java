package org.slatwright.design.rackfile;

/**
 * A value that the maker gave, and where.
 *
 * @param value what it means
 * @param key its path, as {@code --set} takes it: {@code rack.openings[1].clear}
 * @param place where the value stands
 */
public record Given<T>(T value, String key, Place place) {}
