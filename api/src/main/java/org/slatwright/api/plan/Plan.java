package org.slatwright.api.plan;

import java.util.List;
import java.util.Optional;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.drawing.Template;
import org.slatwright.api.drawing.Templates;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Solid;

/**
 * The complete plan of one rack.
 *
 * <p>The names of output files come from here, without an ending: {@link #CUT_LIST}, {@link
 * #CUTTING_PLAN}, {@link #STOP_SETTINGS}, {@link #SPARE_PIECES}, {@link #MISSING_PIECES}, {@link
 * #BUYING_LIST}, {@link #SHELF_SLATS}, {@link #HOLE_LIST}, {@link #FITS}, {@link #QUANTITIES},
 * {@link #ORDER_OF_WORK}, {@link #FINDINGS}, {@link #MODEL}, {@link #PLAN_BOOK}, {@link
 * #TEMPLATE_BOOK}, {@link Sheet#name}, {@link Template#name}, {@link Pattern#name} and {@link
 * Solid#name}. An exporter adds its ending.
 *
 * @param title the maker's title: any text at all, also right-to-left or with markup in it
 * @param lengths how every length is shown
 * @param chains the dimension chains, each adding up exactly
 * @param fits how much of what it must hold goes on each shelf: thing by thing, from the floor up
 * @param assembly parts, places, joints, fasteners
 * @param cutList the rough-cut table, one line a part
 * @param cutting what to buy, and how every stock length is cut
 * @param quantities weight, finish, glue and counts
 * @param work the order of work
 * @param jig the drilling jig, or empty when none can be made (a finding says why)
 * @param patterns what a router or a laser cuts or drills: jig plates and drilled parts, real size
 * @param solids bodies of the jig for a 3-D printer
 * @param findings worst first
 * @param sheets drawings to paper scale, in order
 * @param templates drawings at full scale
 */
public record Plan(
    String title,
    LengthFormat lengths,
    List<Chain> chains,
    List<Fit> fits,
    Assembly assembly,
    List<CutLine> cutList,
    CuttingPlan cutting,
    Quantities quantities,
    OrderOfWork work,
    Optional<Jig> jig,
    List<Pattern> patterns,
    List<Solid> solids,
    List<Finding> findings,
    List<Sheet> sheets,
    Templates templates) {

  /** The name of the table of parts to cut. */
  public static final String CUT_LIST = "cut-list";

  /** The name of the table of boards and what is cut from each. */
  public static final String CUTTING_PLAN = "cutting-plan";

  /** The name of the table of stop-block settings, in sequence. */
  public static final String STOP_SETTINGS = "stop-settings";

  /** The name of the table of pieces that the build wants and the rack does not keep. */
  public static final String SPARE_PIECES = "spare-pieces";

  /** The name of the table of pieces that no board is left for. */
  public static final String MISSING_PIECES = "missing-pieces";

  /** The name of the table of what to buy. */
  public static final String BUYING_LIST = "buying-list";

  /** The name of the table of the slats of each shelf. */
  public static final String SHELF_SLATS = "shelf-slats";

  /** The name of the table of holes to drill. */
  public static final String HOLE_LIST = "hole-list";

  /** The name of the table of what fits on each shelf. */
  public static final String FITS = "what-fits";

  /** The name of the table of weights, finish, glue and counts. */
  public static final String QUANTITIES = "quantities";

  /** The name of the table of steps. */
  public static final String ORDER_OF_WORK = "order-of-work";

  /** The name of the table of findings. */
  public static final String FINDINGS = "findings";

  /** The name of the whole plan as one document to print or to publish. */
  public static final String PLAN_BOOK = "plan-book";

  /** The name of all templates as one document to print at 100 %. */
  public static final String TEMPLATE_BOOK = "templates";

  /** The name of the whole plan as data. */
  public static final String MODEL = "plan";

  public Plan {
    chains = List.copyOf(chains);
    fits = List.copyOf(fits);
    cutList = List.copyOf(cutList);
    patterns = List.copyOf(patterns);
    solids = List.copyOf(solids);
    findings = List.copyOf(findings);
    sheets = List.copyOf(sheets);
  }
}
