package org.slatwright.cli.plugin;

/**
 * Why an exporter is left out.
 *
 * @param origin the jar, as the maker would look for it, or {@code built in}
 * @param reason in one line
 */
public record Complaint(String origin, String reason) {}
