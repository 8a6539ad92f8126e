package org.slatwright.design.mechanics;

/**
 * The end of a beam that runs on beyond its outer support, loaded evenly, while the span behind it
 * is empty: then the span bows up, turns over the support, and the tip goes down further than that
 * of a beam held fast.
 *
 * @param beam that runs on: {@code length} is the span behind the support
 * @param reach of the tip beyond the support, mm
 */
public record Overhang(Beam beam, double reach) {

  /**
   * Deflection of the tip under a load W in N spread over the overhang a, mm: that of a cantilever,
   * and a times the turn at the support, {@code M·L/(3·E·I) + M/(L·G·A′)} with M = W·a/2 (textbook
   * statics).
   */
  public double tipSag(double load) {
    double moment = load * reach / 2;
    double turn =
        moment * beam.length() / (3 * beam.bendingStiffness())
            + moment / (beam.length() * beam.shearStiffness());
    return cantilever().deflection(Loading.UNIFORM_CANTILEVER, load) + reach * turn;
  }

  /** The greatest bending stress, which is over the support, MPa. */
  public double stress(double load) {
    return cantilever().stress(Loading.UNIFORM_CANTILEVER, load);
  }

  private Beam cantilever() {
    return new Beam(beam.section(), reach, beam.stiffness());
  }
}
