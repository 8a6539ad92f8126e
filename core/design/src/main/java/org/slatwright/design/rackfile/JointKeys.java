package org.slatwright.design.rackfile;

import org.slatwright.api.model.Fastener;

/** The keys of {@code joint}. */
record JointKeys(Kinds kinds) {

  private static final int MOST_DOWELS = 2;
  private static final int MOST_PER_END = 6;
  private static final String FIXING =
      "{ kind: brad, length: 40 mm, diameter: 1.2 mm, per-end: 2 }";

  RackFile.Joint read(Fields top) {
    Fields joint = top.group("joint", "{ dowels: 1, embedment: 35 mm }");
    RackFile.Joint read =
        new RackFile.Joint(
            joint.orDefault("dowels", Kinds.count(1, MOST_DOWELS), 1),
            joint.optional("embedment", kinds.length()),
            fixing(joint.group("fixing", FIXING)));
    joint.close();
    return read;
  }

  private RackFile.Fixing fixing(Fields fixing) {
    Kind<Fastener.Kind> kind = Kinds.oneOf(Fastener.Kind.values(), Fastener.Kind::word);
    RackFile.Fixing read =
        new RackFile.Fixing(
            fixing.orDefault("kind", kind, Fastener.Kind.BRAD).value(),
            fixing.optional("length", kinds.length()),
            fixing.optional("diameter", kinds.fineLength()),
            fixing.orDefault("per-end", Kinds.count(1, MOST_PER_END), 2).value());
    fixing.close();
    return read;
  }
}
