package org.slatwright.benchmarks.cuttingstock;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.slatwright.design.cuttingstock.CuttingSolution;
import org.slatwright.design.cuttingstock.CuttingStock;
import org.slatwright.design.cuttingstock.Effort;

/** Solves the instances of files, or those that ship, and tells how well and how quickly. */
public final class CuttingBenchmark {

  private static final List<String> SHIPPED = List.of("workshop.jsonl", "falkenauer.jsonl");
  private static final double WARM_UP_MILLIS = 5_000;

  private CuttingBenchmark() {}

  /**
   * Ends with status 2 when a file cannot be used.
   *
   * @param files those to solve; none for those that ship
   */
  public static void main(String[] files) {
    try {
      measure(files.length == 0 ? shipped() : read(files));
    } catch (InstanceFileException e) {
      System.err.println(e.getMessage());
      System.exit(2);
    }
  }

  private static void measure(List<Instance> instances) {
    warmUp(instances);
    System.out.println(Measured.HEADER);
    List<Measured> all = new ArrayList<>();
    for (Instance instance : instances) {
      Measured measured = measured(instance);
      System.out.println(measured.line());
      all.add(measured);
    }
    System.out.printf("%n%s", new Summary(all).text());
  }

  private static Measured measured(Instance instance) {
    long start = System.nanoTime();
    CuttingSolution solution = CuttingStock.solve(instance.problem(), Effort.USUAL);
    double millis = (System.nanoTime() - start) / 1e6;
    return new Measured(instance, solution, millis, FirstFitDecreasing.cost(instance.problem()));
  }

  private static void warmUp(List<Instance> instances) {
    double spent = 0;
    for (int next = 0; spent < WARM_UP_MILLIS && next < 100 * instances.size(); next++) {
      spent += measured(instances.get(next % instances.size())).millis();
    }
  }

  static List<Instance> shipped() throws InstanceFileException {
    List<Instance> all = new ArrayList<>();
    for (String name : SHIPPED) {
      all.addAll(InstanceReader.read(name, shippedLines(name)));
    }
    return all;
  }

  private static List<String> shippedLines(String name) {
    try (InputStream in = CuttingBenchmark.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<Instance> read(String[] files) throws InstanceFileException {
    List<Instance> all = new ArrayList<>();
    for (String file : files) {
      all.addAll(InstanceReader.read(file, lines(file)));
    }
    return all;
  }

  private static List<String> lines(String file) throws InstanceFileException {
    try {
      return Files.readAllLines(Path.of(file));
    } catch (IOException e) {
      throw new InstanceFileException(file + ": cannot be read as a UTF-8 text file");
    }
  }
}
