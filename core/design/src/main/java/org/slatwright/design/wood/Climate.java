package org.slatwright.design.wood;

/**
 * Where a rack stands: the service classes of EN 1995-1-1 (Eurocode 5), 2.3.1.3; k_mod and k_def
 * were checked against two open transcriptions of its tables 3.1 and 3.2.
 *
 * <p>The moisture over a year is from memory, kept to what can be checked. Indoors and covered it
 * is that of wood at 20 °C in air of about 35 to 65 and 55 to 80 % (Wood Handbook, equation 4-5),
 * and at most the 12 and 20 % of service classes 1 and 2. Outdoors it passes 20 %, as service class
 * 3 says, and stays below the 30 % where wood no longer swells.
 */
public enum Climate {
  /** In a heated room: service class 1. */
  INDOORS("indoors", 0.7, 0.6, 7, 12),
  /** Under a roof, in damp air: service class 2. */
  COVERED("covered", 0.7, 0.8, 10, 17),
  /** Where it gets wet, a greenhouse too: service class 3. */
  OUTDOORS("outdoors", 0.55, 2.0, 10, 24);

  private final String word;
  private final double longTermFactor;
  private final double creep;
  private final double driest;
  private final double dampest;

  Climate(String word, double longTermFactor, double creep, double driest, double dampest) {
    this.word = word;
    this.longTermFactor = longTermFactor;
    this.creep = creep;
    this.driest = driest;
    this.dampest = dampest;
  }

  /** As written in a rack file. */
  public String word() {
    return word;
  }

  /** k_mod of solid timber under a long-term load (stored goods): EN 1995-1-1, table 3.1. */
  public double longTermFactor() {
    return longTermFactor;
  }

  /** k_mod of solid timber under a short push: EN 1995-1-1, table 3.1 (from memory). */
  public double shortTermFactor() {
    return this == OUTDOORS ? 0.7 : 0.9;
  }

  /** k_def of solid timber: EN 1995-1-1, table 3.2. */
  public double creep() {
    return creep;
  }

  /** The least moisture content of wood over a year, in percent of its oven-dry mass. */
  public double driest() {
    return driest;
  }

  /** The greatest moisture content over a year, in percent. */
  public double dampest() {
    return dampest;
  }

  /** The middle of both, in percent: what wood is built and weighed at. */
  public double usual() {
    return (driest + dampest) / 2;
  }
}
