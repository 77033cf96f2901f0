package cornerpost.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Colours that mean different things beside each other stay apart for eyes that lack a kind of
 * cone, on paper and on dark.
 *
 * <p>Simulation: G. M. Machado, M. M. Oliveira and L. A. F. Fernandes, "A physiologically-based
 * model for simulation of color vision deficiency", IEEE Transactions on Visualization and Computer
 * Graphics 15 (2009) 1291-1298, matrices for severity 1.0, on linear light. Distance: CIE 1976
 * colour difference in L*a*b*, D65. Ten is several times what is just noticed side by side (2.3: M.
 * Mahy, L. Van Eycken and A. Oosterlinck, "Evaluation of uniform color spaces", Color Research and
 * Application 19 (1994) 105-121; from memory).
 */
class ColoursApartTest {
  private static final double APART = 10;

  /** Names of the page's colours that can stand side by side, by picture. */
  private static final List<List<String>> PICTURES =
      List.of(
          List.of("ink", "near", "free", "done", "hold", "paper"), // the bars
          List.of("out", "in", "owed", "paper"), // money against time
          List.of("ink", "hold", "stop", "paper")); // advice

  private static final Map<String, double[][]> EYES =
      Map.of(
          "usual", new double[][] {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}},
          "protanopia",
              new double[][] {
                {0.152286, 1.052583, -0.204868},
                {0.114503, 0.786281, 0.099216},
                {-0.003882, -0.048116, 1.051998}
              },
          "deuteranopia",
              new double[][] {
                {0.367322, 0.860646, -0.227968},
                {0.280085, 0.672501, 0.047413},
                {-0.011820, 0.042940, 0.968881}
              },
          "tritanopia",
              new double[][] {
                {1.255528, -0.076749, -0.178779},
                {-0.078411, 0.930809, 0.147602},
                {0.004733, 0.691367, 0.303900}
              });

  @ParameterizedTest(name = "{0}, {1}")
  @CsvSource({
    "usual,paper",
    "protanopia,paper",
    "deuteranopia,paper",
    "tritanopia,paper",
    "usual,dark",
    "protanopia,dark",
    "deuteranopia,dark",
    "tritanopia,dark"
  })
  void colours_of_a_picture_stay_apart(String eye, String ground) throws IOException {
    var colours = colours(ground.equals("dark"));
    for (var picture : PICTURES) {
      for (var a : picture) {
        for (var b : picture) {
          if (a.compareTo(b) >= 0) continue;
          assertThat(
                  distance(
                      seen(colours.get(a), EYES.get(eye)), seen(colours.get(b), EYES.get(eye))))
              .as(a + " beside " + b)
              .isGreaterThan(APART);
        }
      }
    }
  }

  /** The page's own colours, as its style sheet names them. */
  private static Map<String, Integer> colours(boolean dark) throws IOException {
    String css;
    try (var in = PlanPage.class.getResourceAsStream("/report/page.css")) {
      css = new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
    int at = css.indexOf("prefers-color-scheme:dark");
    var part = dark ? css.substring(at, css.indexOf("}}", at)) : css.substring(0, at);
    var colours = new HashMap<String, Integer>();
    var found = Pattern.compile("--([a-z-]+):#([0-9a-f]{6})").matcher(part);
    while (found.find()) colours.put(found.group(1), Integer.parseInt(found.group(2), 16));
    return colours;
  }

  /** L*, a* and b* of a colour as an eye sees it. */
  private static double[] seen(int rgb, double[][] eye) {
    var light = new double[3];
    for (int i = 0; i < 3; i++) light[i] = linear((rgb >> (16 - 8 * i) & 255) / 255.0);
    var mixed = new double[3];
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) mixed[i] += eye[i][j] * light[j];
      mixed[i] = Math.max(0, Math.min(1, mixed[i]));
    }
    // IEC 61966-2-1 to CIE XYZ, D65.
    double x = 0.4124 * mixed[0] + 0.3576 * mixed[1] + 0.1805 * mixed[2];
    double y = 0.2126 * mixed[0] + 0.7152 * mixed[1] + 0.0722 * mixed[2];
    double z = 0.0193 * mixed[0] + 0.1192 * mixed[1] + 0.9505 * mixed[2];
    double fx = root(x / 0.95047);
    double fy = root(y);
    double fz = root(z / 1.08883);
    return new double[] {116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz)};
  }

  private static double linear(double c) {
    return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
  }

  private static double root(double t) {
    return t > 216.0 / 24389 ? Math.cbrt(t) : (24389.0 / 27 * t + 16) / 116;
  }

  private static double distance(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < 3; i++) sum += (a[i] - b[i]) * (a[i] - b[i]);
    return Math.sqrt(sum);
  }
}
