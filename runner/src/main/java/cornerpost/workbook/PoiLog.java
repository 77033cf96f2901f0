package cornerpost.workbook;

/**
 * Silences the spreadsheet library, which else writes to standard error of every damaged part it
 * meets: what is wrong is said once, in our words. Its logger reads these properties when the first
 * class of it is loaded, so this is called before; a property already set stays as it is.
 */
final class PoiLog {
  private PoiLog() {}

  static void off() {
    set("log4j2.StatusLogger.level");
    set("org.apache.logging.log4j.simplelog.level");
  }

  private static void set(String level) {
    if (System.getProperty(level) == null) System.setProperty(level, "OFF");
  }
}
