package cornerpost.report;

import cornerpost.plan.Plan;
import cornerpost.price.PriceBook;
import cornerpost.scope.ProjectQuestions;
import freemarker.core.HTMLOutputFormat;
import freemarker.template.TemplateModelException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What the template prints: words and drawings only, ready as they stand. */
final class PageModel {
  private PageModel() {}

  static Map<String, Object> of(Plan plan) {
    var model = new LinkedHashMap<String, Object>();
    model.put("name", plan.scope().project().text(ProjectQuestions.NAME));
    model.put("status", Words.day(plan.statusDate()));
    model.put("fingerprint", plan.fingerprint());
    model.put("currency", plan.estimate().currency().getCurrencyCode());
    model.put("units", plan.scope().units().label());
    model.put("book", plan.book().map(PriceBook::name).orElse(""));
    model.put("region", plan.book().map(b -> b.region().name()).orElse(""));
    model.put("notice", plan.book().map(b -> b.region().notice()).orElse(""));
    model.put("priceDate", plan.book().map(b -> Words.day(b.region().priceDate())).orElse(""));
    model.put("house", !plan.scope().boxes().isEmpty());
    model.put("priced", !plan.estimate().lines().isEmpty());
    new AnswerSection(plan).into(model);
    new HouseSection(plan).into(model);
    new WaySection(plan).into(model);
    new MoneySection(plan).into(model);
    new MovingSection(plan).into(model);
    new LenderSection(plan).into(model);
    new OrdersSection(plan).into(model);
    new ChecksSection(plan).into(model);
    new SourcesSection(plan).into(model);
    return model;
  }

  /** Markup made by {@link Svg}, which the template prints as it is. */
  static Object markup(String svg) {
    try {
      return HTMLOutputFormat.INSTANCE.fromMarkup(svg);
    } catch (TemplateModelException e) {
      throw new IllegalStateException(e);
    }
  }

  static List<Object> markup(List<String> svgs) {
    return svgs.stream().map(PageModel::markup).toList();
  }
}
