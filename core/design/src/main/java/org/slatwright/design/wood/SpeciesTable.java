package org.slatwright.design.wood;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.slatwright.design.wood.Species.Kind;

/**
 * The numbers of each species. Where shrinkage S from green to oven-dry is published but no
 * coefficient of change is, the coefficient is 1 / (3000 / S − 20), which is how table 13-5 of the
 * Wood Handbook follows from its table 4-3.
 */
final class SpeciesTable {

  private static final double UNKNOWN = Double.NaN;

  /**
   * Strength: Wood Handbook (FPL-GTR-282, 2021; FPL-GTR-190, 2010), table 5-3a at 12 % moisture;
   * movement: table 13-5, for the softwoods by way of table 4-3. From memory: all of eastern white
   * pine but its bending and shear, the shrinkage of ponderosa pine and of western larch across the
   * rings, the strength of western redcedar, crushing and shear of black walnut. Western redcedar
   * begins to shrink at 22 % moisture: 1 / (2200 / S − 12).
   */
  private static final List<Species> AMERICAN =
      List.of(
          wood(
              "eastern white pine",
              "Pinus strobus",
              Kind.SOFTWOOD,
              0.35,
              59,
              8500,
              3,
              6.2,
              0.00071,
              0.00212),
          wood(
              "ponderosa pine",
              "Pinus ponderosa",
              Kind.SOFTWOOD,
              0.4,
              65,
              8900,
              4,
              7.8,
              0.00133,
              0.00216),
          wood(
              "douglas-fir",
              "Pseudotsuga menziesii",
              Kind.SOFTWOOD,
              0.48,
              85,
              13400,
              5.5,
              7.8,
              0.00165,
              0.00267),
          wood(
              "loblolly pine",
              "Pinus taeda",
              Kind.SOFTWOOD,
              0.51,
              88,
              12300,
              5.4,
              9.6,
              0.00165,
              0.00259),
          wood(
              "white fir",
              "Abies concolor",
              Kind.SOFTWOOD,
              0.39,
              68,
              10300,
              3.7,
              7.6,
              0.00112,
              0.00245),
          wood(
              "western larch",
              "Larix occidentalis",
              Kind.SOFTWOOD,
              0.52,
              90,
              12900,
              6.4,
              9.4,
              0.00155,
              0.00323),
          wood(
              "western redcedar",
              "Thuja plicata",
              Kind.SOFTWOOD,
              0.32,
              51.7,
              7700,
              3.2,
              6.8,
              0.00111,
              0.00234),
          wood(
              "western hemlock",
              "Tsuga heterophylla",
              Kind.SOFTWOOD,
              0.45,
              78,
              11300,
              3.8,
              8.6,
              0.00144,
              0.00274),
          wood(
              "yellow-poplar",
              "Liriodendron tulipifera",
              Kind.HARDWOOD,
              0.42,
              70,
              10900,
              3.4,
              8.2,
              0.00158,
              0.00289),
          wood(
              "northern red oak",
              "Quercus rubra",
              Kind.HARDWOOD,
              0.63,
              99,
              12500,
              7,
              12.3,
              0.00158,
              0.00369),
          wood(
              "white oak",
              "Quercus alba",
              Kind.HARDWOOD,
              0.68,
              105,
              12300,
              7.4,
              13.8,
              0.0018,
              0.00365),
          wood(
              "sugar maple",
              "Acer saccharum",
              Kind.HARDWOOD,
              0.63,
              109,
              12600,
              10.1,
              16.1,
              0.00165,
              0.00353),
          wood(
              "white ash",
              "Fraxinus americana",
              Kind.HARDWOOD,
              0.6,
              106,
              12000,
              8,
              13.2,
              0.00169,
              0.00274),
          wood(
              "black walnut",
              "Juglans nigra",
              Kind.HARDWOOD,
              0.55,
              101,
              11600,
              7,
              9.4,
              0.0019,
              0.00274),
          wood(
              "black cherry",
              "Prunus serotina",
              Kind.HARDWOOD,
              0.5,
              85,
              10300,
              4.8,
              11.7,
              0.00126,
              0.00248),
          wood(
              "american beech",
              "Fagus grandifolia",
              Kind.HARDWOOD,
              0.64,
              103,
              11900,
              7,
              13.9,
              0.0019,
              0.00431),
          wood(
              "yellow birch",
              "Betula alleghaniensis",
              Kind.HARDWOOD,
              0.62,
              114,
              13900,
              6.7,
              13,
              0.00256,
              0.00338));

  /**
   * Wood Handbook, as above, from memory; seen only: gravity, bending and stiffness of sitka spruce
   * (10 200 psi, 1.57 million psi).
   */
  private static final List<Species> AMERICAN_SPRUCES =
      List.of(
          wood(
              "sitka spruce",
              "Picea sitchensis",
              Kind.SOFTWOOD,
              0.4,
              70,
              10800,
              4,
              7.9,
              0.00148,
              0.00263),
          wood(
              "white spruce",
              "Picea glauca",
              Kind.SOFTWOOD,
              0.36,
              65,
              9900,
              3,
              6.7,
              0.0013,
              0.00274));

  /**
   * Norway spruce and European oak (Quercus robur and petraea): densities of 441 and 702 kg/m³,
   * bending, stiffness and the oak's shrinkage of 4.3 and 8.9 % of the species pages of
   * europeanwood.org. Scots pine: density 550 kg/m³, bending and stiffness of timber merchants'
   * data sheets; crushing is the lower strength, across the rings, of 4.70 and 5.19 MPa in Applied
   * Sciences 15 (2025) 10775. European beech: density 710 kg/m³, bending, stiffness and shrinkage
   * of 5.7 and 11.6 % of a published data sheet. Gravity is density at 12 % over 1.12. Movement of
   * spruce and pine is the upper end, from memory of DIN 68100, since a gap must not close: pine is
   * published with 0.15 to 0.19 and 0.25 to 0.36 % per 1 %, and C. Bengtsson measured 0.07 to 0.28
   * and 0.18 to 0.46 in spruce (Annals of Forest Science 58, 2001, 569). No source was found for
   * the other values.
   */
  private static final List<Species> EUROPEAN =
      List.of(
          wood(
              "norway spruce",
              "Picea abies",
              Kind.SOFTWOOD,
              0.39,
              77,
              12500,
              UNKNOWN,
              UNKNOWN,
              0.0019,
              0.0036),
          wood(
              "scots pine",
              "Pinus sylvestris",
              Kind.SOFTWOOD,
              0.49,
              83.3,
              10080,
              4.7,
              UNKNOWN,
              0.0019,
              0.0036),
          wood(
              "european oak",
              "Quercus robur",
              Kind.HARDWOOD,
              0.63,
              88,
              13000,
              UNKNOWN,
              UNKNOWN,
              0.00148,
              0.00315),
          wood(
              "european beech",
              "Fagus sylvatica",
              Kind.HARDWOOD,
              0.63,
              110.1,
              14310,
              UNKNOWN,
              UNKNOWN,
              0.00198,
              0.00419));

  static final List<Species> ALL =
      Stream.of(AMERICAN, AMERICAN_SPRUCES, EUROPEAN)
          .flatMap(List::stream)
          .sorted(Comparator.comparing(Species::kind))
          .toList();

  private SpeciesTable() {}

  private static Species wood(
      String name,
      String botanical,
      Kind kind,
      double gravity,
      double bending,
      double stiffness,
      double crushing,
      double shear,
      double radial,
      double tangential) {
    return new Species(
        name,
        botanical,
        kind,
        gravity,
        bending,
        stiffness,
        known(crushing),
        known(shear),
        radial,
        tangential);
  }

  private static OptionalDouble known(double value) {
    return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
  }
}
