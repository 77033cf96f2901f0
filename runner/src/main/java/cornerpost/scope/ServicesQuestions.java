package cornerpost.scope;

import static cornerpost.scope.OwnerSheet.SERVICES;

import cornerpost.measure.Unit;
import java.util.List;

/** What sheet Services asks. */
public final class ServicesQuestions {
  public static final Question POWER =
      Question.oneOf(SERVICES, "Electricity", PowerSupply.class).standard(PowerSupply.GRID);
  public static final Question POWER_DISTANCE = run("Distance to electricity", "25", "80");
  public static final Question WATER =
      Question.oneOf(SERVICES, "Water", WaterSupply.class).standard(WaterSupply.MAINS);
  public static final Question WATER_DISTANCE = run("Distance to water", "25", "80");
  public static final Question WASTE =
      Question.oneOf(SERVICES, "Waste water", WasteWater.class).standard(WasteWater.SEWER);
  public static final Question WASTE_DISTANCE = run("Distance to sewer or tank", "25", "80");
  public static final Question HEATING =
      Question.oneOf(SERVICES, "Heating and cooling", HeatingCooling.class)
          .standard(HeatingCooling.SPLIT);
  public static final Question HEADS =
      Question.whole(SERVICES, "Indoor units or heaters").from("1").upTo("10").standard("1");
  public static final Question VENTILATION =
      Question.oneOf(SERVICES, "Ventilation", VentilationKind.class)
          .standard(VentilationKind.EXTRACT);
  public static final Question HOT_WATER =
      Question.oneOf(SERVICES, "Hot water", HotWater.class).standard(HotWater.TANK);
  public static final Question COOKING =
      Question.oneOf(SERVICES, "Cooking", Cooking.class).standard(Cooking.ELECTRIC);
  public static final Question LAUNDRY =
      Question.yesNo(SERVICES, "Washing machine").standard("yes");
  public static final Question DISHWASHER = Question.yesNo(SERVICES, "Dishwasher").standard("no");
  public static final Question DATA = Question.yesNo(SERVICES, "Data cabling").standard("yes");
  public static final Question EXTRA_SOCKETS =
      Question.whole(SERVICES, "Extra socket outlets").standard("2").upTo("60");
  public static final Question OUTSIDE_LIGHTS =
      Question.whole(SERVICES, "Outside lights").standard("2").upTo("30");
  public static final Question WINTER_TEMPERATURE =
      Question.number(SERVICES, "Coldest design temperature", Unit.CELSIUS, Unit.FAHRENHEIT)
          .from("-50")
          .upTo("25")
          .optional()
          .help("The cold that the house is laid out for. Empty: the price book's.");
  public static final Question SERVICE_END =
      Question.oneOf(SERVICES, "Panel and water main at", ServiceEnd.class)
          .standard(ServiceEnd.DOOR_END)
          .help("Cable and pipe are measured from there.");

  public static final List<Question> ALL =
      List.of(
          POWER,
          POWER_DISTANCE,
          WATER,
          WATER_DISTANCE,
          WASTE,
          WASTE_DISTANCE,
          HEATING,
          HEADS,
          VENTILATION,
          HOT_WATER,
          COOKING,
          LAUNDRY,
          DISHWASHER,
          DATA,
          EXTRA_SOCKETS,
          OUTSIDE_LIGHTS,
          WINTER_TEMPERATURE,
          SERVICE_END);

  private ServicesQuestions() {}

  private static Question run(String label, String metres, String feet) {
    return Question.number(SERVICES, label, Unit.M, Unit.FT).standard(metres, feet).upTo("2000");
  }
}
