package faultfinch.part;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class PartCatalogTest {

  @ParameterizedTest
  @EnumSource
  void named_typeOfARow_isThatRow(PartCatalog row) {
    assertEquals(Optional.of(row), PartCatalog.named(row.type()));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "74ls00", "LS_00", "74LS999"})
  void named_unknownType_isNothing(String type) {
    assertEquals(Optional.empty(), PartCatalog.named(type));
  }
}
