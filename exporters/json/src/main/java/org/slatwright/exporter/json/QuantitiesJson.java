package org.slatwright.exporter.json;

import java.io.IOException;
import org.slatwright.api.plan.Fit;
import org.slatwright.api.plan.Quantities;

/** What the rack weighs and uses up, and what goes on its shelves. */
final class QuantitiesJson {

  private final JsonWriter json;

  QuantitiesJson(JsonWriter json) {
    this.json = json;
  }

  /** Between its braces. */
  void quantities(Quantities all) throws IOException {
    json.whole("grams", all.mass().grams());
    json.point("centreOfGravity", all.centreOfGravity());
    json.objects("parts", all.parts(), this::part);
    json.whole("finishSquareMillimetres", all.finishArea().squareMillimetres());
    json.whole("glueGrams", all.glue().grams());
    json.whole("dowels", all.dowels());
    json.length("dowelRod", all.dowelRod());
    json.whole("fixings", all.fixings());
  }

  /** Between its braces. */
  void fit(Fit fit) throws IOException {
    json.text("thing", fit.thing());
    json.whole("shelf", fit.shelf());
    json.flag("turned", fit.turned());
    json.whole("across", fit.across());
    json.whole("deep", fit.deep());
    if (fit.high().isPresent()) {
      json.whole("high", fit.high().get());
    }
    json.length("spareAcross", fit.spareAcross());
    json.length("spareDeep", fit.spareDeep());
    if (fit.spareAbove().isPresent()) {
      json.length("spareAbove", fit.spareAbove().get());
    }
    json.flag("enough", fit.enough());
  }

  private void part(Quantities.PartMass part) throws IOException {
    json.text("part", part.part().mark());
    json.whole("gramsEach", part.each().grams());
  }
}
