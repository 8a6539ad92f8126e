package org.slatwright.exporter.html;

import java.util.List;
import org.slatwright.api.measure.Unit;
import org.slatwright.api.plan.Plan;

/** What the page does by itself, and what it does not. */
final class About {

  private About() {}

  static Section of(Plan plan) {
    Unit own = plan.lengths().unit();
    String inWords = own.metricOrInch("millimetres", "inches");
    return new Section(
        "about",
        "About this page",
        List.of(
            Element.of(
                "p",
                "Ticks stay on this device, for this plan alone. The page asks the network for"
                    + " nothing: keep the file, and it works in a shop without a signal."),
            Element.of(
                "p",
                "The plan was made in "
                    + inWords
                    + ". Lengths in tables and steps are carried exactly and follow the switch of"
                    + " units; inches that no fraction down to 1/64 can say are rounded to four"
                    + " decimals. Drawings, findings and descriptions keep "
                    + inWords
                    + ". Before you cut, set the switch to the unit of your rule.")));
  }
}
