package org.slatwright.design.cuttingstock;

/** Solves cutting stock problems. */
public final class CuttingStock {

  private CuttingStock() {}

  /**
   * The plan that misses the fewest pieces, the longest first; among those the cheapest; among
   * those of the fewest stock lengths; among those with the longest rests, each rest as long as can
   * be where others are all used up; among those with the fewest different lengths to a pattern.
   * That it misses least and costs least is proved within the effort wherever it can be; the rest
   * is sought, and never at the price of what goes before. The same problem has the same plan.
   */
  public static CuttingSolution solve(CuttingProblem problem, Effort effort) {
    var job = new Job(problem);
    return job.solution(FirstFit.plan(job), 0);
  }
}
