/**
 * Files that appear whole or not at all.
 *
 * <p>{@link org.slatwright.cli.output.OutputFolder} takes everything a command writes into a hidden
 * folder beside its destination, and moves it into place only when all of it is there and nothing
 * stands in the way.
 */
package org.slatwright.cli.output;
