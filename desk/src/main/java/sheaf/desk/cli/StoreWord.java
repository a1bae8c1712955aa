package sheaf.desk.cli;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import sheaf.desk.store.StorePlace;

/** The address of a shared store as a person types it. */
final class StoreWord implements ITypeConverter<String> {

  @Override
  public String convert(String typed) {
    try {
      return StorePlace.address(typed);
    } catch (IllegalArgumentException e) {
      throw new TypeConversionException(e.getMessage());
    }
  }
}
