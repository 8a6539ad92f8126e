package org.slatwright.design.machining;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.plan.Jig;
import org.slatwright.api.plan.Pattern;

/** Draws the patterns of a rack. */
public final class Patterns {

  private Patterns() {}

  /**
   * One pattern for each plate of the jig ({@code jig/J1-guide-plate}), then one for each part that
   * is drilled ({@code parts/U-upright}).
   *
   * @param jig when there is one
   * @param lengths how labels spell a length
   */
  public static List<Pattern> of(Assembly assembly, Optional<Jig> jig, LengthFormat lengths) {
    Stream<Pattern> plates =
        jig.stream()
            .flatMap(made -> made.plates().stream())
            .map(plate -> PlatePattern.of(plate, lengths));
    Stream<Pattern> parts =
        assembly.parts().stream()
            .filter(part -> !part.holes().isEmpty())
            .map(part -> new PartPattern(part, lengths).draw());
    return Stream.concat(plates, parts).toList();
  }

  /** {@code folder/J1-guide-plate}: the mark as it is, the name in words a file name can hold. */
  static String name(String folder, String mark, String name) {
    String words = name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    return folder + "/" + mark + "-" + words;
  }
}
