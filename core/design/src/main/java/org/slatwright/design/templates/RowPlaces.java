package org.slatwright.design.templates;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.slatwright.api.model.Piece;
import org.slatwright.design.framing.Marks;

/** On which rails a row lies, and what its slats are called there. */
final class RowPlaces {

  private final Map<String, List<String>> framesByShelf = new LinkedHashMap<>();
  private final List<List<Piece>> rows = new ArrayList<>();

  /** Slats as they lie on the rail of that frame and shelf, from the front back. */
  void add(int shelf, String frame, List<Piece> slats) {
    framesByShelf.computeIfAbsent(String.valueOf(shelf), any -> new ArrayList<>()).add(frame);
    rows.add(slats);
  }

  /** The marks of what lies at that place in the row: {@code S1 or S2}. */
  String marks(int slat) {
    return rows.stream()
        .map(row -> row.get(slat).part().mark())
        .distinct()
        .sorted()
        .collect(Collectors.joining(" or "));
  }

  /** {@code Shelf 1 to 4: left frame, right frame}. */
  List<String> words() {
    Map<List<String>, List<String>> shelves =
        framesByShelf.entrySet().stream()
            .collect(
                Collectors.groupingBy(
                    Map.Entry::getValue,
                    LinkedHashMap::new,
                    Collectors.mapping(Map.Entry::getKey, Collectors.toList())));
    return shelves.entrySet().stream()
        .map(each -> "Shelf " + Marks.of(each.getValue()) + ": " + String.join(", ", each.getKey()))
        .toList();
  }
}
