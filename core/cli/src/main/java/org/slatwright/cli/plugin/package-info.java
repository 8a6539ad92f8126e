/**
 * Finds exporters: those that come with the command line, and those in folders of plugin jars.
 *
 * <p>Start with {@link org.slatwright.cli.plugin.Catalogue}. A jar that is broken costs one {@link
 * org.slatwright.cli.plugin.Complaint} and nothing else.
 */
package org.slatwright.cli.plugin;
