package org.slatwright.cli;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.slatwright.design.rackfile.Place;
import org.slatwright.design.rackfile.RackFileException;
import org.slatwright.design.rackfile.RackFileReader;

/** Says what each {@code --set} takes the place of. */
final class Changes {

  private static final int LONGEST_LINE = 60;

  /** Of the file alone; unknown when it is only right with the settings. */
  private final Optional<Map<String, Place>> keys;

  private final List<String> lines;

  /** For settings of one rack file. */
  Changes(byte[] bytes, String source, List<String> lines) {
    this.keys = keys(bytes, source);
    this.lines = List.copyOf(lines);
  }

  /** {@code rack.upright=1400 instead of trays.yaml:10: upright: 1500}. */
  String note(String setting) {
    return setting + before(setting.substring(0, setting.indexOf('=')).strip());
  }

  /** What a value for {@code path} takes the place of: {@code instead of trays.yaml:10: …}. */
  String before(String path) {
    return keys.map(known -> before(path, known)).orElse("");
  }

  private String before(String path, Map<String, Place> known) {
    int entry = path.indexOf('[');
    String key = entry < 0 ? path : path.substring(0, entry);
    Place place = known.get(key);
    if (place == null) {
      return ", which the file does not give";
    }
    // Where in a list its entries stand is not known, so the list is what is named.
    return (entry < 0 ? " instead of " : " within ") + value(key, place);
  }

  /** The line, if the key is on it: the place is the value's, which may begin below its key. */
  private String value(String key, Place place) {
    String line = line(place);
    String name = Pattern.quote(key.substring(key.lastIndexOf('.') + 1));
    boolean shown = Pattern.compile("(?<![\\w-])" + name + "[\"']?\\s*:").matcher(line).find();
    return shown ? at(place) + ": " + line : "what begins at " + at(place);
  }

  private static String at(Place place) {
    return place.source() + ":" + place.line();
  }

  private String line(Place place) {
    boolean there = place.line() >= 1 && place.line() <= lines.size();
    String line = there ? lines.get(place.line() - 1).strip() : "";
    return line.length() <= LONGEST_LINE ? line : line.substring(0, LONGEST_LINE) + "…";
  }

  private static Optional<Map<String, Place>> keys(byte[] bytes, String source) {
    try {
      return Optional.of(RackFileReader.read(bytes, source, List.of()).keys());
    } catch (RackFileException e) {
      return Optional.empty();
    }
  }
}
