package org.slatwright.design.sizing;

import java.util.List;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Finding.Severity;

/** Tells what does not go in as the rack file asks, and which one size would let it in. */
record MisfitFindings(Worksheet sheet, RoomChanges changes, Trials trials) {

  private static final String RULE = "holds";
  private static final String NO_REMEDY =
      "no single size makes room for it: change more than one, or ask for less in holds";

  void tell(List<Misfit> misfits) {
    misfits.forEach(misfit -> sheet.tell(finding(misfit, misfits)));
  }

  private Finding finding(Misfit misfit, List<Misfit> all) {
    return new Finding(
        severity(misfit, all),
        RULE,
        misfit.thing().name(),
        message(misfit),
        sheet.show(misfit.need()),
        "at most " + sheet.show(misfit.room()),
        changes
            .to(misfit)
            .filter(setting -> trials.makesRoom(setting, misfit, all))
            .findFirst()
            .map(setting -> "set " + setting)
            .orElse(NO_REMEDY),
        "");
  }

  /** What is only too high can stand on the top shelf. */
  private static Severity severity(Misfit misfit, List<Misfit> all) {
    boolean onlyTooHigh =
        all.stream()
            .filter(other -> other.thing().equals(misfit.thing()))
            .allMatch(other -> other.way() == Misfit.Way.ABOVE);
    return onlyTooHigh ? Severity.WARNING : Severity.ERROR;
  }

  private String message(Misfit misfit) {
    String lack = sheet.show(misfit.lack());
    return switch (misfit.way()) {
      case ACROSS -> "%s too wide to go between two frames".formatted(lack);
      case DEEP -> "%s too deep for the rails".formatted(lack);
      case ABOVE -> "%s too high for every opening; only the top shelf is open".formatted(lack);
    };
  }
}
