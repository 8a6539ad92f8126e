package org.slatwright.design.mechanics;

/**
 * A straight beam of one section, of wood along its grain: small deflections of elastic wood, shear
 * included.
 *
 * @param length between the middles of its supports, or from the support of a cantilever to its
 *     tip; mm
 * @param stiffness modulus of elasticity along the grain, MPa
 */
public record Beam(RectangularSection section, double length, double stiffness) {

  /** E/G of wood of which nothing nearer is known: Wood Handbook, chapter 9. */
  private static final double STIFFNESS_OVER_SHEAR_MODULUS = 16;

  /** The greatest deflection under a load in N, mm: Wood Handbook, eq. 9-2. */
  public double deflection(Loading loading, double load) {
    return loading.bending() * load * length * length * length / bendingStiffness()
        + loading.shear() * load * length / shearStiffness();
  }

  /** The greatest bending stress under a load in N, MPa. */
  public double stress(Loading loading, double load) {
    return loading.moment() * load * length / section.modulus();
  }

  /** E·I, in N·mm². */
  double bendingStiffness() {
    return stiffness * section.inertia();
  }

  /** G·A′, in N. */
  double shearStiffness() {
    return stiffness / STIFFNESS_OVER_SHEAR_MODULUS * section.shearArea();
  }
}
