package cornerpost.workbook;

import cornerpost.fact.Facts;
import cornerpost.scope.Question;
import cornerpost.workbook.parts.StoredBook;
import java.util.Optional;

/**
 * Reads the owner's workbook into the choices of a plan, reporting every problem at once.
 *
 * <p>It reads what the sheets hold, not who wrote them: any program that saves .xlsx will do.
 * Result sheets of an earlier run and sheets of the owner's own are ignored. Formula cells count by
 * the result stored with them.
 */
public final class WorkbookReader {
  private WorkbookReader() {}

  /** Reads with the facts that come with the program. */
  public static Reading read(byte[] content, String fileName) {
    return read(content, fileName, Facts.supplied());
  }

  /**
   * Reads a workbook. Never throws for what the bytes hold: whatever is wrong with them is a
   * problem.
   *
   * @param content the bytes of the file
   * @param fileName how to call the file in problems that concern it as a whole
   * @param facts the sizes of boxes, against which rooms and openings are checked
   */
  public static Reading read(byte[] content, String fileName, Facts facts) {
    return open(content, fileName).read(facts);
  }

  /** Opens a workbook and reads none of it yet. */
  public static Opened open(byte[] content, String fileName) {
    var faults = new FaultLog();
    return new Opened(fileName, WorkbookFile.open(content, fileName, faults), faults);
  }

  /** A workbook that was opened, or what stood in the way. */
  public static final class Opened {
    private final String fileName;
    private final Optional<StoredBook> book;
    private final FaultLog faults;

    private Opened(String fileName, Optional<StoredBook> book, FaultLog faults) {
      this.fileName = fileName;
      this.book = book;
      this.faults = faults;
    }

    /** What a form line says as it stands; for what can be fetched while the rest is read. */
    public Optional<String> peek(Question question) {
      return book.flatMap(b -> ScopeReader.peek(b, question));
    }

    /** The cell of a form line, such as {@code Project!B10}; empty where the line is missing. */
    public Optional<String> cell(Question question) {
      return book.flatMap(b -> ScopeReader.cell(b, question));
    }

    /** Whether it is a workbook of choices that wants a house planned, not own tasks alone. */
    public boolean asksForHouse() {
      return book.map(ScopeReader::asksForHouse).orElse(false);
    }

    /** Reads it all; once only. */
    public Reading read(Facts facts) {
      if (book.isEmpty()) {
        return new Reading(book, Optional.empty(), Optional.empty(), faults.all());
      }
      var reader = new ScopeReader(book.get(), fileName, facts, faults);
      var scope = reader.read();
      return faults.hasFaults()
          ? new Reading(book, Optional.empty(), reader.sketch(scope), faults.all())
          : new Reading(book, Optional.of(scope), Optional.empty(), faults.all());
    }
  }
}
