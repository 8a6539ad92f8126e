package org.slatwright.api.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class MinutesTest {

  @Test
  void aTimeIsToldInHoursAndMinutes() {
    assertEquals("0 min", Minutes.ZERO.words());
    assertEquals("25 min", new Minutes(25).words());
    assertEquals("1 h", Minutes.hours(1).words());
    assertEquals("1 h 10 min", new Minutes(70).words());
    assertEquals("24 h", Minutes.hours(24).words());
  }

  @Test
  void aLongTimeIsToldInWholeHours() {
    assertEquals("6 h", new Minutes(6 * 60).words());
    assertEquals("7 h", new Minutes(6 * 60 + 31).words());
    assertEquals("25 h", new Minutes(24 * 60 + 40).words());
  }

  @Test
  void aTimeIsNeverNegative() {
    assertThrows(IllegalArgumentException.class, () -> new Minutes(-1));
  }
}
