package org.slatwright.api.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class OptionValuesTest {

  private static final List<ExportOption> DECLARED =
      List.of(
          new ExportOption("lettering", "how text is written", List.of("font", "outlines")),
          new ExportOption("ink", "how dark lines are", List.of("black", "grey")));

  @Test
  void theFirstValueIsTakenWhereNoneIsGiven() {
    OptionValues values = OptionValues.defaults(DECLARED);

    assertEquals("font", values.value("lettering"));
    assertEquals("black", values.value("ink"));
  }

  @Test
  void aValueThatIsGivenLeavesTheOthersAsTheyAre() {
    OptionValues values = OptionValues.of(DECLARED, Map.of("ink", "grey"));

    assertEquals("font", values.value("lettering"));
    assertEquals("grey", values.value("ink"));
  }

  @Test
  void aValueThatIsNotAllowedIsRefusedWithThoseThatAre() {
    assertRefused(
        "option ink takes black, grey, not red",
        () -> OptionValues.of(DECLARED, Map.of("ink", "red")));
    assertRefused(
        "option ink takes black, grey, not Grey",
        () -> OptionValues.of(DECLARED, Map.of("ink", "Grey")));
  }

  @Test
  void anUnknownOptionIsRefusedWithThoseThatThereAre() {
    assertRefused(
        "no option inc: it has lettering, ink",
        () -> OptionValues.of(DECLARED, Map.of("inc", "grey")));
    assertRefused(
        "no option ink: it has none", () -> OptionValues.of(List.of(), Map.of("ink", "grey")));
  }

  @Test
  void anExporterReadsOnlyWhatItDeclares() {
    assertRefused(
        "option paper is not declared", () -> OptionValues.defaults(DECLARED).value("paper"));
  }

  @Test
  void anOptionAllowsSomething() {
    assertRefused("option ink allows no value", () -> new ExportOption("ink", "", List.of()));
  }

  private static void assertRefused(String message, Runnable making) {
    assertEquals(message, assertThrows(IllegalArgumentException.class, making::run).getMessage());
  }
}
