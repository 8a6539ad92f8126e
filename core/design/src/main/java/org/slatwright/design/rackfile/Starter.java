package org.slatwright.design.rackfile;

/** A rack file to begin with, whose comments introduce the format. */
public final class Starter {

  private Starter() {}

  /** A valid rack file as text, ending in a line break. */
  public static String text() {
    return Resource.text("starter.yaml");
  }
}
