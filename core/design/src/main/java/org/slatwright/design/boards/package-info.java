/**
 * Slats from reclaimed boards, each as wide as its board: which slat comes from which board, and
 * which lie on a shelf together. Knows lengths alone, and nothing of rack files. Start at {@link
 * org.slatwright.design.boards.BoardChooser}.
 */
package org.slatwright.design.boards;
