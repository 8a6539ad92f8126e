package org.slatwright.cli;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.plan.Plan;
import org.slatwright.design.Planner;
import org.slatwright.design.rackfile.RackFile;
import org.slatwright.design.rackfile.RackFileException;
import org.slatwright.design.rackfile.RackFileReader;

/** The text of a rack file, and the settings of {@code --set} that change it. */
final class RackText {

  private final byte[] bytes;
  private final String source;
  private final List<String> settings;
  private final List<String> lines;

  /**
   * Of one file.
   *
   * @param source its name, to show in front of complaints
   */
  RackText(byte[] bytes, String source, List<String> settings) {
    this.bytes = bytes.clone();
    this.source = source;
    this.settings = List.copyOf(settings);
    this.lines = new String(bytes, StandardCharsets.UTF_8).lines().toList();
  }

  /**
   * What it says.
   *
   * @param more settings, after those of {@code --set}
   */
  RackFile read(List<String> more) throws RackFileException {
    List<String> all = new ArrayList<>(settings);
    all.addAll(more);
    return RackFileReader.read(bytes, source, all);
  }

  /** The plan of it. */
  Plan plan(List<String> more) throws RackFileException {
    return Planner.plan(read(more));
  }

  /** What each setting of {@code --set} takes the place of. */
  List<String> notes() {
    Changes changes = changes();
    return settings.stream().map(changes::note).toList();
  }

  /** What settings take the place of. */
  Changes changes() {
    return new Changes(bytes, source, lines);
  }

  /** Why it could not be read or planned, ready to print. */
  String complaint(RackFileException wrong) {
    return new ProblemText(source, lines).of(wrong.problems());
  }
}
