package org.slatwright.design.wood;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * What makers call the species. A name of the trade that covers several is taken as the one most
 * sold: spruce, pine, oak and beech as the European ones, maple and the others as the American.
 * Common practice, no source.
 */
final class SpeciesNames {

  private static final Map<String, List<String>> TRADE_NAMES =
      Map.ofEntries(
          Map.entry("norway spruce", List.of("spruce", "whitewood", "european spruce", "deal")),
          Map.entry("scots pine", List.of("pine", "redwood", "european redwood", "red deal")),
          Map.entry("eastern white pine", List.of("white pine")),
          Map.entry(
              "loblolly pine",
              List.of("southern yellow pine", "yellow pine", "southern pine", "syp")),
          Map.entry("sitka spruce", List.of("sitka")),
          Map.entry("white spruce", List.of("spf", "spruce-pine-fir", "canadian spruce")),
          Map.entry("douglas-fir", List.of("oregon pine", "douglas")),
          Map.entry("white fir", List.of("fir")),
          Map.entry("western larch", List.of("larch")),
          Map.entry("western hemlock", List.of("hemlock", "hem-fir")),
          Map.entry("western redcedar", List.of("cedar", "red cedar")),
          Map.entry("yellow-poplar", List.of("poplar", "tulipwood")),
          Map.entry("northern red oak", List.of("red oak")),
          Map.entry("european oak", List.of("oak", "english oak")),
          Map.entry("sugar maple", List.of("maple", "hard maple")),
          Map.entry("white ash", List.of("ash")),
          Map.entry("black walnut", List.of("walnut")),
          Map.entry("black cherry", List.of("cherry")),
          Map.entry("european beech", List.of("beech")),
          Map.entry("yellow birch", List.of("birch")));

  private static final Map<String, Species> BY_NAME = byName();

  private SpeciesNames() {}

  /** Case, blanks and hyphens do not count. */
  static Optional<Species> find(String name) {
    return Optional.ofNullable(BY_NAME.get(plain(name)));
  }

  /** In the order of the table, each species before its names of the trade. */
  static List<String> all() {
    return SpeciesTable.ALL.stream().flatMap(species -> names(species).stream()).toList();
  }

  private static List<String> names(Species species) {
    List<String> traded = TRADE_NAMES.getOrDefault(species.name(), List.of());
    return Stream.concat(Stream.of(species.name()), traded.stream()).toList();
  }

  private static Map<String, Species> byName() {
    Map<String, Species> known = new TreeMap<>();
    for (Species species : SpeciesTable.ALL) {
      names(species).forEach(name -> known.put(plain(name), species));
      known.put(plain(species.botanical()), species);
    }
    return Map.copyOf(known);
  }

  private static String plain(String name) {
    return name.toLowerCase(Locale.ROOT).replaceAll("[-_ ]", "");
  }
}
