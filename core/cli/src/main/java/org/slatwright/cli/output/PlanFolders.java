package org.slatwright.cli.output;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * A folder that holds one folder a plan, each of which appears with all its files at once. May be
 * used by several threads, each for a plan of its own.
 */
public final class PlanFolders implements AutoCloseable {

  private static final String STAGING_PREFIX = ".slatwright-";

  private final Path folder;
  private final boolean replace;
  private final Folders folders = new Folders();

  /**
   * A plan that is in its place.
   *
   * @param leftovers files among its own that were not written with it
   */
  public record Written(Path folder, List<Path> leftovers) {

    public Written {
      leftovers = List.copyOf(leftovers);
    }
  }

  /** Writes what belongs into one folder. */
  @FunctionalInterface
  public interface Content {
    /** Writes and keeps everything, or throws. */
    void writeTo(OutputFolder output) throws OutputException;
  }

  /**
   * The folder around the plans, made when it is not there.
   *
   * @param replace whether files of plans that exist are replaced
   * @throws OutputException when the folder cannot be made
   */
  public PlanFolders(Path folder, boolean replace) throws OutputException {
    this.folder = folder;
    this.replace = replace;
    try {
      folders.make(folder);
    } catch (IOException e) {
      folders.takeBack();
      throw OutputException.cannotWrite(folder, e);
    }
  }

  /**
   * Writes one plan; of a plan that is there already, each file is replaced in one step.
   *
   * @throws OutputException when it exists and may not be replaced, or cannot be written
   */
  public Written write(String name, Content content) throws OutputException {
    Path target = folder.resolve(name);
    if (!Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
      writeFresh(target, content);
      return new Written(target, List.of());
    }
    if (replace) {
      return new Written(target, fill(target, content));
    }
    throw new OutputException(target + " exists (--replace writes over its files)");
  }

  /** Removes the folder again when nothing was written into it. */
  @Override
  public void close() {
    folders.takeBack();
  }

  private void writeFresh(Path target, Content content) throws OutputException {
    try {
      Path staging = Files.createTempDirectory(folder.toAbsolutePath(), STAGING_PREFIX);
      Path fresh = staging.resolve("plan");
      try {
        fill(fresh, content);
        Files.move(fresh, target, StandardCopyOption.ATOMIC_MOVE);
      } catch (OutputException e) {
        // The maker asked for the target, and knows no other name.
        throw new OutputException(e.getMessage().replace(fresh.toString(), target.toString()), e);
      } finally {
        delete(staging);
      }
    } catch (IOException e) {
      throw OutputException.cannotWrite(target, e);
    }
  }

  /** Gives what it found among the files. */
  private List<Path> fill(Path target, Content content) throws OutputException {
    try (OutputFolder output = new OutputFolder(target, replace)) {
      content.writeTo(output);
      output.publish(file -> {});
      return output.leftovers();
    }
  }

  private static void delete(Path staging) throws IOException {
    try (Stream<Path> all = Files.walk(staging)) {
      for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(path);
      }
    }
  }
}
