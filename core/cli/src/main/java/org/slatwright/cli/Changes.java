package org.slatwright.cli;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.slatwright.design.rackfile.Place;
import org.slatwright.design.rackfile.RackFileException;
import org.slatwright.design.rackfile.RackFileReader;

/** Says what each {@code --set} takes the place of. */
final class Changes {

  private static final int LONGEST_LINE = 60;

  private final Map<String, Place> keys;
  private final List<String> lines;

  /** For settings of one rack file. */
  Changes(byte[] bytes, String source, List<String> lines) {
    this.keys = keys(bytes, source);
    this.lines = List.copyOf(lines);
  }

  /** {@code note: rack.upright=1400 instead of trays.yaml:10: upright: 1500}. */
  String note(String setting) {
    String key = setting.replaceFirst("[\\[=].*", "").strip();
    Optional<Place> before = Optional.ofNullable(keys.get(key));
    String instead =
        before
            .filter(place -> place.line() >= 1 && place.line() <= lines.size())
            .map(place -> " instead of " + place.source() + ":" + place.line() + ": " + line(place))
            .orElse(", which the file does not give");
    return "note: " + setting + instead;
  }

  private String line(Place place) {
    String line = lines.get(place.line() - 1).strip();
    return line.length() <= LONGEST_LINE ? line : line.substring(0, LONGEST_LINE) + "…";
  }

  /** The keys of the file alone; none when it is only right with the settings. */
  private static Map<String, Place> keys(byte[] bytes, String source) {
    try {
      return RackFileReader.read(bytes, source, List.of()).keys();
    } catch (RackFileException e) {
      return Map.of();
    }
  }
}
