package org.slatwright.cli.output;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.slatwright.api.export.Destination;
import org.slatwright.api.export.OutputNames;

/**
 * A folder that files are written to, each whole or not at all.
 *
 * <p>{@link #batch} gives a destination for one exporter; a batch that is {@linkplain Batch#keep
 * kept} is in place after {@link #publish}, any other is forgotten. Closing removes what was not
 * published, and the folders made for it.
 */
public final class OutputFolder implements AutoCloseable {

  private static final String STAGING_PREFIX = ".slatwright-";

  private final Path folder;
  private final boolean replace;
  private final Folders folders = new Folders();
  private final OutputNames names = new OutputNames();
  private final List<Staged> kept = new ArrayList<>();
  private final Path staging;
  private int count;

  /** A complete file that waits to be moved to its place. */
  private record Staged(Path content, Path target) {}

  /**
   * The folder, made when it is not there.
   *
   * @param replace whether files that exist are replaced
   * @throws OutputException when the folder cannot be made or written to
   */
  public OutputFolder(Path folder, boolean replace) throws OutputException {
    this.folder = folder;
    this.replace = replace;
    try {
      folders.make(folder);
      staging = Files.createTempDirectory(folder.toAbsolutePath(), STAGING_PREFIX);
    } catch (IOException e) {
      folders.takeBack();
      throw OutputException.cannotWrite(folder, e);
    }
  }

  /** A destination for files that belong together. */
  public Batch batch() {
    return new Batch();
  }

  /**
   * Moves every kept file to its place, each in one step, in the order they were written.
   *
   * @param placed told of each file as soon as it is in place, so that when a later one fails it is
   *     known which are there
   * @throws OutputException when a file exists and may not be replaced (then nothing was moved), or
   *     cannot be moved
   */
  public void publish(Consumer<Path> placed) throws OutputException {
    refuseClashes();
    for (Staged file : kept) {
      try {
        folders.make(file.target().toAbsolutePath().getParent());
        requireInside(file.target());
        Files.move(file.content(), file.target(), StandardCopyOption.ATOMIC_MOVE);
        folders.keep();
      } catch (IOException e) {
        throw OutputException.cannotWrite(file.target(), e);
      }
      placed.accept(file.target());
    }
  }

  /** Files of an older plan, perhaps: they lie among those kept and are none of them. */
  public List<Path> leftovers() {
    return Leftovers.of(folder, kept.stream().map(Staged::target).collect(Collectors.toSet()));
  }

  /** Removes what was not published. */
  @Override
  public void close() {
    try (Stream<Path> parts = Files.list(staging)) {
      for (Path part : parts.toList()) {
        Files.deleteIfExists(part);
      }
      Files.deleteIfExists(staging);
    } catch (IOException e) {
      // What is left is a hidden folder of unfinished files: litter, and no reason to fail.
    }
    folders.takeBack();
  }

  private void refuseClashes() throws OutputException {
    List<String> clashes =
        kept.stream()
            .map(Staged::target)
            .filter(this::isInTheWay)
            .map(target -> "\n  " + target)
            .toList();
    if (!clashes.isEmpty()) {
      String why = replace ? "these are folders" : "these exist (--replace writes over files)";
      throw new OutputException("nothing was written: " + why + String.join("", clashes));
    }
  }

  private boolean isInTheWay(Path target) {
    return replace
        ? Files.isDirectory(target, LinkOption.NOFOLLOW_LINKS)
        : Files.exists(target, LinkOption.NOFOLLOW_LINKS);
  }

  /** A name cannot climb out by itself, but a link that lies in the folder could lead out. */
  private void requireInside(Path target) throws IOException {
    if (!target.toAbsolutePath().getParent().toRealPath().startsWith(folder.toRealPath())) {
      throw new OutputException("cannot write " + target + ": a link leads out of " + folder);
    }
  }

  /** The files of one exporter. */
  public final class Batch implements Destination {

    private final List<Staged> files = new ArrayList<>();
    private OutputException failure;

    private Batch() {}

    @Override
    public void file(String name, Content content) throws IOException {
      names.claim(name);
      Path target = folder.resolve(name);
      Path part = staging.resolve(Integer.toString(count++));
      try (OutputStream out = new NamedStream(target, openPart(part, target))) {
        content.writeTo(out);
      } catch (OutputException e) {
        failure = e;
        throw e;
      }
      files.add(new Staged(part, target));
    }

    /**
     * Has these files published.
     *
     * @throws OutputException when one of them could not be written, even if that was hidden
     */
    public void keep() throws OutputException {
      requireWritable();
      kept.addAll(files);
    }

    /**
     * Passes on the failure of the disk, if there was one.
     *
     * @throws OutputException when a file could not be written, even if that was hidden
     */
    public void requireWritable() throws OutputException {
      if (failure != null) {
        throw failure;
      }
    }

    private OutputStream openPart(Path part, Path target) throws OutputException {
      try {
        return new BufferedOutputStream(Files.newOutputStream(part));
      } catch (IOException e) {
        throw OutputException.cannotWrite(target, e);
      }
    }
  }
}
