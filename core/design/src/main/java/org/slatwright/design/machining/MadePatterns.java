package org.slatwright.design.machining;

import java.util.List;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Pattern;

/**
 * What came of drawing patterns.
 *
 * @param findings where a sheet is too small or a cutter too thick
 */
public record MadePatterns(List<Pattern> patterns, List<Finding> findings) {

  public MadePatterns {
    patterns = List.copyOf(patterns);
    findings = List.copyOf(findings);
  }
}
