package org.slatwright.design.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.slatwright.design.checks.Told.ORCHIDS;

import java.util.List;
import org.junit.jupiter.api.Test;

/** EN 204: D3 where the weather does not reach, D4 where it does. */
class DampnessTest {

  @Test
  void indoorsNothingIsSaid() throws Exception {
    assertEquals(List.of(), Told.of(ORCHIDS, "load.climate=indoors").by("dampness"));
  }

  @Test
  void underARoofGlueMustBearDampAir() throws Exception {
    assertTrue(
        Told.of(ORCHIDS, "load.climate=covered").the("dampness").message().contains("class D3"));
  }

  @Test
  void outdoorsGlueMustBearTheWeather() throws Exception {
    String message = Told.of(ORCHIDS, "load.climate=outdoors").the("dampness").message();

    assertTrue(message.contains("class D4"));
    assertTrue(message.contains("stainless"));
  }
}
