package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.drawing.View;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Part;
import org.slatwright.api.model.Role;
import org.slatwright.design.framing.Marks;
import org.slatwright.design.sizing.Rack;

/**
 * The exploded view and the parts list that its balloons refer to, upright or lying, whichever lets
 * it be larger.
 */
final class ExplodedSheet implements SheetDrawing {

  private static final String TITLE = "Exploded view";
  private static final double PAD = 4;

  private final Rack rack;
  private final Assembly assembly;

  ExplodedSheet(Rack rack, Assembly assembly) {
    this.rack = rack;
    this.assembly = assembly;
  }

  @Override
  public Sheet sheet(int number, int count) {
    Layout upright = new Layout(new SheetFrame(rack.shop().paper(), false));
    Layout lying = new Layout(new SheetFrame(rack.shop().paper(), true));
    Layout layout = lying.view.factor() > upright.view.factor() ? lying : upright;
    List<View> views = new ArrayList<>();
    views.add(layout.frame.view());
    views.add(layout.view.view());
    views.addAll(layout.foot.views(TitleBlock.ofText(rack, TITLE, number, count)));
    String name = String.format(Locale.ROOT, "drawings/%02d-exploded-view", number);
    return new Sheet(name, TITLE, rack.shop().paper(), layout.frame.landscape(), views);
  }

  private final class Layout {

    private final SheetFrame frame;
    private final SheetFoot foot;
    private final ExplodedView view;

    Layout(SheetFrame frame) {
      LengthFormat lengths = rack.lengths();
      this.frame = frame;
      this.foot = new SheetFoot(frame, room -> PartsList.table(assembly, lengths, room), notes());
      PaperBox room = new PaperBox(frame.left(), foot.top(), frame.right(), frame.top());
      this.view = new ExplodedView(Explosion.of(assembly), room.grown(-PAD, -PAD));
    }
  }

  private List<String> notes() {
    List<String> notes = new ArrayList<>();
    notes.add(
        "One frame is drawn apart, the other as it is glued up, and the slats are lifted. Chain"
            + " lines show what goes where. To no scale.");
    List<Integer> shelves = Explosion.shelves(assembly);
    if (rack.bays() > 1 || rack.shelves() > shelves.size()) {
      notes.add(shown());
    }
    List<String> absent = absent();
    if (!absent.isEmpty()) {
      notes.add("Not shown: " + Marks.of(absent) + ", slats of other shelves or bays.");
    }
    return notes;
  }

  private String shown() {
    List<String> said = new ArrayList<>();
    if (rack.bays() > 1) {
      said.add("bay 1, from the left");
    }
    if (rack.shelves() > 2) {
      said.add("shelves 1 and " + rack.shelves() + ", the lowest and the top one");
    }
    return "Shown: " + String.join("; ", said) + ". The others are put together alike.";
  }

  private List<String> absent() {
    Set<Part> shown =
        Explosion.of(assembly).bars().stream()
            .map(bar -> bar.piece().part())
            .collect(Collectors.toSet());
    return assembly.parts().stream()
        .filter(part -> part.role() == Role.SLAT && !shown.contains(part))
        .map(Part::mark)
        .toList();
  }
}
