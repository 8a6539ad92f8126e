package org.slatwright.exporter.csv;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.slatwright.testkit.Approved;
import org.slatwright.testkit.WareRack;

/** Whole tables, as somebody found them right. */
class CsvGoldenTest {

  @ParameterizedTest
  @ValueSource(strings = {"cut-list", "hole-list", "quantities", "what-fits", "findings"})
  void tablesInMillimetres(String table) throws IOException {
    String received = Written.plan(WareRack.inMillimetres(), "decimal").text(table + ".csv");
    Approved.check(getClass(), table + ".approved.csv", received);
  }

  @ParameterizedTest
  @ValueSource(strings = {"decimal", "fractions"})
  void holesInInches(String inches) throws IOException {
    String received = Written.plan(WareRack.inInches(), inches).text("hole-list.csv");
    Approved.check(getClass(), "hole-list-" + inches + ".approved.csv", received);
  }

  @Test
  void cutsInFractions() throws IOException {
    String received = Written.plan(WareRack.inInches(), "fractions").text("cut-list.csv");
    Approved.check(getClass(), "cut-list-fractions.approved.csv", received);
  }

  @Test
  void quantitiesInInches() throws IOException {
    String received = Written.plan(WareRack.inInches(), "decimal").text("quantities.csv");
    Approved.check(getClass(), "quantities-inches.approved.csv", received);
  }
}
