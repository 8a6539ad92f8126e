package org.slatwright.api.export;

import java.io.IOException;
import java.util.List;
import org.slatwright.api.plan.Plan;

/**
 * Writes a plan in one format.
 *
 * <p>An exporter <em>must</em>
 *
 * <ul>
 *   <li>have a public constructor without parameters that does next to nothing: every exporter on
 *       the machine is constructed to be listed, so a format's library is first touched in {@link
 *       #export};
 *   <li>be named in {@code META-INF/services/org.slatwright.api.export.Exporter} of its jar, whose
 *       manifest says {@code Slatwright-Api: 1};
 *   <li>write through the {@link Destination} alone, and the same bytes for the same plan and
 *       options: no clock, no random ids, no hash order, no locale;
 *   <li>take any plan: odd titles, no jig, no sheets;
 *   <li>be safe to call from several threads at once.
 * </ul>
 *
 * <p>An exporter <em>should</em> write everything of the plan that its format can carry, and name
 * its files as the plan does.
 */
public interface Exporter {

  /**
   * The version of this api that a plugin is built for, given in its manifest as {@code
   * Slatwright-Api}. It changes only when existing plugins would break.
   */
  int API_VERSION = 1;

  /** The name it is asked for by: lower-case letters and digits, starting with a letter. */
  String format();

  /** What it writes, in one line. */
  String description();

  /** The options it understands; none unless overridden. */
  default List<ExportOption> options() {
    return List.of();
  }

  /**
   * Writes {@code plan}.
   *
   * @param plan what to write
   * @param options values for {@link #options()}, valid and complete
   * @param destination where the files go
   * @throws ExportException when the plan cannot be said in this format, or a file that the
   *     exporter brings is missing; the message is shown to the maker
   * @throws IOException when a file cannot be written; passed on from the destination
   */
  void export(Plan plan, OptionValues options, Destination destination)
      throws ExportException, IOException;
}
