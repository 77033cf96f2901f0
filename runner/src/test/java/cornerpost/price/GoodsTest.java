package cornerpost.price;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is expected is how a person would name the goods on a note to a supplier; no source. */
class GoodsTest {
  private static List<String> list(String goods) {
    return List.of(goods.split(" \\| "));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "Inner stair with guard and handrail; inner stair with guard and handrail",
        "Container, 40 ft high cube, one trip; container, 40 ft high cube, one trip",
        "Container, 20 ft | Container truck: way | Container truck: call-out; container and container truck",
        "Window, by area, double glass | Opening window, the piece: frame, gear; window and opening window",
        "Verge, eaves and ridge flashing | Gutter | Roof sheet, painted; verge, eaves and ridge flashing, gutter and roof sheet",
        "PVC pipe 50 mm | Mobile crane to 5 t at 10 m (11,000 lb at 33 ft) with driver; PVC pipe 50 mm and mobile crane to 5 t at 10 m",
      })
  void few_goods_are_named_without_what_only_qualifies_them(String goods, String said) {
    assertThat(Goods.said(list(goods))).isEqualTo(said);
    assertThat(Goods.of(SupplierGroup.TIMBER, list(goods), false)).isEqualTo(said);
    assertThat(Goods.of(SupplierGroup.TIMBER, list(goods), true)).isEqualTo(said);
  }

  @ParameterizedTest
  @CsvSource({
    "true, timber and sheet",
    "false, 'deck board, stair and 2 more of timber and sheet'"
  })
  void many_goods_are_named_by_their_supplier_only_where_nothing_of_it_is_bought_apart(
      boolean whole, String said) {
    var goods = List.of("Deck board, hardwood", "Stair", "Beam 45 x 145", "Plywood 18 mm");
    assertThat(Goods.of(SupplierGroup.TIMBER, goods, whole)).isEqualTo(said);
    assertThat(Goods.said(goods)).isEqualTo("deck board, stair and 2 more");
  }
}
