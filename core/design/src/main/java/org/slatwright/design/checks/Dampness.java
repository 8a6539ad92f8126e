package org.slatwright.design.checks;

import java.util.stream.Stream;
import org.slatwright.api.plan.Finding;

/**
 * What glue and fixings must bear where the air is damp or the rack gets wet: durability classes of
 * EN 204, of which D3 is for places outdoors that the weather does not reach, D4 for those that it
 * reaches when the wood is coated; fixings by EN 1995-1-1, table 4.1 (from memory).
 */
final class Dampness implements Rule {

  @Override
  public Stream<Finding> check(Design design) {
    return switch (design.rack().climate()) {
      case INDOORS -> Stream.empty();
      case COVERED ->
          Stream.of(
              note(
                  "in damp air the glue must be of durability class D3 or D4 and the fixings"
                      + " galvanised or stainless"));
      case OUTDOORS ->
          Stream.of(
              note(
                  "outdoors the glue must be of durability class D4, the wood coated all over, end"
                      + " grain too, and the fixings stainless or hot-dip galvanised; loaded wood"
                      + " creeps far more than indoors"));
    };
  }

  private static Finding note(String message) {
    return new Finding(
        Finding.Severity.NOTE,
        "dampness",
        "load.climate",
        message,
        "",
        "",
        "",
        "EN 204; EN 1995-1-1, 3.1.4 and 4.2 (fixings from memory)");
  }
}
