package org.slatwright.benchmarks.cuttingstock;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.TreeMap;
import org.slatwright.design.cuttingstock.CuttingProblem;
import org.slatwright.design.cuttingstock.CuttingProblem.Demand;
import org.slatwright.design.cuttingstock.CuttingProblem.Stock;

/**
 * Reads instances, one JSON object a line: either {@code capacity} (one stock length, as many as
 * are wanted, each costs 1) or {@code stock} with {@code kerf} and {@code trim}; {@code items} of a
 * length and a demand; {@code optimum} or {@code optimum_cost} where known. What else there is does
 * not matter.
 */
public final class InstanceReader {

  // Sums of as many pieces as are allowed stay within a long.
  private static final long MOST = 1_000_000_000_000L;
  private static final long MOST_PIECES = 100_000;

  private final String where;

  private InstanceReader(String where) {
    this.where = where;
  }

  /**
   * All instances of a file.
   *
   * @param file its name, for complaints
   */
  public static List<Instance> read(String file, List<String> lines) throws InstanceFileException {
    List<Instance> all = new ArrayList<>();
    for (int line = 0; line < lines.size(); line++) {
      if (!lines.get(line).isBlank()) {
        all.add(new InstanceReader(file + ":" + (line + 1) + ": ").instance(lines.get(line)));
      }
    }
    return all;
  }

  private Instance instance(String line) throws InstanceFileException {
    Map<?, ?> fields = object(line);
    if (!(fields.get("name") instanceof String name)) {
      throw wrong("name must be a text");
    }
    CuttingProblem problem =
        new CuttingProblem(
            wholeOr(fields, "kerf", 0), wholeOr(fields, "trim", 0), stocks(fields), items(fields));
    return new Instance(name, problem, optimum(fields));
  }

  private Map<?, ?> object(String line) throws InstanceFileException {
    try {
      return JSON.std.mapFrom(line);
    } catch (JsonProcessingException e) {
      throw wrong("not a JSON object: " + e.getOriginalMessage());
    } catch (IOException e) {
      throw wrong("not a JSON object: " + e.getMessage());
    }
  }

  private OptionalLong optimum(Map<?, ?> fields) throws InstanceFileException {
    for (String key : List.of("optimum", "optimum_cost")) {
      if (fields.get(key) != null) {
        return OptionalLong.of(whole(fields, key, 0, MOST));
      }
    }
    return OptionalLong.empty();
  }

  private List<Stock> stocks(Map<?, ?> fields) throws InstanceFileException {
    if (fields.get("capacity") != null) {
      return List.of(new Stock(whole(fields, "capacity", 1, MOST), 1, OptionalInt.empty()));
    }
    List<Stock> stocks = new ArrayList<>();
    for (Map<?, ?> stock : objects(fields, "stock")) {
      stocks.add(
          new Stock(
              whole(stock, "length", 1, MOST), whole(stock, "price", 0, MOST), available(stock)));
    }
    return stocks;
  }

  private OptionalInt available(Map<?, ?> stock) throws InstanceFileException {
    return stock.get("available") == null
        ? OptionalInt.empty()
        : OptionalInt.of((int) whole(stock, "available", 0, Integer.MAX_VALUE));
  }

  private List<Demand> items(Map<?, ?> fields) throws InstanceFileException {
    Map<Long, Integer> counts = new TreeMap<>();
    for (Map<?, ?> item : objects(fields, "items")) {
      int demand = (int) whole(item, "demand", 1, MOST_PIECES);
      counts.merge(whole(item, "length", 1, MOST), demand, Integer::sum);
    }
    return counts.entrySet().stream().map(e -> new Demand(e.getKey(), e.getValue())).toList();
  }

  private List<Map<?, ?>> objects(Map<?, ?> fields, String key) throws InstanceFileException {
    if (!(fields.get(key) instanceof List<?> list) || list.isEmpty()) {
      throw wrong(key + " must be a list with something in it");
    }
    List<Map<?, ?>> objects = new ArrayList<>();
    for (Object each : list) {
      if (!(each instanceof Map<?, ?> object)) {
        throw wrong(key + " must hold objects, not " + each);
      }
      objects.add(object);
    }
    return objects;
  }

  private long wholeOr(Map<?, ?> fields, String key, long otherwise) throws InstanceFileException {
    return fields.get(key) == null ? otherwise : whole(fields, key, 0, MOST);
  }

  private long whole(Map<?, ?> fields, String key, long least, long most)
      throws InstanceFileException {
    Object value = fields.get(key);
    if (value instanceof Integer || value instanceof Long) {
      long number = ((Number) value).longValue();
      if (number >= least && number <= most) {
        return number;
      }
    }
    throw wrong(key + " is " + value + ", must be a whole number from " + least + " to " + most);
  }

  private InstanceFileException wrong(String what) {
    return new InstanceFileException(where + what);
  }
}
