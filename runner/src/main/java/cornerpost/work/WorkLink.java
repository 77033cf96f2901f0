package cornerpost.work;

import cornerpost.scope.DurationUnit;
import cornerpost.scope.LinkRelation;

/**
 * A tie between two tasks.
 *
 * @param lagMinutes working minutes of the later task's calendar, or elapsed minutes; may be
 *     negative
 * @param lagUnit the unit people see it in; {@code ELAPSED_DAYS} makes the lag elapsed
 * @param why the reason, in a few words
 */
public record WorkLink(
    String before,
    String after,
    LinkRelation relation,
    long lagMinutes,
    DurationUnit lagUnit,
    String why) {}
