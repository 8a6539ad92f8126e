package org.slatwright.design.steps;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Part;
import org.slatwright.api.model.Role;
import org.slatwright.api.model.Stock;
import org.slatwright.api.plan.CutBoard;
import org.slatwright.api.plan.Step;
import org.slatwright.api.plan.StopSetting;
import org.slatwright.api.plan.TimberCuts;
import org.slatwright.api.plan.Wording;

/** Everything is cut by settings of the stop block, a timber at a time, and sanded. */
final class CuttingTasks {

  static final String SAND_FRAMES = "sand-frame-parts";
  static final String SAND_SLATS = "sand-slats";

  /** More settings than one reads in a step; the order of cutting has them all. */
  private static final int MOST_SETTINGS = 6;

  private static final String SAW =
      "Eye and ear protection. Cut short parts off the long stick with the stop block clear of the"
          + " blade; hands out of its line.";

  private final Build build;

  private CuttingTasks(Build build) {
    this.build = build;
  }

  static List<Task> of(Build build) {
    CuttingTasks cutting = new CuttingTasks(build);
    List<Task> tasks = new ArrayList<>();
    for (Stock stock : Stock.values()) {
      List<Part> parts = cutting.parts(stock);
      if (!parts.isEmpty()) {
        tasks.add(stock == Stock.DOWEL_ROD ? cutting.dowels(parts) : cutting.cut(stock, parts));
      }
    }
    tasks.add(cutting.sandFrames());
    tasks.add(cutting.sandSlats());
    return tasks;
  }

  /** The tasks that cut the parts of a role. */
  static String id(Stock stock) {
    return "cut-" + stock.word().replace(' ', '-');
  }

  /** What uprights and rails are cut in: rails may have a stock of their own. */
  static String[] frameStocks(Build build) {
    return Stream.of(Role.UPRIGHT, Role.RAIL)
        .flatMap(role -> build.assembly().parts().stream().filter(part -> part.role() == role))
        .map(part -> id(part.material().stock()))
        .distinct()
        .toArray(String[]::new);
  }

  private List<Part> parts(Stock stock) {
    return build.assembly().parts().stream()
        .filter(part -> part.material().stock() == stock)
        .toList();
  }

  private Task cut(Stock stock, List<Part> parts) {
    Optional<TimberCuts> cuts = cuts(stock);
    SortedMap<Length, String> settings = settings(cuts, parts);
    Task.Draft draft = Task.named(id(stock), "Cut the " + stock.word());
    draft.does(
        "Square one end of each board first, {} off, and cut from that end.",
        build.rack().supplies().endTrim());
    if (ripped(cuts)) {
      draft.does("Rip where the cutting diagrams show it, before anything is cut to length.");
    }
    settings(settings).forEach(draft::does);
    draft.does("Pencil its mark on each piece as it leaves the saw.");
    int count = parts.stream().mapToInt(Part::quantity).sum();
    return draft
        .with(parts.stream().map(part -> new Step.Parts(part.mark(), part.quantity())).toList())
        .tools("saw", "stop block", "square", "pencil")
        .takes(
            Times.SET_UP
                + Times.STOP_SETTING * settings.size()
                + Times.CUT * count
                + (ripped(cuts) ? Times.RIP * boards(cuts) : 0))
        .after(
            stock == Stock.SLAT && build.rack().reclaimed() ? TimberTasks.CLEAR : TimberTasks.SORT)
        .minding(SAW)
        .endsWhen(
            parts.size() == 1
                ? "Stood side by side, all pieces end level."
                : "Stood side by side, all pieces of one mark end level.");
  }

  private List<Wording> settings(SortedMap<Length, String> settings) {
    if (settings.size() > MOST_SETTINGS) {
      return List.of(
          Wording.of(
              "Set the stop block "
                  + settings.size()
                  + " times, as the order of cutting says: from {} for "
                  + first(settings)
                  + " down to {}.",
              settings.firstKey(),
              settings.lastKey()));
    }
    return settings.entrySet().stream()
        .map(
            each -> Wording.of("Set the stop block to {}: " + each.getValue() + ".", each.getKey()))
        .toList();
  }

  private static String first(SortedMap<Length, String> settings) {
    return settings.get(settings.firstKey());
  }

  /** What is cut at each length, the longest first. */
  private static SortedMap<Length, String> settings(Optional<TimberCuts> cuts, List<Part> parts) {
    SortedMap<Length, String> settings = new TreeMap<>(Comparator.reverseOrder());
    if (cuts.isPresent()) {
      for (StopSetting setting : cuts.get().settings()) {
        settings.put(setting.length(), pieces(setting));
      }
    } else {
      for (Part part : parts) {
        String pieces = part.quantity() + " × " + part.mark();
        settings.merge(part.shape().length(), pieces, (one, other) -> one + ", " + other);
      }
    }
    return settings;
  }

  private static String pieces(StopSetting setting) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    setting.works().forEach(work -> counts.merge(work.piece(), work.count(), Integer::sum));
    List<String> said = new ArrayList<>();
    counts.forEach((mark, count) -> said.add(count + " × " + mark));
    return String.join(", ", said);
  }

  private Optional<TimberCuts> cuts(Stock stock) {
    return build.cutting().timbers().stream().filter(cut -> cut.stock() == stock).findFirst();
  }

  private static boolean ripped(Optional<TimberCuts> cuts) {
    return cuts.stream()
        .flatMap(timber -> timber.boards().stream())
        .anyMatch(CuttingTasks::isRipped);
  }

  private static boolean isRipped(CutBoard board) {
    return board.cuts().stream().anyMatch(cut -> cut.width().isLessThan(board.width()));
  }

  private static int boards(Optional<TimberCuts> cuts) {
    return cuts.stream()
        .flatMap(timber -> timber.boards().stream())
        .filter(CuttingTasks::isRipped)
        .mapToInt(board -> board.marks().size())
        .sum();
  }

  private Task dowels(List<Part> parts) {
    Part dowel = parts.get(0);
    boolean cut = cuts(Stock.DOWEL_ROD).isPresent();
    Task.Draft draft =
        Task.named(id(Stock.DOWEL_ROD), cut ? "Cut the dowels" : "Make the dowels ready");
    if (cut) {
      draft.does(
          "Set the stop block to {}: "
              + dowel.quantity()
              + " × "
              + dowel.mark()
              + ", and two to spare if the rod gives them.",
          dowel.shape().length());
    } else {
      draft.does("Sort out those that are not {} long within a hair.", dowel.shape().length());
    }
    return draft
        .does("Chamfer the end that goes in, and saw or scratch a groove along it to let glue out.")
        .with(dowel.mark(), dowel.quantity())
        .tools(cut ? "fine saw" : "rule", "stop block", "knife or rasp")
        .takes(Times.SET_UP + Times.CUT * dowel.quantity())
        .minding(SAW)
        .endsWhen(
            "A dowel goes into a hole of {} in a scrap by hand, with some push and no play.",
            dowel.shape().thickness());
  }

  private Task sandFrames() {
    return Task.named(SAND_FRAMES, "Sand the frame parts")
        .does(
            "Sand the long faces and ease the arrises by about {} while everything can still be"
                + " reached.",
            build.rack().units().metricOrInch(Length.mm(1), Length.inches(1, 16)))
        .does(
            "Leave the ends of the rails, and uprights where rails meet them, as they are: they"
                + " are glued.")
        .with(Build.parts(build.assembly().pieces(Role.UPRIGHT)))
        .with(Build.parts(build.assembly().pieces(Role.RAIL)))
        .tools("sanding block or sander, grit 120")
        .takes(Times.SET_UP + Times.SAND_M2 * squareMetres(Role.UPRIGHT, Role.RAIL))
        .after(frameStocks(build))
        .minding("Extract the dust and wear a P2 or N95 mask or better.")
        .endsWhen("No splinter catches a rag drawn along the arrises.");
  }

  private Task sandSlats() {
    return Task.named(SAND_SLATS, "Sand the slats")
        .does("Sand both faces, ease all arrises, and choose the better face to lie on top.")
        .with(Build.parts(build.assembly().pieces(Role.SLAT)))
        .tools("sanding block or sander, grit 120")
        .takes(Times.SET_UP + Times.SAND_M2 * squareMetres(Role.SLAT))
        .after(id(Stock.SLAT))
        .minding("Extract the dust and wear a P2 or N95 mask or better.")
        .endsWhen("No splinter catches a rag drawn along the arrises.");
  }

  private double squareMetres(Role... roles) {
    return Stream.of(roles)
        .flatMap(role -> build.assembly().pieces(role).stream())
        .map(piece -> piece.part().shape())
        .mapToDouble(
            shape ->
                2 * shape.length().inMm() * (shape.width().inMm() + shape.thickness().inMm()) / 1e6)
        .sum();
  }
}
