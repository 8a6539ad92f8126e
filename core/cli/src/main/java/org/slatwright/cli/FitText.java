package org.slatwright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.plan.Fit;
import org.slatwright.api.plan.Plan;

/** Spells how much of each thing goes on each shelf; shelves that take it alike share a line. */
final class FitText {

  private static final int LONGEST_NAME = 24;

  private FitText() {}

  /** Thing by thing from the floor up, aligned and folded at the width of a terminal. */
  static List<String> of(Plan plan) {
    int column =
        plan.fits().stream()
            .mapToInt(fit -> fit.thing().length())
            .filter(length -> length <= LONGEST_NAME)
            .max()
            .orElse(LONGEST_NAME);
    String indent = " ".repeat(column + 2);
    List<String> lines = new ArrayList<>();
    String last = "";
    for (List<Fit> alike : runs(plan.fits())) {
      Fit fit = alike.get(0);
      boolean fresh = !fit.thing().equals(last);
      last = fit.thing();
      List<String> phrases = new ArrayList<>(List.of(shelves(alike) + ":"));
      phrases.addAll(new Line(fit, plan.lengths()).phrases());
      if (fresh && last.length() > column) {
        lines.add(last);
      }
      String head = fresh && last.length() <= column ? last : "";
      lines.addAll(Folding.lines(head + indent.substring(head.length()), indent + "  ", phrases));
    }
    return lines;
  }

  private static List<List<Fit>> runs(List<Fit> fits) {
    List<List<Fit>> runs = new ArrayList<>();
    for (Fit fit : fits) {
      if (runs.isEmpty() || !isAlike(runs.get(runs.size() - 1).get(0), fit)) {
        runs.add(new ArrayList<>());
      }
      runs.get(runs.size() - 1).add(fit);
    }
    return runs;
  }

  private static boolean isAlike(Fit first, Fit other) {
    return first.equals(
        new Fit(
            other.thing(),
            first.shelf(),
            other.turned(),
            other.across(),
            other.deep(),
            other.high(),
            other.spareAcross(),
            other.spareDeep(),
            other.spareAbove(),
            other.enough()));
  }

  private static String shelves(List<Fit> alike) {
    int lowest = alike.get(0).shelf();
    int highest = alike.get(alike.size() - 1).shelf();
    if (lowest == highest) {
      return "shelf " + lowest;
    }
    return "shelves " + lowest + (highest == lowest + 1 ? " and " : " to ") + highest;
  }

  private record Line(Fit fit, LengthFormat lengths) {

    /** Each stays on one line. */
    List<String> phrases() {
      List<String> lacking = lacking();
      if (!lacking.isEmpty()) {
        return List.of("does not fit,", joined(lacking));
      }
      return Stream.of(
              fit.turned() ? "turned," : "",
              fit.across() + " across,",
              fit.deep() + " deep,",
              fit.high().map(high -> high + " high;").orElse("open above;"),
              spare() + (fit.enough() ? "" : ";"),
              fit.enough() ? "" : "fewer than asked for")
          .filter(phrase -> !phrase.isEmpty())
          .toList();
    }

    private List<String> lacking() {
      return Stream.of(
              fit.across() == 0 ? lack(fit.spareAcross(), "wide") : "",
              fit.deep() == 0 ? lack(fit.spareDeep(), "deep") : "",
              fit.high().filter(high -> high == 0).isPresent()
                  ? lack(fit.spareAbove().orElse(Length.ZERO), "high")
                  : "")
          .filter(lack -> !lack.isEmpty())
          .toList();
    }

    private String lack(Length spare, String way) {
      return lengths.withUnit(spare.negated()) + " too " + way;
    }

    /** With the unit once, at the end. */
    private String spare() {
      List<Length> spares =
          Stream.concat(Stream.of(fit.spareAcross(), fit.spareDeep()), fit.spareAbove().stream())
              .toList();
      List<String> spelt = new ArrayList<>(spares.stream().map(lengths::number).toList());
      int last = spelt.size() - 1;
      spelt.set(last, lengths.withUnit(spares.get(last)));
      return joined(spelt) + " to spare";
    }

    private static String joined(List<String> parts) {
      int last = parts.size() - 1;
      return last == 0
          ? parts.get(0)
          : String.join(", ", parts.subList(0, last)) + " and " + parts.get(last);
    }
  }
}
