package org.slatwright.design.rackfile;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.common.Anchor;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * Builds {@link Node}s out of YAML text, within limits that no honest rack file meets. It works on
 * the parser's events, one by one, so that a hostile text is refused at the first nesting, alias or
 * value too many instead of after it has filled the memory.
 */
final class YamlTree {

  private static final int DEEPEST = 20;
  private static final int MOST_NODES = 10_000;
  private static final int MOST_ALIASES = 20;
  private static final String STANDARD_TAG = "tag:yaml.org,2002:";
  private static final String TEXT_TAG = STANDARD_TAG + "str";

  private final Function<Mark, Place> placing;
  private final Place start;
  private final Complaints complaints;
  private final Iterator<Event> events;
  private final Map<Anchor, Node> anchors = new HashMap<>();
  private Place reached;
  private int nodes;
  private int aliases;

  private YamlTree(String text, Place start, Function<Mark, Place> placing, Complaints complaints) {
    this.placing = placing;
    this.start = start;
    this.reached = start;
    this.complaints = complaints;
    LoadSettings settings = LoadSettings.builder().setCodePointLimit(Integer.MAX_VALUE).build();
    this.events = new Parse(settings).parseString(text).iterator();
  }

  /** The one document of a file, or empty when there is nothing in it. */
  static Optional<Node> ofFile(String text, String source, Complaints complaints)
      throws RackFileException {
    Function<Mark, Place> placing =
        mark -> new Place(source, mark.getLine() + 1, mark.getColumn() + 1);
    return new YamlTree(text, new Place(source, 1, 1), placing, complaints).document();
  }

  /** The value of a setting; all of it stands at one place. */
  static Optional<Node> ofSetting(String text, Place place, Complaints complaints)
      throws RackFileException {
    return new YamlTree(text, place, mark -> place, complaints).document();
  }

  private Optional<Node> document() throws RackFileException {
    Event event = skipTo(Event.ID.DocumentStart, Event.ID.StreamEnd);
    if (event.getEventId() == Event.ID.StreamEnd) {
      return Optional.empty();
    }
    Node root = node(next(), 1);
    Event after = skipTo(Event.ID.DocumentStart, Event.ID.StreamEnd);
    if (after.getEventId() == Event.ID.DocumentStart) {
      complaints.add(
          place(after), "a second document begins here; a rack file is one, so delete the \"---\"");
    }
    return Optional.of(root);
  }

  private Event skipTo(Event.ID one, Event.ID other) throws RackFileException {
    Event event = next();
    while (event.getEventId() != one && event.getEventId() != other) {
      event = next();
    }
    return event;
  }

  private Event next() throws RackFileException {
    try {
      Event event = events.next();
      reached = place(event);
      return event;
    } catch (YamlEngineException e) {
      Place place = YamlGrammar.mark(e).map(placing).orElse(start);
      throw complaints.fatal(place, YamlGrammar.complaint(e));
    } catch (RuntimeException e) {
      // The parser trips over "\\x" at the very end, and perhaps over more that nobody has met yet.
      throw complaints.fatal(reached, "not YAML from here on; look for an unfinished \\ sequence");
    }
  }

  private Node node(Event event, int depth) throws RackFileException {
    if (event instanceof AliasEvent alias) {
      return aliased(alias, depth);
    }
    count(1, place(event));
    checkDepth(depth, place(event));
    Node node = fresh(event, depth);
    ((NodeEvent) event).getAnchor().ifPresent(anchor -> anchors.put(anchor, node));
    return node;
  }

  private Node fresh(Event event, int depth) throws RackFileException {
    if (event instanceof ScalarEvent scalar) {
      rejectTag(scalar.getTag(), event);
      return new Node.Scalar(place(event), scalar.getValue(), !scalar.isPlain());
    }
    rejectTag(((CollectionStartEvent) event).getTag(), event);
    return event.getEventId() == Event.ID.SequenceStart
        ? new Node.Sequence(place(event), entries(depth))
        : new Node.Mapping(place(event), members(depth));
  }

  private List<Node> entries(int depth) throws RackFileException {
    List<Node> entries = new ArrayList<>();
    for (Event e = next(); e.getEventId() != Event.ID.SequenceEnd; e = next()) {
      entries.add(node(e, depth + 1));
    }
    return entries;
  }

  private List<Node.Member> members(int depth) throws RackFileException {
    List<Node.Member> members = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    for (Event e = next(); e.getEventId() != Event.ID.MappingEnd; e = next()) {
      Place at = place(e);
      Node key = node(e, depth + 1);
      Node value = node(next(), depth + 1);
      if (!(key instanceof Node.Scalar word) || word.isEmpty()) {
        complaints.add(at, "a key must be a plain word, such as rack");
      } else if (seen.add(word.text())) {
        members.add(new Node.Member(word.text(), at, value));
      } else {
        complaints.add(at, "key " + Quoted.of(word.text()) + " stands twice; keep one of them");
      }
    }
    return members;
  }

  private Node aliased(AliasEvent alias, int depth) throws RackFileException {
    Place at = place(alias);
    String name = Quoted.of("*" + alias.getAlias().getValue());
    Node node = anchors.get(alias.getAlias());
    if (node == null) {
      throw complaints.fatal(at, "alias " + name + " names nothing that is complete before it");
    }
    aliases++;
    if (aliases > MOST_ALIASES) {
      throw complaints.fatal(at, "more than " + MOST_ALIASES + " aliases; write the values out");
    }
    count(size(node), at);
    checkDepth(depth + height(node) - 1, at);
    return node;
  }

  private void rejectTag(Optional<String> tag, Event event) {
    if (tag.isPresent() && !tag.get().equals(TEXT_TAG) && !tag.get().equals("!")) {
      complaints.add(
          place(event),
          "tag " + Quoted.of(shortTag(tag.get())) + " has no meaning in a rack file; delete it");
    }
  }

  private static String shortTag(String tag) {
    return tag.startsWith(STANDARD_TAG) ? "!!" + tag.substring(STANDARD_TAG.length()) : tag;
  }

  private void count(int more, Place at) throws RackFileException {
    nodes += more;
    if (nodes > MOST_NODES) {
      throw complaints.fatal(at, "more than 10 000 values; no rack needs so many");
    }
  }

  private void checkDepth(int depth, Place at) throws RackFileException {
    if (depth > DEEPEST) {
      throw complaints.fatal(
          at, "nested more than " + DEEPEST + " deep; a rack file needs about six");
    }
  }

  private static int size(Node node) {
    if (node instanceof Node.Sequence list) {
      return 1 + list.entries().stream().mapToInt(YamlTree::size).sum();
    }
    return node instanceof Node.Mapping map
        ? 1 + map.members().stream().mapToInt(m -> 1 + size(m.value())).sum()
        : 1;
  }

  private static int height(Node node) {
    if (node instanceof Node.Sequence list) {
      return 1 + list.entries().stream().mapToInt(YamlTree::height).max().orElse(0);
    }
    return node instanceof Node.Mapping map
        ? 1 + map.members().stream().mapToInt(m -> height(m.value())).max().orElse(0)
        : 1;
  }

  private Place place(Event event) {
    return event.getStartMark().map(placing).orElse(start);
  }
}
