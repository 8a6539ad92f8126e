package org.slatwright.design.checks;

import java.util.function.Function;
import java.util.function.Predicate;
import org.slatwright.api.plan.Finding;
import org.slatwright.design.sizing.Rack;

/**
 * What can hurt whoever builds or uses a rack.
 *
 * @param topic one or two words
 * @param concerns which racks it is said of
 * @param text what to do about it
 * @param source where that is written
 */
record Caution(String topic, Predicate<Rack> concerns, Function<Rack, String> text, String source) {

  static Caution always(String topic, String text, String source) {
    return when(rack -> true, topic, text, source);
  }

  static Caution when(Predicate<Rack> concerns, String topic, String text, String source) {
    return new Caution(topic, concerns, rack -> text, source);
  }

  Finding of(Rack rack) {
    return new Finding(
        Finding.Severity.NOTE, "caution", topic, text.apply(rack), "", "", "", source);
  }
}
