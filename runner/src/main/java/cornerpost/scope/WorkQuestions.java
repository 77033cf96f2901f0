package cornerpost.scope;

import static cornerpost.scope.OwnerSheet.WHO_DOES_WHAT;

import java.util.List;

/** The columns of sheet Who does what: a row for each trade. */
public final class WorkQuestions {
  public static final Question TRADE = Question.oneOf(WHO_DOES_WHAT, "Package", Trade.class);
  public static final Question PARTY =
      Question.oneOf(WHO_DOES_WHAT, "Done by", Party.class).standard(Party.HIRED);
  public static final Question OWNER_SHARE =
      Question.share(WHO_DOES_WHAT, "Owner's share")
          .upTo("1")
          .standard("0.5")
          .help("Of the hours, where mixed: 50 % if empty.");
  public static final Question PEOPLE =
      Question.whole(WHO_DOES_WHAT, "People")
          .from("1")
          .upTo("20")
          .optional()
          .help("In the crew. Empty: the price book's usual crew, or the owner's hands.");

  public static final List<Question> ALL = List.of(TRADE, PARTY, OWNER_SHARE, PEOPLE);

  private WorkQuestions() {}
}
