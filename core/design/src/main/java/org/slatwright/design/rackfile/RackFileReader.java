package org.slatwright.design.rackfile;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads a rack file, format 1. */
public final class RackFileReader {

  /** The most bytes that a rack file may have: 1 MiB. */
  public static final int MOST_BYTES = 1 << 20;

  private RackFileReader() {}

  /**
   * The rack file that {@code bytes} and {@code settings} say.
   *
   * @param bytes UTF-8 text, YAML 1.2 (so JSON too)
   * @param source the name of the file, to show in front of each complaint
   * @param settings of {@code --set}, such as {@code rack.openings[1].clear=even}; each takes the
   *     place of what the file says, in their order; entries of a list count from 0; {@code
   *     rack.upright=} leaves a key out
   * @throws RackFileException with all that is wrong, in the order of the file
   */
  public static RackFile read(byte[] bytes, String source, List<String> settings)
      throws RackFileException {
    Complaints complaints = complaints(settings);
    return read(tree(bytes, source, complaints), settings, complaints);
  }

  /** The rack file of a text already taken apart. */
  static RackFile read(Node.Mapping tree, List<String> settings) throws RackFileException {
    return read(tree, settings, complaints(settings));
  }

  private static Complaints complaints(List<String> settings) {
    return new Complaints(settings.stream().map(Setting::source).toList());
  }

  private static RackFile read(Node.Mapping tree, List<String> settings, Complaints complaints)
      throws RackFileException {
    Node.Mapping file = adapted(tree, settings, complaints);
    RackFile rackFile = new FormatOne(new Reading(complaints)).rackFile(file, keys(file));
    complaints.throwIfAny();
    return rackFile;
  }

  private static Node.Mapping tree(byte[] bytes, String source, Complaints complaints)
      throws RackFileException {
    Place start = new Place(source, 1, 1);
    Optional<Node> root =
        YamlTree.ofFile(SourceText.decode(bytes, source, complaints), source, complaints);
    if (root.isEmpty() || root.get() instanceof Node.Scalar scalar && scalar.isEmpty()) {
      throw complaints.fatal(start, "the file is empty; \"slatwright start\" writes one to begin");
    }
    if (root.get() instanceof Node.Mapping mapping) {
      return mapping;
    }
    throw complaints.fatal(
        root.get().place(), "a rack file is made of keys and values; begin with slatwright: 1");
  }

  private static Node.Mapping adapted(
      Node.Mapping file, List<String> settings, Complaints complaints) {
    Node.Mapping adapted = file;
    for (String text : settings) {
      Optional<Setting> setting = Setting.of(text, complaints);
      if (setting.isPresent()) {
        adapted = setting.get().appliedTo(adapted, complaints);
      }
    }
    return adapted;
  }

  private static Map<String, Place> keys(Node.Mapping file) {
    Map<String, Place> keys = new LinkedHashMap<>();
    addKeys(file, "", keys);
    return Collections.unmodifiableMap(keys);
  }

  private static void addKeys(Node.Mapping group, String before, Map<String, Place> keys) {
    for (Node.Member member : group.members()) {
      String key = before + member.key();
      keys.put(key, member.value().place());
      if (member.value() instanceof Node.Mapping inner) {
        addKeys(inner, key + ".", keys);
      }
    }
  }
}
