package org.slatwright.design.sizing;

import java.util.Optional;
import org.slatwright.design.wood.Species;
import org.slatwright.design.wood.StrengthClass;

/**
 * What a maker calls the timber: a species, and behind it the strength class when it is stamped, as
 * in {@code norway spruce C24}.
 *
 * @param written all of it
 * @param species without the class
 */
record NamedWood(String written, String species, Optional<StrengthClass> grade) {

  static NamedWood of(String written) {
    String text = written.strip();
    int last = text.lastIndexOf(' ');
    Optional<StrengthClass> grade = StrengthClass.named(text.substring(last + 1));
    String species = grade.isPresent() && last > 0 ? text.substring(0, last).strip() : text;
    return new NamedWood(written, species, last > 0 ? grade : Optional.empty());
  }

  /** The species, when its name is known. */
  Optional<Species> known() {
    return Species.named(species);
  }
}
