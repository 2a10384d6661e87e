package org.roastfield.lab.intake;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.roastfield.lab.files.LogUnit;

/** Guesses which columns hold temperatures, of what, and in which unit. */
final class ChannelGuess {

  private static final Pattern CORE =
      Pattern.compile(".*(core|meat|food|internal|centre|center|kern|probe ?1).*");
  private static final Pattern CHAMBER =
      Pattern.compile(".*(chamber|pit|air|oven|grill|ambient|smoker|garraum|cooker|barrel).*");
  private static final Pattern NOT_TEMPERATURE =
      Pattern.compile(
          ".*(battery|rssi|signal|fan|humid|count|index|row|weight|mass|set.?(point|temp)|target|setting|alarm|level).*");
  private static final double SAME = 0.06;

  /** Numbers by which devices say that there is no probe, though a chamber may be as hot. */
  private static final Pattern MARK = Pattern.compile("999(?:[.,]9+|[.,]0+)?");

  /** How far a mark is from every reading, in the column's unit; assumed. */
  private static final double APART = 50;

  /** No reading of a cook is colder than this [K], nor hotter than {@link #HOTTEST}; assumed. */
  private static final double COLDEST = 223.15;

  private static final double HOTTEST = 873.15;

  private final Clues clues;
  private final CellReader cells;

  ChannelGuess(Clues clues) {
    this.clues = clues;
    this.cells = new CellReader(clues.decimalComma(), Set.of());
  }

  /**
   * Channels.
   *
   * @param stated columns that the user spoke of
   */
  List<ChannelRule> channels(
      List<Integer> time, Set<Integer> stated, int by, Optional<Integer> value) {
    if (by >= 0) {
      return longForm(by, value.orElseThrow(() -> new IntakeException("--by needs --value")));
    }
    List<ChannelRule> rules = new ArrayList<>();
    for (int i = 0; i < clues.names().size(); i++) {
      if (!time.contains(i) && !stated.contains(i) && isTemperature(i)) {
        LogUnit unit = unit(i);
        Optional<ChannelRule> same = sameAs(rules, i, unit);
        if (same.isPresent()) {
          clues.because(
              clues.name(i)
                  + " left out: it is "
                  + clues.name(same.get().column())
                  + " in another unit");
        } else {
          rules.add(new ChannelRule(name(i, rules), i, unit, ""));
        }
      }
    }
    if (rules.isEmpty()) {
      throw new IntakeException(
          "found no column of temperatures, expected one; --channel states it, such as"
              + " --channel=core=#2:degC");
    }
    return named(rules);
  }

  private List<ChannelRule> longForm(int by, int value) {
    Set<String> probes = new TreeSet<>();
    clues.rows().forEach(row -> probes.add(Clues.cell(row, by)));
    if (probes.size() > 20) {
      throw new IntakeException(
          "found " + probes.size() + " names of probes in --by, expected at most 20");
    }
    LogUnit unit = unit(value);
    List<ChannelRule> rules = new ArrayList<>();
    for (String probe : probes) {
      rules.add(new ChannelRule(distinct(plain(probe), rules), value, unit, probe));
    }
    clues.because("channels by the names in " + clues.name(by));
    return rules;
  }

  /** Names by temperature where the headers say nothing of place: the hottest is the chamber. */
  private List<ChannelRule> named(List<ChannelRule> rules) {
    boolean said =
        rules.stream().anyMatch(rule -> List.of("core", "chamber").contains(rule.channel()));
    if (said || rules.size() > 2) {
      return rules;
    }
    List<ChannelRule> byHeat = new ArrayList<>(rules);
    byHeat.sort(Comparator.comparingDouble(rule -> mean(rule.column())));
    List<ChannelRule> named = new ArrayList<>();
    for (ChannelRule rule : rules) {
      String name = rule.equals(byHeat.get(0)) ? "core" : "chamber";
      clues.because(
          clues.name(rule.column())
              + " is the "
              + name
              + ": "
              + (rules.size() == 1
                  ? "the only temperature"
                  : name.equals("core") ? "the cooler one" : "the hotter one"));
      named.add(new ChannelRule(name, rule.column(), rule.unit(), ""));
    }
    return named;
  }

  private String name(int column, List<ChannelRule> before) {
    String header = clues.name(column).toLowerCase(Locale.ROOT);
    String name =
        CHAMBER.matcher(header).matches()
            ? "chamber"
            : CORE.matcher(header).matches() ? "core" : plain(Units.without(header));
    if (name.equals("core") || name.equals("chamber")) {
      clues.because(clues.name(column) + " is the " + name + ": its header says so");
    }
    return distinct(name, before);
  }

  private static String plain(String text) {
    String plain =
        text.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^[^a-z]+|-$", "");
    plain = plain.substring(0, Math.min(plain.length(), 36));
    return plain.isEmpty() || plain.equals("time") ? "probe" : plain;
  }

  private static String distinct(String name, List<ChannelRule> before) {
    String one = name;
    for (int i = 2; contains(before, one); i++) {
      one = name + "-" + i;
    }
    return one;
  }

  private static boolean contains(List<ChannelRule> rules, String name) {
    return rules.stream().anyMatch(rule -> rule.channel().equals(name));
  }

  private boolean isTemperature(int column) {
    String header = clues.name(column).toLowerCase(Locale.ROOT);
    if (NOT_TEMPERATURE.matcher(header).matches()) {
      clues.because(clues.name(column) + " left out: its header speaks of no temperature");
      return false;
    }
    long numbers = clues.rows().stream().filter(row -> !Double.isNaN(value(row, column))).count();
    long filled =
        clues.rows().stream()
            .filter(row -> column < row.size() && !row.get(column).isBlank())
            .count();
    if (numbers == 0 || 2 * numbers < filled) {
      clues.because(clues.name(column) + " left out: it has no numbers");
      askOfKinds(column);
      return false;
    }
    return true;
  }

  /** Asks if a column tells several probes or pieces apart: a few words, one in every row. */
  private void askOfKinds(int column) {
    Set<String> words = new TreeSet<>();
    clues.rows().forEach(row -> words.add(Clues.cell(row, column)));
    if (words.size() > 1 && words.size() <= 20 && !words.contains("")) {
      String name = clues.name(column);
      clues.ask(
          "are "
              + String.join(", ", words)
              + " in "
              + name
              + " several probes, or cuts? --by="
              + name
              + " with --value, or --rows="
              + name
              + "="
              + words.iterator().next());
    }
  }

  private LogUnit unit(int column) {
    Optional<LogUnit> header = Units.inHeader(clues.heading(column));
    if (header.isPresent()) {
      clues.because(clues.name(column) + " in " + header.get().word() + ": its header says so");
      return header.get();
    }
    Optional<LogUnit> stated = statedByCells(column);
    if (stated.isPresent()) {
      clues.because(clues.name(column) + " in " + stated.get().word() + ": its cells say so");
      return stated.get();
    }
    double low =
        clues.rows().stream()
            .mapToDouble(row -> value(row, column))
            .filter(v -> !Double.isNaN(v))
            .min()
            .orElse(0);
    double high =
        clues.rows().stream()
            .mapToDouble(row -> value(row, column))
            .filter(v -> !Double.isNaN(v))
            .max()
            .orElse(0);
    String range = " from " + low + " to " + high;
    if (low > 250 && low < 310 && high < 700) {
      clues.because(clues.name(column) + " in K:" + range + " begins as cold meat does in kelvin");
      return LogUnit.KELVIN;
    }
    if (low > -25 && low < 20 && high < 500) {
      clues.because(
          clues.name(column) + " in degC:" + range + " would begin far below freezing in °F");
      return LogUnit.CELSIUS;
    }
    clues.ask(
        "which unit has "
            + clues.name(column)
            + range
            + "? --channel=NAME="
            + clues.name(column)
            + ":degC or :degF");
    return LogUnit.CELSIUS;
  }

  /** Unit that every cell with a number states. */
  private Optional<LogUnit> statedByCells(int column) {
    List<Optional<LogUnit>> units =
        clues.rows().stream()
            .filter(row -> !Double.isNaN(value(row, column)))
            .map(row -> CellReader.stated(Clues.cell(row, column)))
            .distinct()
            .toList();
    return units.size() == 1 ? units.get(0) : Optional.empty();
  }

  /** Another channel that this column is, in another unit. */
  private Optional<ChannelRule> sameAs(List<ChannelRule> rules, int column, LogUnit unit) {
    return rules.stream()
        .filter(rule -> rule.unit() != unit)
        .filter(
            rule ->
                clues.rows().stream()
                    .allMatch(
                        row -> {
                          double one = rule.unit().si(value(row, rule.column()));
                          double other = unit.si(value(row, column));
                          return Math.abs(one - other) <= SAME
                              || (Double.isNaN(one) && Double.isNaN(other));
                        }))
        .findFirst();
  }

  /** Words and impossible numbers that stand where readings should. */
  Set<String> noProbe(List<ChannelRule> rules) {
    Set<String> found = new TreeSet<>();
    for (ChannelRule rule : rules) {
      for (List<String> row : clues.rows()) {
        String cell = Clues.cell(row, rule.column());
        boolean word = !cells.read(cell, rule.unit());
        double kelvin = rule.unit().si(cells.value());
        boolean impossible =
            !word
                && !cells.isMissing()
                && (!(kelvin >= COLDEST && kelvin <= HOTTEST) || isMark(cell, rule));
        if ((word || impossible) && cell.length() <= 20 && found.size() < 20 && found.add(cell)) {
          clues.because(
              IntakeException.quoted(cell)
                  + " means no probe: it stands among the readings of "
                  + clues.name(rule.column())
                  + (word ? " and is no number" : " and is no temperature of a cook"));
        }
      }
    }
    return found;
  }

  /** Whether a cell is all nines, and far from all other numbers of its column. */
  private boolean isMark(String cell, ChannelRule rule) {
    if (!MARK.matcher(cell).matches()) {
      return false;
    }
    double mark = cells.written();
    double nearest =
        clues.rows().stream()
            .filter(row -> !Clues.cell(row, rule.column()).equals(cell))
            .mapToDouble(row -> Math.abs(value(row, rule.column()) - mark))
            .filter(distance -> !Double.isNaN(distance))
            .min()
            .orElse(Double.POSITIVE_INFINITY);
    return nearest >= APART;
  }

  private double mean(int column) {
    return clues.rows().stream()
        .mapToDouble(row -> value(row, column))
        .filter(v -> !Double.isNaN(v))
        .average()
        .orElse(0);
  }

  private double value(List<String> row, int column) {
    String cell = column < row.size() ? row.get(column) : "";
    return cells.read(cell, LogUnit.CELSIUS) ? cells.written() : Double.NaN;
  }
}
