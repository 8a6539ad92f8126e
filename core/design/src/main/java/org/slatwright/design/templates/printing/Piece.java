package org.slatwright.design.templates.printing;

/** What is laid on a page among others, from its lower left corner. */
sealed interface Piece permits TilePiece, UseCard {

  /** In mm, before it is turned. */
  double width();

  /** In mm, before it is turned. */
  double height();
}
