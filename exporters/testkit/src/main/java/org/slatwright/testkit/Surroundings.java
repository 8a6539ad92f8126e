package org.slatwright.testkit;

import com.sun.management.UnixOperatingSystemMXBean;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TimeZone;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What an exporter has no business with. */
record Surroundings(
    Locale locale,
    TimeZone timeZone,
    Map<String, String> properties,
    Set<String> workingDirectory) {

  static Surroundings now() {
    // Comes first: the JDK notes it in the property user.timezone when it is first asked for.
    TimeZone timeZone = TimeZone.getDefault();
    Map<String, String> properties = new TreeMap<>();
    System.getProperties()
        .stringPropertyNames()
        .forEach(name -> properties.put(name, System.getProperty(name)));
    return new Surroundings(Locale.getDefault(), timeZone, properties, entriesOf(Path.of("")));
  }

  /** What {@code task} gives when run with another default locale and time zone. */
  static <T> T in(Locale locale, String timeZone, Supplier<T> task) {
    Locale usualLocale = Locale.getDefault();
    TimeZone usualTimeZone = TimeZone.getDefault();
    try {
      Locale.setDefault(locale);
      TimeZone.setDefault(TimeZone.getTimeZone(timeZone));
      return task.get();
    } finally {
      Locale.setDefault(usualLocale);
      TimeZone.setDefault(usualTimeZone);
    }
  }

  /** What {@code task} prints to standard output and standard error. */
  static String printedDuring(Runnable task) {
    PrintStream usualOut = System.out;
    PrintStream usualErr = System.err;
    ByteArrayOutputStream printed = new ByteArrayOutputStream();
    try (PrintStream kept = new PrintStream(printed, true, StandardCharsets.UTF_8)) {
      System.setOut(kept);
      System.setErr(kept);
      task.run();
    } finally {
      System.setOut(usualOut);
      System.setErr(usualErr);
    }
    return printed.toString(StandardCharsets.UTF_8);
  }

  static boolean countsOpenFiles() {
    return ManagementFactory.getOperatingSystemMXBean() instanceof UnixOperatingSystemMXBean;
  }

  static long openFiles() {
    return ManagementFactory.getPlatformMXBean(UnixOperatingSystemMXBean.class)
        .getOpenFileDescriptorCount();
  }

  /** The threads that would keep the program from ending. */
  static Set<Thread> lastingThreads() {
    return Thread.getAllStackTraces().keySet().stream()
        .filter(thread -> thread.isAlive() && !thread.isDaemon())
        .collect(Collectors.toSet());
  }

  private static Set<String> entriesOf(Path folder) {
    try (Stream<Path> entries = Files.list(folder.toAbsolutePath())) {
      Set<String> stamped = new TreeSet<>();
      for (Path entry : entries.toList()) {
        stamped.add(entry.getFileName() + " of " + Files.getLastModifiedTime(entry));
      }
      return stamped;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
