package org.slatwright.design.rackfile;

import java.util.List;

/** What a rack file was read from, so that it can be read again with a change. */
public final class Written {

  private final Node.Mapping tree;

  Written(Node.Mapping tree) {
    this.tree = tree;
  }

  RackFile with(String setting) throws RackFileException {
    return RackFileReader.read(tree, List.of(setting));
  }
}
