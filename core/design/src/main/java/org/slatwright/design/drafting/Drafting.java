package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.plan.CuttingPlan;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.OrderOfWork;
import org.slatwright.api.plan.Quantities;
import org.slatwright.design.jig.MadeJig;
import org.slatwright.design.sizing.Rack;

/** Draws the sheets of a plan. */
public final class Drafting {

  private Drafting() {}

  /**
   * All sheets, in order: the cover, which has no number, then those that are numbered from 1.
   *
   * @param findings worst first; a sheet or more of their own come last
   */
  public static List<Sheet> sheets(
      Rack rack,
      Assembly assembly,
      Quantities quantities,
      MadeJig jig,
      CuttingPlan cutting,
      OrderOfWork work,
      List<Finding> findings) {
    List<SheetDrawing> drawings = new ArrayList<>();
    drawings.add(new ExplodedSheet(rack, assembly));
    drawings.addAll(FrameSheet.of(rack, assembly));
    drawings.add(new JointSheet(rack, assembly));
    drawings.addAll(ShelfLayout.of(rack, assembly));
    drawings.addAll(PartsSheet.of(rack, assembly));
    drawings.addAll(jigs(rack, jig));
    drawings.addAll(CutListSheet.of(rack, assembly));
    drawings.addAll(CuttingDiagrams.of(rack, cutting));
    drawings.addAll(OrderOfCutting.of(rack, cutting));
    drawings.addAll(OrderOfWorkSheet.of(rack, assembly, work));
    int findingsSheet = 1 + drawings.size() + 1;
    Optional<String> found = FindingsNote.of(findings, findingsSheet);
    drawings.add(0, new GeneralArrangement(rack, assembly, found));
    drawings.addAll(FindingsSheet.of(rack, findings));
    Sheet cover = new CoverSheet(rack, assembly, quantities, found).sheet();
    Stream<Sheet> numbered =
        IntStream.range(0, drawings.size())
            .mapToObj(i -> drawings.get(i).sheet(i + 1, drawings.size()));
    return Stream.concat(Stream.of(cover), numbered).toList();
  }

  private static List<SheetDrawing> jigs(Rack rack, MadeJig jig) {
    List<SheetDrawing> drawings = new ArrayList<>();
    jig.jig()
        .ifPresent(
            made -> {
              drawings.add(JigSheet.ofSheet(rack, made));
              drawings.add(new JigPlatesSheet(rack, made));
            });
    jig.offcutJig().ifPresent(made -> drawings.add(JigSheet.ofOffcuts(rack, made)));
    return drawings;
  }
}
