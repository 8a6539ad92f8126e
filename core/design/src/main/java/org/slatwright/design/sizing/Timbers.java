package org.slatwright.design.sizing;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.slatwright.design.rackfile.Given;
import org.slatwright.design.rackfile.NearestKey;
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
    Optional<NamedWood> given =
        sheet.file().timber().frame().species().map(Given::value).map(NamedWood::of);
    NamedWood wood = given.orElseGet(() -> NamedWood.of(USUAL_SPECIES));
    Species species = wood.known().orElseGet(() -> guessed(sheet, wood));
    StrengthClass grade =
        wood.grade()
            .map(stamped -> usable(sheet, species, stamped))
            .orElseGet(() -> ungraded(species));
    if (given.isEmpty() || wood.grade().isEmpty()) {
      tellGrade(sheet, species, grade);
    }
    boolean reclaimed = !sheet.file().timber().slats().boards().isEmpty();
    Timber frame = new Timber(species, grade);
    Timber slats = reclaimed ? new Timber(species, StrengthClass.C14) : frame;
    return new Timbers(wood.written(), frame, slats);
  }

  /** One above the lowest softwood class, and the lowest hardwood class: our choice. */
  private static StrengthClass ungraded(Species species) {
    return species.kind() == Species.Kind.SOFTWOOD ? StrengthClass.C16 : StrengthClass.D18;
  }

  /** The class that is written, or a safe one where it is none of that wood. */
  private static StrengthClass usable(Worksheet sheet, Species species, StrengthClass written) {
    if (written.isFor(species)) {
      return written;
    }
    StrengthClass usual = ungraded(species);
    StrengthClass lower = written.bending() < usual.bending() ? written : usual;
    boolean isSoft = species.kind() == Species.Kind.SOFTWOOD;
    sheet.warn(
        KEY,
        "%s is a strength class of %s, and %s is a %s: reckoned as %s"
            .formatted(
                written,
                isSoft ? "hardwoods" : "softwoods",
                species.name(),
                isSoft ? "softwood" : "hardwood",
                lower),
        changed(species));
    return lower;
  }

  private static void tellGrade(Worksheet sheet, Species species, StrengthClass grade) {
    sheet.note(
        KEY,
        "reckoned as %s of strength class %s, as stock without a grade stamp is"
            .formatted(species.name(), grade),
        changed(species));
  }

  private static String changed(Species species) {
    String stamped = species.kind() == Species.Kind.SOFTWOOD ? "C24" : "D30";
    return "set %s=%s %s if yours is stamped %s".formatted(KEY, species.name(), stamped, stamped);
  }

  private static Species guessed(Worksheet sheet, NamedWood wood) {
    Optional<String> near = NearestKey.to(wood.species(), likely(wood.species()));
    Species species =
        near.or(() -> Optional.of(USUAL_SPECIES)).flatMap(Species::named).orElseThrow();
    sheet.warn(
        KEY,
        "no numbers are known of %s: reckoned as %s".formatted(wood.species(), species.name()),
        near.map(name -> "if that is right, set " + KEY + "=" + name)
            .orElse(
                "set "
                    + KEY
                    + " to the name of a wood as strong and heavy, such as scots pine or white"
                    + " oak"));
    return species;
  }

  /** Names that it may be a slip of: where pine is spelt right in it, only those of pines. */
  private static List<String> likely(String written) {
    Set<String> spelt = words(written);
    spelt.retainAll(Species.names());
    return Species.names().stream().filter(name -> words(name).containsAll(spelt)).toList();
  }

  private static Set<String> words(String name) {
    return new TreeSet<>(List.of(name.toLowerCase(Locale.ROOT).split("[-_ ]+")));
  }
}
