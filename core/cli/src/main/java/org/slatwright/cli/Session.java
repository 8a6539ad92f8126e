package org.slatwright.cli;

import java.io.File;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.InputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Where one command runs.
 *
 * @param directory what relative paths start from
 * @param plugins the distribution's own folder of plugin jars
 * @param in standard input
 * @param out results
 * @param err complaints
 */
record Session(
    Path directory, Optional<Path> plugins, InputStream in, PrintWriter out, PrintWriter err) {

  private static final String HOME_PROPERTY = "slatwright.home";

  /** This process. */
  static Session ofProcess() {
    Optional<Path> home = Optional.ofNullable(System.getProperty(HOME_PROPERTY)).map(Path::of);
    return new Session(
        Path.of(""),
        home.map(folder -> folder.resolve("plugins")),
        System.in,
        writer(FileDescriptor.out),
        writer(FileDescriptor.err));
  }

  /** A path that the maker wrote, from the directory that the command runs in. */
  Path resolve(String path) {
    return directory.resolve(path);
  }

  /** Tells what is no complaint, folded at the width of a terminal. */
  void note(String text) {
    Folding.lines("note: ", "    ", text).forEach(err::println);
  }

  /** UTF-8, but for a Windows console, which has a code page of its own. */
  private static PrintWriter writer(FileDescriptor stream) {
    String console =
        System.getProperty("stdout.encoding", System.getProperty("sun.stdout.encoding"));
    boolean windows = File.separatorChar == '\\';
    Charset charset =
        windows && console != null ? Charset.forName(console) : StandardCharsets.UTF_8;
    return new PrintWriter(new OutputStreamWriter(new FileOutputStream(stream), charset), true);
  }
}
