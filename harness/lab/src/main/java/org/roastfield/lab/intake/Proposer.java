package org.roastfield.lab.intake;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Proposes what the columns of a log are, from what the user states and from the beginning of the
 * file. Says a reason for each guess, and asks where the content does not decide.
 */
public final class Proposer {

  private final Wishes wishes;
  private final List<String> reasons = new ArrayList<>();
  private final List<String> questions = new ArrayList<>();
  private final Layout layout;
  private final List<String> names;
  private final List<String> units;
  private final List<List<String>> rows;

  private Proposer(Sample sample, Wishes wishes) {
    this.wishes = wishes;
    this.layout = new LayoutGuess(sample, wishes, reasons).layout();
    List<List<String>> all = sample.rows(layout.separator(), layout.skipped());
    this.names = names(all, layout.header());
    List<List<String>> below = all.subList(layout.header() ? 1 : 0, all.size());
    boolean united = layout.header() && !below.isEmpty() && Units.areUnits(below.get(0));
    this.units = united ? below.get(0) : List.of();
    this.rows = below.subList(united ? 1 : 0, below.size());
    if (united) {
      reasons.add("the line below the header is of units: " + String.join(", ", units));
    }
    if (rows.isEmpty()) {
      throw new IntakeException("found no rows below the header, expected some");
    }
    if (names.size() > TakeIn.MOST_COLUMNS) {
      throw new IntakeException(
          "found " + names.size() + " columns, expected at most " + TakeIn.MOST_COLUMNS);
    }
  }

  /**
   * Proposal for a file.
   *
   * @throws IOException if it cannot be read
   * @throws IntakeException if it has no rows, or lacks what the user states
   */
  public static Proposal propose(Path path, Wishes wishes) throws IOException {
    Sample sample =
        wishes.charset().isPresent()
            ? Sample.read(path, wishes.charset().get())
            : Sample.read(path);
    try {
      return new Proposer(sample, wishes).proposal();
    } catch (IntakeException e) {
      throw new IntakeException(path.getFileName() + ": " + e.getMessage());
    }
  }

  private static List<String> names(List<List<String>> all, boolean header) {
    int columns = header ? all.get(0).size() : all.stream().mapToInt(List::size).max().orElse(0);
    List<String> names = new ArrayList<>();
    for (int i = 0; i < columns; i++) {
      boolean named = header && i < all.get(0).size() && !all.get(0).get(i).isBlank();
      names.add(named ? all.get(0).get(i).strip() : "#" + (i + 1));
    }
    return names;
  }

  private Proposal proposal() {
    Optional<Declaration.Only> only = wishes.only().map(this::only);
    List<List<String>> wanted =
        rows.stream()
            .filter(
                row ->
                    only.isEmpty()
                        || (row.size() > only.get().column()
                            && row.get(only.get().column()).strip().equals(only.get().value())))
            .toList();
    Clues clues = new Clues(names, units, wanted, layout.decimalComma(), reasons, questions);
    TimeGuess.Time time = new TimeGuess(clues).time(wishes.time().map(this::statedTime));
    int by = wishes.names().map(this::column).orElse(-1);
    ChannelGuess guess = new ChannelGuess(clues);
    List<ChannelRule> channels =
        wishes.channels().isEmpty()
            ? guess.channels(time.columns(), stated(only), by, wishes.value().map(this::column))
            : wishes.channels().stream().map(text -> statedChannel(text, by)).toList();
    Set<String> noProbe = new TreeSet<>(wishes.noProbe());
    if (wishes.noProbe().isEmpty()) {
      noProbe.addAll(guess.noProbe(channels));
    }
    if (time.style().isDated() && wishes.zone().isEmpty() && !time.hasOffset()) {
      reasons.add(
          "no time zone: clock times are taken as they stand, without a change of the clock");
    }
    Declaration declaration =
        new Declaration(
            layout,
            names,
            time.columns(),
            time.style(),
            wishes.zone(),
            channels,
            by,
            only,
            noProbe);
    return new Proposal(declaration, reasons, questions);
  }

  private static Set<Integer> stated(Optional<Declaration.Only> only) {
    return only.isPresent() ? Set.of(only.get().column()) : Set.of();
  }

  private Declaration.Only only(String text) {
    int mark = text.indexOf('=');
    if (mark < 1) {
      throw new IntakeException("--rows must be COLUMN=VALUE, was " + IntakeException.quoted(text));
    }
    return new Declaration.Only(column(text.substring(0, mark)), text.substring(mark + 1).strip());
  }

  private TimeGuess.Time statedTime(String text) {
    int mark = text.lastIndexOf('=');
    Optional<TimeStyle> style =
        mark < 1 ? Optional.empty() : TimeStyle.of(text.substring(mark + 1));
    if (style.isEmpty()) {
      throw new IntakeException(
          "--time must be COLUMN=STYLE or DATE+TIME=STYLE with one of "
              + TimeStyle.words()
              + ", was "
              + IntakeException.quoted(text));
    }
    String where = text.substring(0, mark);
    int plus = where.indexOf('+');
    List<Integer> columns =
        names.contains(where) || plus < 0
            ? List.of(column(where))
            : List.of(column(where.substring(0, plus)), column(where.substring(plus + 1)));
    return new TimeGuess.Time(columns, style.get(), false);
  }

  private ChannelRule statedChannel(String text, int by) {
    int first = text.indexOf('=');
    int last = text.lastIndexOf(':');
    if (first < 1 || last < first) {
      throw new IntakeException(
          "--channel must be NAME=COLUMN:UNIT, was " + IntakeException.quoted(text));
    }
    String name = text.substring(0, first);
    String where = text.substring(first + 1, last);
    String unit = text.substring(last + 1);
    if (!name.matches("[a-z][a-z0-9-]{0,39}") || name.equals("time")) {
      throw new IntakeException(
          "the name in --channel must be lower-case letters, digits and hyphens, was "
              + IntakeException.quoted(name));
    }
    if (by < 0) {
      return new ChannelRule(name, column(where), Units.of(unit), "");
    }
    int value =
        column(
            wishes
                .value()
                .orElseThrow(
                    () -> new IntakeException("--value must name the readings' column with --by")));
    return new ChannelRule(name, value, Units.of(unit), where);
  }

  /** Column of a name, or of a number such as "#3". */
  private int column(String text) {
    int index = names.indexOf(text.strip());
    if (index >= 0) {
      if (names.lastIndexOf(text.strip()) != index) {
        throw new IntakeException(
            "found more than one column "
                + IntakeException.quoted(text)
                + ", expected its number, such as #"
                + (index + 1));
      }
      return index;
    }
    if (text.matches("#[1-9]\\d{0,2}") && Integer.parseInt(text.substring(1)) <= names.size()) {
      return Integer.parseInt(text.substring(1)) - 1;
    }
    throw new IntakeException(
        "found no column "
            + IntakeException.quoted(text)
            + ", expected one of "
            + String.join(", ", names.stream().map(IntakeException::quoted).toList()));
  }
}
