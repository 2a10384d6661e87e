package org.roastfield.lab.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * What the columns of a log seem to be.
 *
 * @param declaration the proposal
 * @param reasons for each thing that was not stated
 * @param questions what the content cannot decide; until they are answered by options the proposal
 *     must not be taken
 */
public record Proposal(Declaration declaration, List<String> reasons, List<String> questions) {

  /** Copies the lists. */
  public Proposal {
    reasons = List.copyOf(reasons);
    questions = List.copyOf(questions);
  }

  /** Options that state all of it, quoted for a shell. */
  public String options() {
    List<String> options = new ArrayList<>();
    Layout layout = declaration.layout();
    add(options, "--encoding", layout.charset().name());
    add(options, "--separator", layout.separator() == '\t' ? "tab" : "" + layout.separator());
    add(options, "--decimal-mark", layout.decimalComma() ? "," : ".");
    add(options, "--skip", Integer.toString(layout.skipped()));
    add(options, "--header", layout.header() ? "yes" : "no");
    String time = declaration.time().stream().map(this::column).collect(Collectors.joining("+"));
    add(options, "--time", time + "=" + declaration.style().word());
    declaration.zone().ifPresent(zone -> add(options, "--zone", zone.getId()));
    declaration
        .only()
        .ifPresent(only -> add(options, "--rows", column(only.column()) + "=" + only.value()));
    if (declaration.names() >= 0) {
      add(options, "--by", column(declaration.names()));
      add(options, "--value", column(declaration.channels().get(0).column()));
    }
    for (ChannelRule rule : declaration.channels()) {
      String where = declaration.names() >= 0 ? rule.probe() : column(rule.column());
      add(options, "--channel", rule.channel() + "=" + where + ":" + rule.unit().word());
    }
    declaration.noProbe().stream().sorted().forEach(word -> add(options, "--no-probe", word));
    return String.join(" ", options);
  }

  private String column(int i) {
    String name = declaration.columns().get(i);
    boolean once = declaration.columns().stream().filter(name::equals).count() == 1;
    boolean typed = once && !name.isBlank() && !name.contains("+") && Visible.isPlain(name);
    return typed ? name : "#" + (i + 1);
  }

  private static void add(List<String> options, String option, String value) {
    options.add(option + "=" + quoted(value));
  }

  /** Text as one word of a POSIX shell. */
  public static String quoted(String text) {
    return text.matches("[A-Za-z0-9_./:=#+-]+") ? text : "'" + text.replace("'", "'\\''") + "'";
  }
}
