package org.slatwright.design.wood;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A species of wood: averages of clear, straight-grained wood at 12 % moisture content, not design
 * values.
 *
 * @param name as the trade has it, lower case
 * @param gravity oven-dry mass over volume at 12 % moisture, against water
 * @param bending modulus of rupture, MPa
 * @param stiffness modulus of elasticity in bending, MPa, shear included
 * @param crushing compression across the grain at the proportional limit, MPa
 * @param shear strength along the grain, MPa
 * @param radial change of size per 1 % moisture, across the growth rings
 * @param tangential the same along them: the width of a flat-sawn board
 */
public record Species(
    String name,
    String botanical,
    Kind kind,
    double gravity,
    double bending,
    double stiffness,
    OptionalDouble crushing,
    OptionalDouble shear,
    double radial,
    double tangential) {

  /** Of trees with needles, or with leaves. */
  public enum Kind {
    SOFTWOOD,
    HARDWOOD
  }

  /** Every species known, softwoods first. */
  public static List<Species> all() {
    return SpeciesTable.ALL;
  }

  /**
   * The species that makers call so, by its name, its botanical name or one of the trade; case,
   * blanks and hyphens do not count.
   */
  public static Optional<Species> named(String name) {
    return SpeciesNames.find(name);
  }

  /** Every name but the botanical ones that {@link #named} knows. */
  public static List<String> names() {
    return SpeciesNames.all();
  }

  /** Mass over volume at a moisture content in percent, kg/m³ (Wood Handbook, chapter 4). */
  public double density(double moisture) {
    return 1000 * gravity * (1 + moisture / 100);
  }
}
