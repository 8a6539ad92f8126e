package org.slatwright.exporter.pdf;

import java.io.IOException;
import java.util.List;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.drawing.Templates;
import org.slatwright.api.export.Destination;
import org.slatwright.api.export.ExportException;
import org.slatwright.api.export.ExportOption;
import org.slatwright.api.export.Exporter;
import org.slatwright.api.export.OptionValues;
import org.slatwright.api.plan.Plan;

/** Writes the whole plan as one PDF document, and its templates as another to print at 100 %. */
public final class PdfExporter implements Exporter {

  private static final String ENDING = ".pdf";
  private static final String HEADING = "Templates";

  private static final ExportOption PRINTED_LENGTH =
      new ExportOption(
          "printed-length",
          "what the check rule of 150 mm, or 6 in, measured on a template page from your printer,"
              + " across and up: the next print is true",
          List.of("150mm", "148.6mm", "148.6mm x 149.1mm"),
          ExportOption.Form.LENGTHS);

  @Override
  public String format() {
    return "pdf";
  }

  @Override
  public String description() {
    return "the plan as a book, and the templates to print at 100 %";
  }

  @Override
  public List<ExportOption> options() {
    return List.of(PRINTED_LENGTH);
  }

  @Override
  public void export(Plan plan, OptionValues options, Destination destination)
      throws ExportException, IOException {
    Stretch stretch = stretch(plan, options);
    List<Sheet> templates = plan.templates().pages();
    if (!templates.isEmpty()) {
      writeTemplates(plan, stretch, destination);
    }
    if (!plan.sheets().isEmpty() || !templates.isEmpty()) {
      writePlan(plan, stretch, destination);
    }
  }

  /** The default is no measure: it changes nothing, also where the check rule is one of 6 in. */
  private static Stretch stretch(Plan plan, OptionValues options) throws ExportException {
    String name = PRINTED_LENGTH.name();
    return options.value(name).equals(PRINTED_LENGTH.defaultValue())
        ? Stretch.NONE
        : Stretch.against(Templates.checkRule(plan.lengths().unit()), options.lengths(name));
  }

  private static void writeTemplates(Plan plan, Stretch stretch, Destination destination)
      throws IOException {
    String title = plan.title().isBlank() ? HEADING : plan.title() + ": templates";
    try (Book book = new Book(title)) {
      book.printOnOneSide();
      for (Sheet page : plan.templates().pages()) {
        book.add(page, stretch);
      }
      destination.file(Plan.TEMPLATE_BOOK + ENDING, book::writeTo);
    }
  }

  private static void writePlan(Plan plan, Stretch stretch, Destination destination)
      throws IOException {
    try (Book book = new Book(plan.title())) {
      for (Sheet sheet : plan.sheets()) {
        book.add(sheet, Stretch.NONE);
      }
      if (!plan.templates().pages().isEmpty()) {
        book.beginPart(HEADING);
      }
      for (Sheet page : plan.templates().pages()) {
        book.add(page, stretch);
      }
      destination.file(Plan.PLAN_BOOK + ENDING, book::writeTo);
    }
  }
}
