package org.slatwright.exporter.figures;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.slatwright.api.drawing.Scale;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.drawing.Template;
import org.slatwright.api.drawing.View;

/**
 * What is drawn in one piece.
 *
 * @param name its output name
 * @param title what it shows
 * @param description the same at length, for whoever cannot see it
 * @param widthMm of the whole
 * @param heightMm of the whole
 * @param views in drawing order
 */
public record Drawing(
    String name,
    String title,
    String description,
    double widthMm,
    double heightMm,
    List<View> views) {

  /** A sheet, or a page of templates. */
  public static Drawing of(Sheet sheet) {
    String views = sheet.views().stream().map(Drawing::inWords).collect(Collectors.joining(", "));
    return new Drawing(
        sheet.name(), sheet.title(), views, sheet.widthMm(), sheet.heightMm(), sheet.views());
  }

  /** A template in one piece. */
  public static Drawing of(Template template) {
    View view =
        new View("template", template.title(), Optional.of(new Scale(1, 1)), template.figures());
    return new Drawing(
        template.name(),
        template.title(),
        String.join(" ", template.use()),
        template.width().inMm(),
        template.height().inMm(),
        List.of(view));
  }

  private static String inWords(View view) {
    return view.title() + view.scale().map(scale -> " " + scale).orElse("");
  }
}
