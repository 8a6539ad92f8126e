package org.slatwright.design.sizing;

import java.util.Locale;
import java.util.Optional;
import org.slatwright.design.rackfile.Given;
import org.slatwright.design.wood.Species;
import org.slatwright.design.wood.StrengthClass;
import org.slatwright.design.wood.Timber;

/**
 * Which species and strength class the timber is reckoned as.
 *
 * @param name of the species, as the maker wrote it
 */
record Timbers(String name, Timber frame, Timber slats) {

  private static final String KEY = "timber.frame.species";
  private static final String USUAL_SPECIES = "norway spruce";

  static Timbers choose(Worksheet sheet) {
    Optional<String> given = sheet.file().timber().frame().species().map(Given::value);
    if (given.isEmpty()) {
      sheet.note(KEY, "reckoned as " + USUAL_SPECIES, "give " + KEY + " if yours is another");
    }
    String name = given.orElse(USUAL_SPECIES);
    Species species = species(name);
    StrengthClass grade =
        species.kind() == Species.Kind.SOFTWOOD ? StrengthClass.C16 : StrengthClass.D24;
    boolean reclaimed = !sheet.file().timber().slats().boards().isEmpty();
    Timber frame = new Timber(species, grade);
    Timber slats = reclaimed ? new Timber(species, StrengthClass.C14) : frame;
    return new Timbers(name, frame, slats);
  }

  private static Species species(String name) {
    String wanted = name.toLowerCase(Locale.ROOT);
    return named(wanted).or(() -> named(USUAL_SPECIES)).orElseThrow();
  }

  private static Optional<Species> named(String name) {
    return Species.all().stream().filter(species -> species.name().equals(name)).findFirst();
  }
}
