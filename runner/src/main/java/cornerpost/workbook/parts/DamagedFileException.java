package cornerpost.workbook.parts;

/** A package or a part that is not what the standard says; its message says in what way. */
public final class DamagedFileException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /** Why a file cannot be taken. */
  public enum Kind {
    /** Not a package, cut short, or with XML that is none. */
    DAMAGED,
    /** It unpacks to far more than its size allows for. */
    SWELLS,
    /** A part declares a document type, which no spreadsheet program writes. */
    DOCUMENT_TYPE,
    /** The strict form of the standard, which has other names for everything. */
    STRICT,
    /** It holds programs. */
    MACROS
  }

  private final Kind kind;

  DamagedFileException(Kind kind, String message) {
    super(message);
    this.kind = kind;
  }

  DamagedFileException(String message) {
    this(Kind.DAMAGED, message);
  }

  public Kind kind() {
    return kind;
  }
}
