package org.slatwright.testkit;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.slatwright.api.export.Exporter;

/**
 * Loads an exporter anew, constructs it, lists it, and remembers which classes that took. A library
 * costs every command that lists the formats, so it should be none.
 */
final class ListingWatcher extends ClassLoader {

  private final SortedSet<String> loaded = new TreeSet<>();
  private final ClassLoader origin;

  private ListingWatcher(ClassLoader origin) {
    super(origin);
    this.origin = origin;
  }

  /** The names of the classes that are neither the exporter's own, the api's nor the JDK's. */
  static List<String> librariesLoadedBy(Class<?> exporter) {
    ListingWatcher watcher = new ListingWatcher(exporter.getClassLoader());
    try {
      Class<?> again = watcher.loadClass(exporter.getName());
      Exporter listed = (Exporter) again.getConstructor().newInstance();
      listed.format();
      listed.description();
      listed.options();
    } catch (ReflectiveOperationException e) {
      throw new AssertionError(exporter + " cannot be constructed", e);
    }
    String home = home(exporter, exporter.getName());
    return watcher.loaded.stream().filter(name -> !home(exporter, name).equals(home)).toList();
  }

  @Override
  protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
    synchronized (getClassLoadingLock(name)) {
      Class<?> known = findLoadedClass(name);
      if (known != null) {
        return known;
      }
      if (isShared(name)) {
        return super.loadClass(name, resolve);
      }
      byte[] bytes = bytesOf(name);
      loaded.add(name);
      return defineClass(name, bytes, 0, bytes.length);
    }
  }

  /** The api must be the same class on both sides; the JDK cannot be loaded anew. */
  private static boolean isShared(String name) {
    return name.startsWith("org.slatwright.api.")
        || ClassLoader.getPlatformClassLoader().getResource(path(name)) != null;
  }

  private byte[] bytesOf(String name) throws ClassNotFoundException {
    try (InputStream in = origin.getResourceAsStream(path(name))) {
      if (in == null) {
        throw new ClassNotFoundException(name);
      }
      return in.readAllBytes();
    } catch (IOException e) {
      throw new ClassNotFoundException(name, e);
    }
  }

  /** The jar or folder that a class lies in. */
  private static String home(Class<?> exporter, String name) {
    URL url = exporter.getClassLoader().getResource(path(name));
    return url.toString().replace(path(name), "");
  }

  private static String path(String className) {
    return className.replace('.', '/') + ".class";
  }
}
