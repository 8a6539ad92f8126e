package org.slatwright.testkit;

import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.locks.LockSupport;
import org.junit.platform.commons.util.StringUtils;
import org.slatwright.api.export.Destination;
import org.slatwright.api.export.ExportException;
import org.slatwright.api.export.ExportOption;
import org.slatwright.api.export.OptionValues;
import org.slatwright.api.plan.Plan;

/** One exporter for each rule, which breaks it. */
final class BadExporters {

  private static final AtomicInteger COUNTER = new AtomicInteger();

  private BadExporters() {}

  /** 101. */
  public static class Shouting extends PlainExporter {
    @Override
    public String format() {
      return "PLAIN";
    }
  }

  /** 102. */
  public static class Verbose extends PlainExporter {
    @Override
    public String description() {
      return "One line\nand another";
    }
  }

  /** 103. */
  public static class RepeatsAnOption extends PlainExporter {
    @Override
    public List<ExportOption> options() {
      List<ExportOption> twice = new ArrayList<>(super.options());
      twice.addAll(super.options());
      return twice;
    }
  }

  /** 104. */
  public static class WantsAName extends PlainExporter {
    private final String name;

    /** With a name. */
    public WantsAName(String name) {
      this.name = name;
    }

    @Override
    public String description() {
      return name;
    }
  }

  /** 105: the only one that is not in the service file, though it could be. */
  public static class Unlisted extends PlainExporter {}

  /** 106: any class of another jar is a library. */
  public static class Eager extends PlainExporter {
    @Override
    public String description() {
      return StringUtils.isBlank("") ? super.description() : "";
    }
  }

  /** 201. */
  public static class Escapes extends PlainExporter {
    @Override
    public void export(Plan plan, OptionValues options, Destination destination)
        throws IOException {
      destination.file("../title.txt", out -> {});
    }
  }

  /** 201, hidden. */
  public static class HidesARepeatedName extends PlainExporter {
    @Override
    public void export(Plan plan, OptionValues options, Destination destination)
        throws IOException {
      destination.file("title.txt", out -> {});
      try {
        destination.file("TITLE.txt", out -> {});
      } catch (IllegalArgumentException e) {
        return;
      }
    }
  }

  /** 201, late. */
  public static class WritesTooLate extends PlainExporter {
    @Override
    public void export(Plan plan, OptionValues options, Destination destination)
        throws IOException {
      List<OutputStream> kept = new ArrayList<>();
      destination.file("title.txt", kept::add);
      try {
        kept.get(0).write(1);
      } catch (IOException e) {
        return;
      }
    }
  }

  /** 202. */
  public static class Silent extends PlainExporter {
    @Override
    public void export(Plan plan, OptionValues options, Destination destination) {}
  }

  /** 203. */
  public static class Prints extends PlainExporter {
    @Override
    protected String text(Plan plan, OptionValues options) {
      System.out.print(" ");
      return super.text(plan, options);
    }
  }

  /** 203, beside the destination. */
  public static class Litters extends PlainExporter {
    /** Where; the test removes it. */
    static final Path LITTER = Path.of("litter.received.txt");

    @Override
    protected String text(Plan plan, OptionValues options) {
      try {
        Files.writeString(LITTER, "litter");
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
      return super.text(plan, options);
    }
  }

  /** 301. */
  public static class Counts extends PlainExporter {
    @Override
    protected String text(Plan plan, OptionValues options) {
      return super.text(plan, options) + COUNTER.incrementAndGet();
    }
  }

  /** 302: a field holds what only one export at a time can. */
  public static class Shares extends PlainExporter {
    private final AtomicInteger inside = new AtomicInteger();

    @Override
    protected String text(Plan plan, OptionValues options) {
      int together = inside.incrementAndGet();
      LockSupport.parkNanos(50_000_000);
      inside.decrementAndGet();
      return super.text(plan, options) + together;
    }
  }

  /** 303. */
  public static class SpeaksTheLocale extends PlainExporter {
    @Override
    protected String text(Plan plan, OptionValues options) {
      return super.text(plan, options) + String.format("%d", 12);
    }
  }

  /** 304. */
  public static class SetsAProperty extends PlainExporter {
    @Override
    protected String text(Plan plan, OptionValues options) {
      System.setProperty("org.slatwright.testkit.bad", "" + COUNTER.incrementAndGet());
      return super.text(plan, options);
    }
  }

  /** 401. */
  public static class RefusesAll extends PlainExporter {
    @Override
    public void export(Plan plan, OptionValues options, Destination destination)
        throws ExportException {
      throw new ExportException("not today");
    }
  }

  /** 402. */
  public static class FearsQuotes extends PlainExporter {
    @Override
    protected String text(Plan plan, OptionValues options) {
      if (plan.title().contains("\"")) {
        throw new IllegalStateException("unbalanced quotes");
      }
      return super.text(plan, options);
    }
  }

  /** 403. */
  public static class NeedsAJig extends PlainExporter {
    @Override
    protected String text(Plan plan, OptionValues options) {
      return super.text(plan, options) + plan.jig().orElseThrow().guideDepth();
    }
  }

  /** 404. */
  public static class NeedsASheet extends PlainExporter {
    @Override
    protected String text(Plan plan, OptionValues options) {
      return super.text(plan, options) + plan.sheets().get(0).name();
    }
  }

  /** 405. */
  public static class NeedsACutList extends PlainExporter {
    @Override
    protected String text(Plan plan, OptionValues options) {
      return super.text(plan, options) + plan.cutList().get(0).timber();
    }
  }

  /** 406. */
  public static class FearsReferenceLines extends PlainExporter {
    @Override
    protected String text(Plan plan, OptionValues options) {
      if (plan.title().equals("Every kind")) {
        throw new IllegalStateException("unknown operation");
      }
      return super.text(plan, options);
    }
  }

  /** 501. */
  public static class FailsOnAValue extends PlainExporter {
    @Override
    protected String text(Plan plan, OptionValues options) {
      if (options.value("letters").equals("small")) {
        throw new IllegalStateException("not done yet");
      }
      return super.text(plan, options);
    }
  }

  /** 502. */
  public static class AsksForMore extends PlainExporter {
    @Override
    protected String text(Plan plan, OptionValues options) {
      return super.text(plan, options) + options.value("colour");
    }
  }

  /** 601. */
  public static class Swallows extends PlainExporter {
    @Override
    public void export(Plan plan, OptionValues options, Destination destination)
        throws ExportException {
      try {
        super.export(plan, options, destination);
      } catch (IOException e) {
        return;
      }
    }
  }

  /** 602. */
  public static class Sulks extends PlainExporter {
    private boolean failed;

    @Override
    public void export(Plan plan, OptionValues options, Destination destination)
        throws ExportException, IOException {
      if (failed) {
        return;
      }
      failed = true;
      super.export(plan, options, destination);
      failed = false;
    }
  }

  /** 701. */
  public static class LeavesFilesOpen extends PlainExporter {
    private static final List<FileInputStream> OPEN =
        Collections.synchronizedList(new ArrayList<>());

    @Override
    protected String text(Plan plan, OptionValues options) {
      try {
        FileInputStream font = new FileInputStream("pom.xml");
        OPEN.add(font);
        FileDescriptor descriptor = font.getFD();
        return super.text(plan, options) + descriptor.valid();
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }

    /** So that the tests themselves leave none. */
    static void closeAll() throws IOException {
      for (FileInputStream font : OPEN) {
        font.close();
      }
    }
  }

  /** 702. */
  public static class LeavesAThread extends PlainExporter {
    @Override
    protected String text(Plan plan, OptionValues options) {
      Thread thread = new Thread(() -> LockSupport.parkNanos(2_000_000_000L));
      thread.setName("left by " + Locale.ROOT + COUNTER.incrementAndGet());
      thread.start();
      return super.text(plan, options);
    }
  }
}
