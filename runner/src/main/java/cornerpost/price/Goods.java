package cornerpost.price;

import cornerpost.measure.Spoken;
import java.util.List;
import java.util.Locale;

/** What an order is for, in few words: the same on every sheet, on the page and in the calendar. */
public final class Goods {
  /** As many are named; of more the first ones, and how many more. */
  private static final int NAMED = 3;

  private Goods() {}

  /**
   * Goods by name; a single one with its size and kind.
   *
   * @param descriptions of the price book, what tells most first
   * @return {@code opening window, outside door and 3 more}; empty for none
   */
  public static String said(List<String> descriptions) {
    var names = names(descriptions);
    return names.size() <= NAMED ? Spoken.list(names) : first(names) + more(names);
  }

  /**
   * The same, with the kind of supplier where the goods are too many to name: by itself where the
   * whole of what is bought there is meant.
   *
   * @param whole whether nothing else is bought of the group
   */
  public static String of(SupplierGroup group, List<String> descriptions, boolean whole) {
    var names = names(descriptions);
    if (names.size() <= NAMED) return Spoken.list(names);
    var supplier = group.label().toLowerCase(Locale.ROOT);
    return whole ? supplier : first(names) + more(names) + " of " + supplier;
  }

  private static String first(List<String> names) {
    return String.join(", ", names.subList(0, NAMED - 1));
  }

  private static String more(List<String> names) {
    return " and " + (names.size() - (NAMED - 1)) + " more";
  }

  private static List<String> names(List<String> descriptions) {
    var all = descriptions.stream().distinct().toList();
    if (all.size() == 1) return List.of(inSentence(all.get(0)));
    return all.stream().map(Goods::name).distinct().toList();
  }

  /**
   * A description up to what only qualifies it: {@code Opening window, the piece: frame, gear} is
   * an opening window. What follows a comma and holds an "and" goes on with a list: {@code Verge,
   * eaves and ridge flashing} stays whole.
   */
  private static String name(String description) {
    var text = before(before(description, ": "), " (");
    int comma = text.indexOf(", ");
    boolean list = comma > 0 && text.indexOf(" and ", comma) > 0;
    return inSentence(list ? text : before(text, ", "));
  }

  private static String before(String text, String mark) {
    int at = text.indexOf(mark);
    return at > 0 ? text.substring(0, at) : text;
  }

  /** Without the capital of a beginning; {@code PVC pipe} keeps its own. */
  private static String inSentence(String text) {
    return text.length() > 1 && Character.isLowerCase(text.charAt(1))
        ? text.substring(0, 1).toLowerCase(Locale.ROOT) + text.substring(1)
        : text;
  }
}
