/**
 * The command line. Read {@link org.slatwright.cli.Slatwright} first, then the commands: each is
 * thin, and hands over to the design, the {@linkplain org.slatwright.cli.plugin exporters} and the
 * {@linkplain org.slatwright.cli.output output folder}.
 */
package org.slatwright.cli;
