package org.slatwright.testkit;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.slatwright.api.drawing.Paper;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.drawing.Templates;
import org.slatwright.api.measure.Unit;
import org.slatwright.api.model.Solid;
import org.slatwright.api.plan.CuttingPlan;
import org.slatwright.api.plan.Jig;
import org.slatwright.api.plan.OrderOfWork;
import org.slatwright.api.plan.Pattern;
import org.slatwright.api.plan.Plan;

/** Plans to test an exporter with. */
public final class SamplePlans {

  private static final int LONG_TITLE = 200;

  /** Titles that a maker may write and that break careless writers. */
  public static final List<String> ODD_TITLES =
      List.of(
          "",
          "\"double\" and 'single' quotes, back\\slash",
          "<b>bold</b> & &amp; ]]> --> <!--",
          "Seedlings 🌱 for 👩‍🌾, é as e\u0301",
          "رف الشتلات 3 × 4",
          "=1+1",
          "%%u %d ${title} {0}",
          "two\nlines\tand a tab",
          "../../etc/passwd",
          "x".repeat(LONG_TITLE));

  /** Planned when they are first asked for: whoever wants one plan has not all in memory. */
  private static final class Examples {
    static final List<Plan> ALL =
        ExampleRacks.names().stream().map(name -> ExampleRacks.plan(name)).toList();
  }

  private SamplePlans() {}

  /** Every example rack, designed; in alphabetical order of their files. */
  public static List<Plan> examples() {
    return Examples.ALL;
  }

  /**
   * The same example racks, planned for makers who measure in that unit and print on that paper.
   */
  public static List<Supplier<Plan>> examples(Unit units, Paper paper) {
    return ExampleRacks.names().stream()
        .<Supplier<Plan>>map(name -> () -> ExampleRacks.plan(name, units, paper))
        .toList();
  }

  /**
   * The same example racks, planned with other settings.
   *
   * @param setting of their rack files: {@code shop.paper=A3}
   */
  public static List<Plan> examplesWith(String... setting) {
    return ExampleRacks.names().stream().map(name -> ExampleRacks.plan(name, setting)).toList();
  }

  /** A rack of any size that can be built, the same for the same seed. */
  public static Plan random(long seed, Unit units, Paper paper) {
    return RandomRack.plan(seed, units, paper);
  }

  /** One small plan with a figure, outline, operation and cut of every kind there is. */
  public static Plan everyKind() {
    return EveryKind.plan("Every kind");
  }

  /** The first example under another title, also where that is drawn. */
  public static Plan titled(String title) {
    return ExampleRacks.titled(ExampleRacks.names().get(0), title);
  }

  /** The plan without its jig and what is made for it. */
  public static Plan withoutJig(Plan plan) {
    List<Pattern> parts =
        plan.patterns().stream().filter(pattern -> !pattern.name().startsWith("jig/")).toList();
    return with(plan, Optional.empty(), parts, List.of(), plan.sheets(), plan.templates());
  }

  /** The plan without drawings. */
  public static Plan withoutDrawings(Plan plan) {
    return withDrawings(plan, List.of(), Templates.NONE);
  }

  /** The plan with these drawings in place of its own. */
  public static Plan withDrawings(Plan plan, List<Sheet> sheets, Templates templates) {
    return with(plan, plan.jig(), plan.patterns(), plan.solids(), sheets, templates);
  }

  /** The plan with these patterns in place of its own. */
  public static Plan withPatterns(Plan plan, List<Pattern> patterns) {
    return with(plan, plan.jig(), patterns, plan.solids(), plan.sheets(), plan.templates());
  }

  private static Plan with(
      Plan plan,
      Optional<Jig> jig,
      List<Pattern> patterns,
      List<Solid> solids,
      List<Sheet> sheets,
      Templates templates) {
    return new Plan(
        plan.title(),
        plan.lengths(),
        plan.chains(),
        plan.fits(),
        plan.assembly(),
        plan.cutList(),
        plan.cutting(),
        plan.quantities(),
        plan.work(),
        jig,
        patterns,
        solids,
        plan.findings(),
        sheets,
        templates);
  }

  /** The plan with nothing but its assembly. */
  public static Plan bare(Plan plan) {
    return new Plan(
        plan.title(),
        plan.lengths(),
        List.of(),
        List.of(),
        plan.assembly(),
        List.of(),
        CuttingPlan.NONE,
        plan.quantities(),
        OrderOfWork.NONE,
        Optional.empty(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        Templates.NONE);
  }
}
