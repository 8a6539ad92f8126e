package org.slatwright.cli;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A folder to run commands in, gone when it is closed. */
record Desk(Path directory) implements AutoCloseable {

  /** What a command answered; the folder's own path is left out. */
  record Answer(String out, String err, int status) {}

  /** A new folder with copies of the files of another. */
  static Desk with(Path files) throws IOException {
    Path directory = Files.createTempDirectory("desk").toRealPath();
    try (Stream<Path> all = Files.list(files)) {
      for (Path file : all.toList()) {
        Files.copy(file, directory.resolve(file.getFileName()));
      }
    }
    return new Desk(directory);
  }

  Answer run(String... arguments) {
    return run(new byte[0], arguments);
  }

  Answer run(byte[] input, String... arguments) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    Session session =
        new Session(
            directory,
            Optional.of(directory.resolve("plugins")),
            new ByteArrayInputStream(input),
            new PrintWriter(out),
            new PrintWriter(err));
    int status = Slatwright.run(session, arguments);
    return new Answer(here(out), here(err), status);
  }

  /** Every file and folder there, relative. */
  List<String> contents() throws IOException {
    try (Stream<Path> all = Files.walk(directory)) {
      return all.filter(path -> !path.equals(directory))
          .map(path -> directory.relativize(path).toString())
          .sorted()
          .toList();
    }
  }

  @Override
  public void close() throws IOException {
    try (Stream<Path> all = Files.walk(directory)) {
      for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(path);
      }
    }
  }

  private String here(StringWriter text) {
    return text.toString().replace(directory + "/", "").replace(directory.toString(), ".");
  }
}
