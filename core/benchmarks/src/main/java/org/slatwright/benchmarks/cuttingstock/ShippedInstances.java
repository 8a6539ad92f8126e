package org.slatwright.benchmarks.cuttingstock;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** The instances that come with the benchmarks, each of known optimum. */
public final class ShippedInstances {

  /** Jobs of a workshop, made for this project, each optimum proved by other solvers. */
  static final String WORKSHOP = "workshop.jsonl";

  /** E. Falkenauer's of 1996, as OR-Library has them. */
  static final String FALKENAUER = "falkenauer.jsonl";

  private ShippedInstances() {}

  /** Every one. */
  public static List<Instance> all() throws InstanceFileException {
    List<Instance> all = new ArrayList<>(of(WORKSHOP));
    all.addAll(of(FALKENAUER));
    return all;
  }

  /** Those of one file. */
  static List<Instance> of(String file) throws InstanceFileException {
    try (InputStream in = ShippedInstances.class.getResourceAsStream(file)) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return InstanceReader.read(file, text.lines().toList());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
