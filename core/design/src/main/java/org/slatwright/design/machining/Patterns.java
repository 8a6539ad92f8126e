package org.slatwright.design.machining;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.measure.Unit;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Jig;
import org.slatwright.api.plan.Pattern;
import org.slatwright.design.sizing.Rack;

/** Draws the patterns of a rack. */
public final class Patterns {

  private Patterns() {}

  /**
   * One pattern for each plate of the jig ({@code jig/J1-guide-plate}), then one for each sheet
   * that the plates are cut from ({@code jig/sheet-1}) and, where the cutter is known, its path
   * through that sheet ({@code jig/sheet-1-path}), then one for each part that is drilled ({@code
   * parts/U-upright}).
   *
   * @param shop what the plates are cut from, and with
   * @param units of the rack file
   * @param jig when there is one
   */
  public static MadePatterns of(Rack.Shop shop, Unit units, Assembly assembly, Optional<Jig> jig) {
    LengthFormat lengths = new LengthFormat(units);
    MadePatterns sheets =
        jig.map(made -> sheets(shop, units, made))
            .orElseGet(() -> new MadePatterns(List.of(), List.of()));
    Stream<Pattern> plates =
        jig.stream()
            .flatMap(made -> made.plates().stream())
            .map(plate -> PlatePattern.of(plate, lengths));
    Stream<Pattern> parts =
        assembly.parts().stream()
            .filter(part -> !part.holes().isEmpty())
            .map(part -> new PartPattern(part, lengths).draw());
    return new MadePatterns(
        Stream.of(plates, sheets.patterns().stream(), parts).flatMap(all -> all).toList(),
        sheets.findings());
  }

  private static MadePatterns sheets(Rack.Shop shop, Unit units, Jig jig) {
    Nest nest = Nest.of(shop, units);
    Optional<SheetPatterns> drawn =
        nest.sheets(jig)
            .map(sheets -> new SheetPatterns(nest.sheet(), new LengthFormat(units), sheets));
    Stream<Pattern> nominal = drawn.stream().flatMap(sheets -> sheets.nominal().stream());
    Stream<Pattern> paths =
        drawn.stream()
            .flatMap(
                sheets -> shop.cutter().stream().flatMap(cutter -> sheets.path(cutter).stream()));
    Stream<Finding> tooThick =
        shop.cutter().stream()
            .flatMap(cutter -> new CutterLimits(new CutterPath(cutter), units).on(jig).stream());
    return new MadePatterns(
        Stream.concat(nominal, paths).toList(),
        Stream.concat(new SheetLimits(nest, units).on(jig).stream(), tooThick).toList());
  }

  /** {@code folder/J1-guide-plate}: the mark as it is, the name in words a file name can hold. */
  static String name(String folder, String mark, String name) {
    String words = name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    return folder + "/" + mark + "-" + words;
  }
}
