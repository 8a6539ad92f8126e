package org.slatwright.api.plan;

import java.util.List;
import java.util.Optional;
import org.slatwright.api.measure.Minutes;

/**
 * One step of the order of work.
 *
 * @param number counted from 1, in the order to do them
 * @param id unique in the plan and stable, of lower-case words and digits with hyphens: {@code
 *     cut-frame-stock}
 * @param title what is done, short: {@code Glue frame 1}
 * @param doing how, a sentence each, in order
 * @param parts what it is done with, by mark; empty where no part is touched
 * @param places the ids of the pieces that are in their place from now on
 * @param shows the ids of the pieces that a picture of the step shows, those it puts in place among
 *     them; empty where none helps
 * @param tools to have at hand
 * @param supplies what is used up or set up, with quantities: {@code glue, about 12 g}
 * @param work how long one person works at it, roughly
 * @param then what must pass after it before the steps that need it, if anything
 * @param after the numbers of the steps that must be done first, all less than {@code number}
 * @param check what ends the step when it is true
 * @param caution what can hurt, or empty
 */
public record Step(
    int number,
    String id,
    String title,
    List<Wording> doing,
    List<Parts> parts,
    List<String> places,
    List<String> shows,
    List<String> tools,
    List<Wording> supplies,
    Minutes work,
    Optional<Wait> then,
    List<Integer> after,
    Wording check,
    String caution) {

  public Step {
    doing = List.copyOf(doing);
    parts = List.copyOf(parts);
    places = List.copyOf(places);
    shows = List.copyOf(shows);
    tools = List.copyOf(tools);
    supplies = List.copyOf(supplies);
    after = List.copyOf(after);
  }

  /**
   * Pieces of one part, or spare pieces of one kind.
   *
   * @param mark of the part or the spare piece
   * @param count how many of them
   */
  public record Parts(String mark, int count) {}

  /**
   * Time that passes without work.
   *
   * @param time how long at least
   * @param why what happens meanwhile: {@code the glue cures}
   */
  public record Wait(Minutes time, String why) {}
}
