package org.slatwright.cli.output;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;

/**
 * A stream whose failures name the file that is meant. A failure comes up again on closing, so that
 * it is not lost when whoever writes hides it.
 */
final class NamedStream extends OutputStream {

  private final Path file;
  private final OutputStream out;
  private OutputException failure;

  NamedStream(Path file, OutputStream out) {
    this.file = file;
    this.out = out;
  }

  @Override
  public void write(int value) throws IOException {
    named(() -> out.write(value));
  }

  @Override
  public void write(byte[] bytes, int from, int length) throws IOException {
    named(() -> out.write(bytes, from, length));
  }

  @Override
  public void flush() throws IOException {
    named(out::flush);
  }

  @Override
  public void close() throws IOException {
    named(out::close);
    if (failure != null) {
      throw failure;
    }
  }

  private void named(Step step) throws OutputException {
    try {
      step.run();
    } catch (IOException e) {
      failure = OutputException.cannotWrite(file, e);
      throw failure;
    }
  }

  private interface Step {
    void run() throws IOException;
  }
}
