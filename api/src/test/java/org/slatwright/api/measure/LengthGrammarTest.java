package org.slatwright.api.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LengthGrammarTest {

  private static final LengthGrammar MM = new LengthGrammar(Unit.MM);
  private static final LengthGrammar INCH = new LengthGrammar(Unit.INCH);

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "44            | 44000000",
        "44.5          | 44500000",
        "0             | 0",
        "007           | 7000000",
        "44 mm         | 44000000",
        "44mm          | 44000000",
        "44   mm       | 44000000",
        "4.4 cm        | 44000000",
        "1.2 m         | 1200000000",
        "0.000001      | 1",
        "1/2           | 500000",
        "2 1/2 mm      | 2500000",
        "1 in          | 25400000",
        "54in          | 1371600000",
        "1 3/4 in      | 44450000",
        "1-3/4\"       | 44450000",
        "1-3/4 in      | 44450000",
        "3/8\"         | 9525000",
        "0.25 in       | 6350000",
        "1/64 in       | 396875",
        "6 ft          | 1828800000",
        "6'            | 1828800000",
        "6 1/2 ft      | 1981200000",
        "4' 6 1/2\"    | 1384300000",
        "4' 6-1/2\"    | 1384300000",
        "4'6\"         | 1371600000",
        "4' - 6\"      | 1371600000",
        "4 ft 6 in     | 1371600000",
        "4ft 6.5in     | 1384300000",
        "0' 3/4\"      | 19050000",
      })
  void eachFormIsRead(String text, long nanometres) {
    assertEquals(Optional.of(new Length(nanometres)), MM.read(text));
  }

  @ParameterizedTest
  @ValueSource(strings = {"44", "44 mm", "4.4 cm", "1.2 m", "1 3/4 in", "1-3/4\"", "6 ft"})
  void eachFormThatIsShownIsRead(String form) {
    assertTrue(LengthGrammar.FORMS.contains(form));
    assertTrue(MM.read(form).isPresent());
  }

  @Test
  void allFormsShownAreRead() {
    for (String form : LengthGrammar.FORMS.split(", ")) {
      assertTrue(MM.read(form).isPresent(), form);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "1-3/4″     | 44450000",
        "1-3/4”     | 44450000",
        "4′ 6 1/2″  | 1384300000",
        "4’ 6”      | 1371600000"
      })
  void typographicPrimesAndQuotesCountAsTheirPlainKin(String text, long nanometres) {
    assertEquals(Optional.of(new Length(nanometres)), MM.read(text));
  }

  @Test
  void aBareNumberIsInTheUnitGiven() {
    assertEquals(Optional.of(Length.mm(44)), MM.read("44"));
    assertEquals(Optional.of(Length.inches(44, 1)), INCH.read("44"));
    assertEquals(Optional.of(Length.inches(7, 4)), INCH.read("1 3/4"));
    assertEquals(Optional.of(Length.mm(44)), INCH.read("44 mm"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        "x",
        "14x",
        "mm",
        "-3",
        "+3",
        "1e3",
        "0x10",
        ".5",
        "5.",
        "4,5",
        "1,200",
        "1 2 3",
        "1 3 / 4 in",
        "1 3/4/8 in",
        "1.5 3/4 in",
        "3 cubits",
        "44 MM",
        "44 mm mm",
        "44 mm 3",
        "4' 6' 3\"",
        "4' 6 mm",
        "6\" 4'",
        "1.5' 6\"",
        "½ in",
        "٤٤",
        "44\n45",
        "NaN",
        "1/0",
        "0/0 in"
      })
  void nonsenseIsNoLength(String text) {
    assertEquals(Optional.empty(), MM.read(text));
  }

  @ParameterizedTest
  @ValueSource(strings = {"1/3 in", "1/3 mm", "1/128 mm", "0.0000001", "2 1/7 in", "1/3"})
  void whatIsNotAWholeNumberOfNanometresIsNoLength(String text) {
    assertEquals(Optional.empty(), MM.read(text));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "9999999999999999 m",
        "99999999999999999999999999999999999999999999999999",
        "9223372036854.775808 mm",
        "1/99999999999999999999999 in"
      })
  void aNumberBeyondAllMeasureIsNoLength(String text) {
    assertEquals(Optional.empty(), MM.read(text));
  }

  @Test
  void theLongestLengthThereIsIsRead() {
    assertEquals(Optional.of(new Length(Long.MAX_VALUE)), MM.read("9223372036854.775807 mm"));
  }

  /** Published: 1 in = 25.4 mm, 1 ft = 304.8 mm exactly, by the yard agreement of 1959. */
  @Test
  void inchesAndFeetAreTheInternationalOnes() {
    assertEquals(MM.read("25.4 mm"), MM.read("1 in"));
    assertEquals(MM.read("304.8 mm"), MM.read("1 ft"));
    assertEquals(MM.read("914.4 mm"), MM.read("3 ft"));
  }

  /** American Softwood Lumber Standard PS 20, table of minimum dressed dry sizes. */
  @ParameterizedTest
  @CsvSource({
    "1x2, 3/4, 1 1/2, 19.05, 38.1",
    "1x4, 3/4, 3 1/2, 19.05, 88.9",
    "1x8, 3/4, 7 1/4, 19.05, 184.15",
    "2x2, 1 1/2, 1 1/2, 38.1, 38.1",
    "2x4, 1 1/2, 3 1/2, 38.1, 88.9",
    "2x12, 1 1/2, 11 1/4, 38.1, 285.75",
    "4x4, 3 1/2, 3 1/2, 88.9, 88.9"
  })
  void dressedLumberIsTheSameInBothUnits(
      String nominal, String thickness, String width, String thicknessMm, String widthMm) {
    assertEquals(MM.read(thicknessMm), INCH.read(thickness), nominal);
    assertEquals(MM.read(widthMm), INCH.read(width), nominal);
  }

  @Property(tries = 200)
  void whatIsWrittenWithItsUnitIsReadBack(
      @ForAll @LongRange(min = 0, max = 20_000_000_000L) long nanometres) {
    Length length = new Length(nanometres);

    assertEquals(Optional.of(length), INCH.read(new LengthFormat(Unit.MM).withUnit(length)));
  }

  @Property(tries = 200)
  void sixtyFourthsOfAnInchAreWrittenAndReadBack(
      @ForAll @LongRange(min = 0, max = 50_000) long sixtyFourths) {
    Length length = Length.inches(sixtyFourths, 64);

    assertEquals(Optional.of(length), MM.read(new LengthFormat(Unit.INCH).withUnit(length)));
    assertEquals(Optional.of(length), INCH.read(new LengthFormat(Unit.INCH).number(length)));
  }

  @Property(tries = 200)
  void anyTextIsReadOrNot(@ForAll @StringLength(max = 60) String text) {
    MM.read(text).ifPresent(length -> assertTrue(!length.isNegative()));
  }
}
