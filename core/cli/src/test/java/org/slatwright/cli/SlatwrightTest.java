package org.slatwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What can go wrong around a command, whichever it is. */
class SlatwrightTest {

  private final StringWriter err = new StringWriter();

  @ParameterizedTest
  @ValueSource(
      strings = {
        "schema",
        "formats",
        "check src/test/desk/trays.yaml",
        "export src/test/desk/trays.yaml --to csv --into DIR",
        "start DIR/new.yaml",
        "--help",
        "--version"
      })
  void aResultThatCannotBePrintedIsNotPassedOverInSilence(String command, @TempDir Path desk) {
    String[] arguments = command.replace("DIR", desk.toString()).split(" ");
    assertEquals(3, run(new FullDisk(), input(), arguments));
    assertTrue(told().endsWith("error: standard output could not be written\n"), this::told);
  }

  @Test
  void aNameThatNoFileCanHaveIsWrongUsage() {
    assertEquals(2, run(new StringWriter(), input(), "check", "a\0b"));
    assertEquals("error: a\0b cannot be a file name here\n", told());
  }

  @Test
  void aFaultOfOursIsOneLine() {
    InputStream faulty =
        new InputStream() {
          @Override
          public int read() {
            throw new IllegalStateException("two\nlines");
          }
        };
    assertEquals(3, run(new StringWriter(), faulty, "check", "-"));
    assertEquals(1, told().lines().count(), this::told);
    assertEquals(
        "error: slatwright itself is at fault, please report this: "
            + "java.lang.IllegalStateException: two lines at SlatwrightTest.java",
        told().replaceFirst("java:.*\n", "java"));
  }

  @Test
  void aRackFileWithoutEndIsRefused() {
    InputStream endless =
        new InputStream() {
          @Override
          public int read() {
            return '#';
          }
        };
    assertEquals(1, run(new StringWriter(), endless, "check", "-"));
    assertEquals(1, told().lines().count(), this::told);
  }

  private int run(Writer out, InputStream in, String... arguments) {
    PrintWriter results = new PrintWriter(out);
    Session session = new Session(Path.of(""), Optional.empty(), in, results, new PrintWriter(err));
    return Slatwright.run(session, arguments);
  }

  private String told() {
    return err.toString().replace(System.lineSeparator(), "\n");
  }

  private static InputStream input() {
    return new ByteArrayInputStream(new byte[0]);
  }

  private static final class FullDisk extends Writer {

    @Override
    public void write(char[] text, int from, int length) throws IOException {
      throw new IOException("no space left");
    }

    @Override
    public void flush() {}

    @Override
    public void close() {}
  }
}
