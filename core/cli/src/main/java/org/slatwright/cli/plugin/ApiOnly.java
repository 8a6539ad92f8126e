package org.slatwright.cli.plugin;

import org.slatwright.api.export.Exporter;

/**
 * What a plugin shares with the command line: the JDK and the api. It brings every other library
 * itself, in the version it was built with.
 */
final class ApiOnly extends ClassLoader {

  private static final String API = "org.slatwright.api.";

  ApiOnly() {
    super("slatwright api", ClassLoader.getPlatformClassLoader());
  }

  @Override
  protected Class<?> findClass(String name) throws ClassNotFoundException {
    if (name.startsWith(API)) {
      return Exporter.class.getClassLoader().loadClass(name);
    }
    throw new ClassNotFoundException(name);
  }
}
