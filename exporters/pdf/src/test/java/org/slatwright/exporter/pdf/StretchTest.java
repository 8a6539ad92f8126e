package org.slatwright.exporter.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.slatwright.api.export.ExportException;
import org.slatwright.api.measure.Length;

class StretchTest {

  private static final Length RULE = Length.mm(150);

  @Test
  void aRuleThatMeasuresWhatItShouldLeavesThePageAsItIs() throws ExportException {
    assertEquals(Stretch.NONE, Stretch.against(RULE, List.of(Length.mm(150))));
  }

  @Test
  void oneLengthHoldsBothWays() throws ExportException {
    assertEquals(
        new Stretch(150 / 148.6, 150 / 148.6),
        Stretch.against(RULE, List.of(Length.roundedMm(148.6))));
  }

  @Test
  void twoLengthsAreAcrossAndUp() throws ExportException {
    assertEquals(
        new Stretch(150.0 / 148, 150.0 / 151),
        Stretch.against(RULE, List.of(Length.mm(148), Length.mm(151))));
  }

  @Test
  void aTenthEitherWayIsTheMost() throws ExportException {
    assertEquals(
        new Stretch(150.0 / 135, 150.0 / 165),
        Stretch.against(RULE, List.of(Length.mm(135), Length.mm(165))));
  }

  @ParameterizedTest
  @ValueSource(doubles = {1, 134.999, 165.001, 1500})
  void whatNoPrinterDoesIsRefused(double measured) {
    Length length = Length.roundedMm(measured);
    for (List<Length> lengths :
        List.of(
            List.of(length), List.of(Length.mm(150), length), List.of(length, Length.mm(150)))) {
      String message =
          assertThrows(ExportException.class, () -> Stretch.against(RULE, lengths)).getMessage();
      assertTrue(
          message.startsWith(
              "printed-length is what the check rule of 150 mm measured on paper, from 135 mm to"
                  + " 165 mm, not "
                  + length
                  + ": "),
          message);
    }
  }
}
