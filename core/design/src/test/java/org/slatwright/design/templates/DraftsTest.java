package org.slatwright.design.templates;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Envelope;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.api.export.OutputNames;
import org.slatwright.design.drafting.Inked;
import org.slatwright.design.templates.printing.Draft;

/** What every template of every rack keeps to. */
class DraftsTest {

  private static final double LEAST_LETTERING = 2.5;
  private static final double ROUNDING = 1e-6;

  /** So that the name stands on every page of a long strip. */
  private static final double REPEATED = 205;

  @Provide
  Arbitrary<Drawn> racks() {
    return Drawn.any();
  }

  @Test
  void aRackWithAJigHasEveryTemplate() {
    assertEquals(
        List.of(
            "templates/U-drilling",
            "templates/joint-wrap",
            "templates/R-end",
            "templates/slat-spacing",
            "templates/story-rod",
            "templates/depth-gauge",
            "templates/J1",
            "templates/J2",
            "templates/J3"),
        Drawn.example("seed-trays").drafts().stream().map(Draft::name).toList());
  }

  @ParameterizedTest
  @MethodSource("org.slatwright.design.templates.Drawn#examples")
  void anExampleIsDrawnWell(Drawn rack) {
    rack.drafts().forEach(DraftsTest::assertDrawnWell);
  }

  @Property(tries = 60)
  void anyRackIsDrawnWell(@ForAll("racks") Drawn rack) {
    rack.drafts().forEach(DraftsTest::assertDrawnWell);
    OutputNames names = new OutputNames();
    rack.drafts().forEach(draft -> names.claim(draft.name()));
  }

  @ParameterizedTest
  @MethodSource("org.slatwright.design.templates.Drawn#examples")
  void thePageOfALongStripSaysWhichStripItIs(Drawn rack) {
    for (String name : List.of("U-drilling", "story-rod", "slat-spacing")) {
      Draft draft = rack.draft(name);
      List<Double> said =
          draft.figures().stream()
              .filter(Figure.Text.class::isInstance)
              .map(Figure.Text.class::cast)
              .filter(text -> text.text().startsWith(name) && text.text().contains("1:1"))
              .map(text -> text.at().y())
              .sorted()
              .toList();
      double last = 0;
      for (double at : said) {
        assertTrue(at - last <= REPEATED, name + " is not named from " + last + " to " + at);
        last = at;
      }
      assertTrue(draft.height().inMm() - last <= REPEATED + 60, name + " is not named at its top");
    }
  }

  @Test
  void manyNailsInNarrowSlatsStayReadable() {
    Drawn rack =
        Drawn.example(
            "seed-trays",
            "timber.slats.section=18 x 12",
            "slats.per-shelf=20",
            "joint.fixing.per-end=6");
    Draft strip = rack.draft("slat-spacing");
    assertDrawnWell(strip);
    double labels = strip.height().minus(rack.rack().rail().length()).inMm();
    assertTrue(labels > 150, "it grows where labels have no room beside the rail");
  }

  private static void assertDrawnWell(Draft draft) {
    assertEquals(Advice.CHECK, draft.use().get(0));
    assertTrue(String.join(" ", draft.use()).contains("eye protection"), draft::name);
    Envelope room = new Envelope(0, draft.width().inMm(), 0, draft.height().inMm());
    room.expandBy(ROUNDING);
    Inked inked = Inked.of(draft.figures());
    for (Inked.Words words : inked.words()) {
      assertTrue(
          room.contains(words.room()), () -> draft.name() + ": '" + words.text() + "' is outside");
    }
    inked
        .lines()
        .forEach(line -> assertTrue(room.contains(Ruled.around(line)), () -> draft + " " + line));
    for (Draft.Disc disc : draft.whole()) {
      assertTrue(room.contains(disc.centre().x(), disc.centre().y()));
    }
    assertNoTextOnAnother(draft, inked.words());
    for (Figure figure : draft.figures()) {
      if (figure instanceof Figure.Text text) {
        assertTrue(text.height() >= LEAST_LETTERING, text::text);
      } else if (figure instanceof Figure.Circle circle) {
        PaperPoint centre = circle.centre();
        Envelope around = new Envelope(centre.x(), centre.x(), centre.y(), centre.y());
        around.expandBy(circle.radius());
        assertTrue(room.contains(around), () -> draft.name() + ": a circle is outside");
        assertTrue(
            draft.whole().stream()
                .anyMatch(
                    disc -> disc.centre().equals(centre) && disc.radiusMm() > circle.radius()),
            () -> draft.name() + ": a page may end in a hole");
      }
    }
  }

  private static void assertNoTextOnAnother(Draft draft, List<Inked.Words> words) {
    for (int i = 0; i < words.size(); i++) {
      for (int j = i + 1; j < words.size(); j++) {
        Inked.Words one = words.get(i);
        Inked.Words other = words.get(j);
        Envelope shared = one.room().intersection(other.room());
        assertTrue(
            shared.isNull() || shared.getWidth() < ROUNDING || shared.getHeight() < ROUNDING,
            () -> draft.name() + ": '" + one.text() + "' lies on '" + other.text() + "'");
      }
    }
  }
}
