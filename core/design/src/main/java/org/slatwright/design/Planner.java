package org.slatwright.design;

import java.util.Comparator;
import java.util.List;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.drawing.Templates;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Solid;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.OrderOfWork;
import org.slatwright.api.plan.Plan;
import org.slatwright.api.plan.Quantities;
import org.slatwright.design.checks.Checks;
import org.slatwright.design.checks.Design;
import org.slatwright.design.cutting.CutRack;
import org.slatwright.design.cutting.Cutting;
import org.slatwright.design.drafting.Drafting;
import org.slatwright.design.framing.CutList;
import org.slatwright.design.framing.Framing;
import org.slatwright.design.jig.JigMaker;
import org.slatwright.design.jig.MadeJig;
import org.slatwright.design.machining.MadePatterns;
import org.slatwright.design.machining.Patterns;
import org.slatwright.design.rackfile.RackFile;
import org.slatwright.design.rackfile.RackFileException;
import org.slatwright.design.sizing.Rack;
import org.slatwright.design.sizing.Sizing;
import org.slatwright.design.steps.BuildOrder;
import org.slatwright.design.takeoff.TakeOff;
import org.slatwright.design.templates.FullScale;

/** Makes the plan of a rack. */
public final class Planner {

  private Planner() {}

  /**
   * The complete plan of what a rack file asks for.
   *
   * @throws RackFileException when the file asks for what cannot be built; it names everything that
   *     is wrong and what would put it right
   */
  public static Plan plan(RackFile file) throws RackFileException {
    Reckoned reckoned = Reckoned.of(file);
    Rack rack = reckoned.rack;
    return reckoned.plan(
        JigMaker.solids(rack, reckoned.made),
        Drafting.sheets(
            rack,
            reckoned.assembly,
            reckoned.quantities,
            reckoned.made,
            reckoned.cut.plan(),
            reckoned.work,
            reckoned.findings),
        FullScale.of(rack, reckoned.assembly, reckoned.made.jig()));
  }

  /**
   * The same without drawings, templates and solids, for who reads its numbers alone: drawing takes
   * longer than all the rest.
   *
   * @throws RackFileException as {@link #plan} does
   */
  public static Plan undrawn(RackFile file) throws RackFileException {
    return Reckoned.of(file).plan(List.of(), List.of(), Templates.NONE);
  }

  /** All that is settled before anything is drawn. */
  private record Reckoned(
      Rack rack,
      Assembly assembly,
      Quantities quantities,
      MadeJig made,
      MadePatterns patterns,
      CutRack cut,
      OrderOfWork work,
      List<Finding> findings) {

    static Reckoned of(RackFile file) throws RackFileException {
      Rack rack = Sizing.solve(file);
      Assembly assembly = Framing.frame(rack);
      MadeJig made = JigMaker.make(rack);
      Quantities quantities = TakeOff.of(assembly, rack);
      MadePatterns patterns = Patterns.of(rack.shop(), rack.units(), assembly, made.jig());
      CutRack cut = Cutting.plan(rack, assembly, quantities);
      List<Finding> findings =
          worstFirst(
              List.of(
                  rack.notes(),
                  cut.findings(),
                  made.findings(),
                  patterns.findings(),
                  Checks.of(new Design(rack, assembly, quantities, made.inHand()))));
      OrderOfWork work = BuildOrder.of(rack, assembly, quantities, made, cut.plan());
      return new Reckoned(rack, assembly, quantities, made, patterns, cut, work, findings);
    }

    Plan plan(List<Solid> solids, List<Sheet> sheets, Templates templates) {
      LengthFormat lengths = rack.lengths();
      return new Plan(
          rack.title(),
          lengths,
          rack.chains(),
          rack.fits(),
          assembly,
          CutList.of(assembly, lengths),
          cut.plan(),
          quantities,
          work,
          made.jig(),
          patterns.patterns(),
          solids,
          findings,
          sheets,
          templates);
    }
  }

  private static List<Finding> worstFirst(List<List<Finding>> found) {
    return found.stream()
        .flatMap(List::stream)
        .sorted(Comparator.comparing(Finding::severity))
        .toList();
  }
}
