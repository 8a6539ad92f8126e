package org.slatwright.cli;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.List;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import java.util.concurrent.RejectedExecutionException;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.slatwright.cli.sizes.SizesRow;
import org.slatwright.cli.sizes.SizesTable;
import org.slatwright.cli.sizes.TableException;
import org.slatwright.cli.sizes.Workers;

/**
 * Works through a table, several rows at once. Few rows are under way at any time, however long the
 * table is, and what came of them is told in their order.
 */
final class SizesRun {

  private static final int ROWS_A_THREAD = 4;

  private final Session session;
  private final String table;
  private final RowPlan plan;
  private final Queue<UnderWay> underWay = new ArrayDeque<>();
  private ExitStatus status = ExitStatus.DONE;
  private int rows;
  private int written;
  private int wrong;
  private int warned;
  private boolean cutShort;

  private record UnderWay(SizesRow row, Future<RowPlan.Outcome> outcome) {}

  /**
   * Over one table.
   *
   * @param table its name, to show in front of complaints
   */
  SizesRun(Session session, String table, RowPlan plan) {
    this.session = session;
    this.table = table;
    this.plan = plan;
  }

  /** Writes every row that can be written; gives the worst that came of one. */
  ExitStatus all(SizesTable sizes) throws Refusal, IOException {
    int threads = Runtime.getRuntime().availableProcessors();
    try (Workers workers = new Workers(threads)) {
      Optional<SizesRow> row = next(sizes);
      while (row.isPresent()) {
        rows++;
        submit(row.get(), workers);
        if (underWay.size() >= threads * ROWS_A_THREAD) {
          tellFirst();
        }
        row = next(sizes);
      }
      while (!underWay.isEmpty()) {
        tellFirst();
      }
    }
    if (rows == 0 && !cutShort) {
      throw new Refusal(ExitStatus.RACK_WRONG, table + ": error: the table has no rows");
    }
    return status;
  }

  /** {@code 998 of 1000 plans written into trays; …}. */
  String summary(String into) {
    String errors = wrong == 0 ? "" : "; " + wrong + " with errors";
    String warnings = warned == 0 ? "" : "; " + warned + " with warnings";
    String rest = cutShort ? "; the rest of the table was not read" : "";
    return written + " of " + rows + " plans written into " + into + errors + warnings + rest;
  }

  /** {@code sizes.csv:1: error: there is no key rack.uprigth; did you mean rack.upright?}. */
  static String complaint(String table, TableException wrong) {
    String place = wrong.line() == 0 ? table : table + ":" + wrong.line();
    return wrong.faults().stream()
        .flatMap(fault -> lines(place, fault))
        .collect(Collectors.joining("\n"));
  }

  /** Folded, but for the changes that would help, which stand on lines of their own. */
  private static Stream<String> lines(String place, String complaint) {
    List<String> all = complaint.lines().toList();
    return Stream.concat(
        Folding.lines(place + ": error: ", "    ", all.get(0)).stream(), all.stream().skip(1));
  }

  /** The next row; what cannot be read any further is told after what was. */
  private Optional<SizesRow> next(SizesTable sizes) throws IOException, Refusal {
    try {
      return sizes.next();
    } catch (TableException e) {
      while (!underWay.isEmpty()) {
        tellFirst();
      }
      worst(ExitStatus.RACK_WRONG);
      cutShort = true;
      rows += e.line() == 0 ? 0 : 1;
      session.err().println(complaint(table, e));
      return Optional.empty();
    }
  }

  private void submit(SizesRow row, Workers workers) throws Refusal {
    try {
      underWay.add(new UnderWay(row, workers.submit(() -> plan.of(row))));
    } catch (RejectedExecutionException e) {
      throw stopped();
    }
  }

  private void tellFirst() throws Refusal {
    UnderWay first = underWay.remove();
    try {
      tell(first.row(), first.outcome().get());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw stopped();
    } catch (ExecutionException e) {
      throw new IllegalStateException(e.getCause());
    }
  }

  private void tell(SizesRow row, RowPlan.Outcome outcome) throws Refusal {
    outcome.folder().ifPresent(session.out()::println);
    LeftoverText.of(outcome.leftovers()).ifPresent(session.err()::println);
    written += outcome.folder().isPresent() ? 1 : 0;
    wrong += outcome.folder().isPresent() && outcome.status() == ExitStatus.RACK_WRONG ? 1 : 0;
    warned += outcome.warned() ? 1 : 0;
    worst(outcome.status());
    for (String complaint : outcome.complaints()) {
      String place = table + ":" + row.line();
      if (outcome.status() == ExitStatus.NOT_WRITTEN) { // it names a path, which is to be copied
        session.err().println(place + ": error: " + complaint);
      } else {
        lines(place, complaint).forEach(session.err()::println);
      }
    }
    if (session.out().checkError()) { // as of a pipe whose reader has gone
      throw stopped();
    }
  }

  private void worst(ExitStatus other) {
    status = status.code() >= other.code() ? status : other;
  }

  private static Refusal stopped() {
    return new Refusal(ExitStatus.NOT_WRITTEN, "error: stopped; every plan that is there is whole");
  }
}
