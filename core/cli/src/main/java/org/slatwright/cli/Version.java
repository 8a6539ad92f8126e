package org.slatwright.cli;

import org.slatwright.api.export.Exporter;
import picocli.CommandLine.IVersionProvider;

/** What {@code --version} says; the number is the jar's. */
final class Version implements IVersionProvider {

  @Override
  public String[] getVersion() {
    String number = Slatwright.class.getPackage().getImplementationVersion();
    return new String[] {
      "slatwright "
          + (number == null ? "(unpacked)" : number)
          + ", plugin api "
          + Exporter.API_VERSION
    };
  }
}
