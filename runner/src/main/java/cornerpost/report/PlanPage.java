package cornerpost.report;

import cornerpost.plan.Plan;
import freemarker.cache.ClassTemplateLoader;
import freemarker.core.HTMLOutputFormat;
import freemarker.core.TemplateClassResolver;
import freemarker.template.Configuration;
import freemarker.template.DefaultObjectWrapperBuilder;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;

/**
 * The plan as one HTML file that needs nothing else: no script, no picture, no font from elsewhere.
 * All text of the owner is escaped.
 */
public final class PlanPage {
  /** Records are read by the names of their components from this version on. */
  private static final freemarker.template.Version RULES = Configuration.VERSION_2_3_33;

  private static final List<String> TEMPLATES =
      List.of(
          "plan", "answer", "house", "way", "money", "lender", "moving", "orders", "checks",
          "sources", "parts");

  private final Configuration configuration;

  private PlanPage(Configuration configuration) {
    this.configuration = configuration;
  }

  /** The page, UTF-8. */
  public static byte[] write(Plan plan) {
    return opened().page(plan);
  }

  /** Reads the templates, which can be done while the plan is still being made. */
  public static PlanPage opened() {
    var c = configuration();
    try {
      for (var name : TEMPLATES) c.getTemplate(name + ".ftlh");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return new PlanPage(c);
  }

  /** The page of a plan, UTF-8. */
  public byte[] page(Plan plan) {
    var out = new StringWriter();
    try {
      configuration.getTemplate("plan.ftlh").process(PageModel.of(plan), out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (TemplateException e) {
      throw new IllegalStateException("The page does not fit its model: " + e.getMessage(), e);
    }
    return TextOfPage.turned(Svg.allowed(out.toString()), plan.numbers())
        .getBytes(StandardCharsets.UTF_8);
  }

  /** Templates can only print: no class is made or reached from them. */
  private static Configuration configuration() {
    var c = new Configuration(RULES);
    c.setTemplateLoader(new ClassTemplateLoader(PlanPage.class.getClassLoader(), "report"));
    c.setDefaultEncoding("UTF-8");
    c.setOutputFormat(HTMLOutputFormat.INSTANCE);
    c.setRecognizeStandardFileExtensions(true);
    c.setLocale(Locale.ROOT);
    c.setTimeZone(TimeZone.getTimeZone("UTC"));
    c.setNumberFormat("computer");
    c.setObjectWrapper(new DefaultObjectWrapperBuilder(RULES).build());
    c.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
    c.setAPIBuiltinEnabled(false);
    c.setLogTemplateExceptions(false);
    c.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
    return c;
  }
}
