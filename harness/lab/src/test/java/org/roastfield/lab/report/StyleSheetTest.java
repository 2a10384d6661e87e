package org.roastfield.lab.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class StyleSheetTest {

  private static final Pattern PALETTE = Pattern.compile(":root \\{([^}]*)\\}");
  private static final Pattern COLOUR = Pattern.compile("--([a-z-]+): (#[0-9a-f]{6});");

  @Test
  void letters_contrastWithPaperAndTint_inLightDarkAndPrint() {
    List<Map<String, String>> palettes = palettes();
    assertEquals(3, palettes.size());
    for (Map<String, String> palette : palettes) {
      for (String ink :
          List.of("ink", "faint", "core", "upper", "lower", "probe-one", "probe-two", "chamber")) {
        assertContrast(palette, ink, "paper", 4.5);
        assertContrast(palette, ink, "tint", 4.5);
      }
      assertContrast(palette, "frame", "paper", 3);
    }
  }

  @Test
  void palettes_nameTheSameColours() {
    Set<Set<String>> names = new HashSet<>();
    palettes().forEach(palette -> names.add(palette.keySet()));
    assertEquals(1, names.size());
  }

  @Test
  void everyRole_hasAColour() {
    String styles = Page.styles("figure.css");
    for (Curve.Role role : Curve.Role.values()) {
      Pattern rule = Pattern.compile("\\." + role.styleName() + "[ ,][^{]*\\{ stroke: var\\(--");
      assertTrue(rule.matcher(styles).find(), role::styleName);
    }
  }

  @Test
  void styles_loadNothingAndHoldNoMarkup() {
    for (String name : List.of("figure.css", "page.css")) {
      String styles = Page.styles(name);
      assertFalse(styles.contains("url("), name);
      assertFalse(styles.contains("@import"), name);
      assertFalse(styles.contains("<") || styles.contains("&"), name);
    }
  }

  private static void assertContrast(
      Map<String, String> palette, String one, String other, double least) {
    double contrast = Contrast.between(colour(palette, one), colour(palette, other));
    assertTrue(contrast >= least, () -> one + " on " + other + ": " + contrast);
  }

  private static String colour(Map<String, String> palette, String name) {
    String colour = palette.get(name);
    if (colour == null) {
      throw new AssertionError("no colour " + name);
    }
    return colour;
  }

  private static List<Map<String, String>> palettes() {
    List<Map<String, String>> palettes = new ArrayList<>();
    Matcher blocks = PALETTE.matcher(Page.styles("figure.css"));
    while (blocks.find()) {
      Map<String, String> palette = new HashMap<>();
      Matcher colours = COLOUR.matcher(blocks.group(1));
      while (colours.find()) {
        palette.put(colours.group(1), colours.group(2));
      }
      palettes.add(palette);
    }
    return palettes;
  }
}
