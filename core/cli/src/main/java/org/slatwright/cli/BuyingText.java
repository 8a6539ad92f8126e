package org.slatwright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.measure.Volume;
import org.slatwright.api.plan.CuttingPlan;
import org.slatwright.api.plan.MissingPieces;
import org.slatwright.api.plan.Plan;
import org.slatwright.api.plan.Purchase;

/**
 * Spells what to buy, what it costs, how well the boards are used and what is missing; the tables
 * tell the cuts.
 */
final class BuyingText {

  private static final int COLUMN = 19;

  private BuyingText() {}

  /** One purchase, timber or lack a line; nothing when no timber to cut is listed. */
  static List<String> of(Plan plan) {
    CuttingPlan cutting = plan.cutting();
    LengthFormat lengths = plan.lengths();
    List<List<String>> buying =
        cutting.buying().stream().map(purchase -> phrases(purchase, lengths)).toList();
    List<List<String>> quality =
        cutting.timbers().stream()
            .map(timber -> Folding.words(timber.stock().word() + ", " + timber.quality()))
            .toList();
    List<List<String>> missing =
        cutting.timbers().stream()
            .flatMap(timber -> timber.missing().stream())
            .map(pieces -> phrases(pieces, lengths))
            .toList();
    return Stream.of(
            under("to buy", buying),
            under("in all", total(cutting, lengths)),
            under("cutting", quality),
            under("missing", missing))
        .flatMap(List::stream)
        .toList();
  }

  /** Each stays on one line. */
  private static List<String> phrases(Purchase purchase, LengthFormat lengths) {
    String length = purchase.length().map(lengths::withUnit).orElse("");
    List<String> phrases = new ArrayList<>();
    String amount = purchase.quantity().map(count -> count + " × " + length).orElse(length).strip();
    if (!amount.isEmpty()) {
      phrases.add(amount);
    }
    phrases.add(purchase.what() + (purchase.quantity().isPresent() ? "" : ","));
    if (purchase.quantity().isEmpty()) {
      phrases.addAll(Folding.words(purchase.note()));
    }
    if (purchase.price().isPresent() && purchase.cost().isPresent()) {
      phrases.add(
          "at "
              + purchase.price().get().toPlainString()
              + ": "
              + purchase.cost().get().toPlainString());
    }
    return phrases;
  }

  private static List<String> phrases(MissingPieces pieces, LengthFormat lengths) {
    return List.of(
        pieces.count() + " × " + pieces.mark() + ",",
        lengths.withUnit(pieces.length()),
        "of " + lengths.section(pieces.thickness(), pieces.width()));
  }

  private static List<List<String>> total(CuttingPlan cutting, LengthFormat lengths) {
    boolean priced = cutting.buying().stream().allMatch(p -> p.cost().isPresent());
    String what = priced ? "" : " for what has a price";
    Stream<String> cost = cutting.cost().map(all -> all.toPlainString() + what).stream();
    Stream<String> timber =
        cutting.volume().equals(Volume.ZERO)
            ? Stream.empty()
            : Stream.of(cutting.volume().withUnit(lengths.unit()) + " of timber");
    String line = Stream.concat(cost, timber).collect(Collectors.joining(", "));
    return line.isEmpty() ? List.of() : List.of(List.of(line));
  }

  /** The items below one another, the name before the first. */
  private static List<String> under(String name, List<List<String>> items) {
    String indent = " ".repeat(COLUMN);
    List<String> lines = new ArrayList<>();
    for (List<String> item : items) {
      String head = lines.isEmpty() ? name + indent.substring(name.length()) : indent;
      lines.addAll(Folding.lines(head, indent + "  ", item));
    }
    return lines;
  }
}
