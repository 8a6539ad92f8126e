package org.slatwright.api.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LengthFormatTest {

  private static final LengthFormat MM = new LengthFormat(Unit.MM);
  private static final LengthFormat INCH = new LengthFormat(Unit.INCH);

  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "1, 0.000001",
    "37600000, 37.6",
    "1500000000, 1500",
    "-3175000, -3.175",
    "-1, -0.000001"
  })
  void millimetresShowEveryDigitThereIs(long nanometres, String number) {
    assertEquals(number, MM.number(new Length(nanometres)));
  }

  @ParameterizedTest
  @CsvSource({
    "0, 64, 0",
    "1, 64, 1/64",
    "2, 64, 1/32",
    "32, 64, 1/2",
    "64, 64, 1",
    "280, 64, 4 3/8",
    "-1, 4, -1/4",
    "-7, 4, -1 3/4",
    "54, 1, 54"
  })
  void inchesShowReducedFractions(long numerator, long denominator, String number) {
    assertEquals(number, INCH.number(Length.inches(numerator, denominator)));
  }

  @Test
  void inchesAreDecimalWhereAFractionCannotSayIt() {
    assertEquals("1.7323", INCH.number(Length.mm(44)));
    assertFalse(INCH.isExact(Length.mm(44)));
    assertTrue(INCH.isExact(Length.inches(1, 64)));
    assertTrue(MM.isExact(new Length(1)));
  }

  @Test
  void lessThanTheLastDigitIsZeroWithoutASign() {
    assertEquals("0", INCH.number(new Length(-1)));
    assertEquals("0", MM.number(Length.ZERO));
  }

  @Test
  void theUnitFollows() {
    assertEquals("1500 mm", MM.withUnit(Length.mm(1500)));
    assertEquals("4 3/8\"", INCH.withUnit(Length.inches(35, 8)));
    assertEquals("37.6 mm", Length.roundedMm(37.6).toString());
  }

  /** By hand: 3 7/16 in lies midway between two eighths and goes up. */
  @Test
  void whatIsReckonedIsRoundedToTheMillimetreOrTheEighth() {
    assertEquals(Length.mm(423), MM.rounded(Length.roundedMm(422.6)));
    assertEquals(Length.mm(422), MM.rounded(Length.roundedMm(422.4)));
    assertEquals(Length.inches(7, 2), INCH.rounded(Length.inches(55, 16)));
    assertEquals(Length.inches(133, 8), INCH.rounded(Length.roundedMm(422.4)));
  }

  @Test
  void aSectionIsTwoSizes() {
    assertEquals("44 × 70 mm", MM.section(Length.mm(44), Length.mm(70)));
    assertEquals("1 1/2\" × 3 1/2\"", INCH.section(Length.inches(3, 2), Length.inches(7, 2)));
  }

  @Test
  void aSizeIsThree() {
    assertEquals("1500 × 44 × 70 mm", MM.size(Length.mm(1500), Length.mm(44), Length.mm(70)));
    assertEquals(
        "59\" × 1 1/2\" × 3 1/2\"",
        INCH.size(Length.inches(59, 1), Length.inches(3, 2), Length.inches(7, 2)));
  }

  @Test
  void tablesGetPlainDecimals() {
    assertEquals("4.375", INCH.decimal(Length.inches(35, 8)));
    assertEquals("0.015625", INCH.decimal(Length.inches(1, 64)));
    assertEquals("1500", MM.decimal(Length.mm(1500)));
  }

  /** Shop drawings in wood tell feet only above 72 or 96 in: common practice, from memory. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "6144 | 96 | 96\"",
        "6145 | 8' 1/64\" | 8' 1/64\"",
        "6320 | 8' 2 3/4\" | 8' 2 3/4\"",
        "6912 | 9' | 9'",
        "-6920 | -9' 1/8\" | -9' 1/8\"",
        "2 | 1/32 | 1/32\""
      })
  void longLengthsAreToldInFeetWhereTheMakerWantsIt(
      int sixtyFourths, String number, String withUnit) {
    LengthFormat feet = new LengthFormat(Unit.INCH, Optional.of(Length.inches(96, 1)));
    Length length = Length.inches(sixtyFourths, 64);

    assertEquals(number, feet.number(length));
    assertEquals(withUnit, feet.withUnit(length));
    assertEquals(
        Optional.of(length.abs()),
        new LengthGrammar(Unit.INCH).read(feet.withUnit(length.abs())),
        "the rack file reads it back");
  }

  @Test
  void inMillimetresThereAreNoFeet() {
    assertThrows(
        IllegalArgumentException.class,
        () -> new LengthFormat(Unit.MM, Optional.of(Length.mm(2000))));
  }
}
