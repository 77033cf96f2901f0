package cornerpost.price;

import cornerpost.scope.Labelled;

/** Kinds of supplier, by which the buying list is grouped. */
public enum SupplierGroup implements Labelled {
  OFFICE("Design, permits, insurance"),
  SITE_HIRE("Site and plant hire"),
  BOXES("Containers and haulage"),
  GROUND("Concrete and ground"),
  STEEL("Steel and welding"),
  WINDOWS("Windows and doors"),
  TIMBER("Timber and sheet"),
  ROOFING("Roofing and cladding"),
  INSULATION("Insulation and membranes"),
  BOARDS("Boards and plaster"),
  ELECTRICAL("Electrical"),
  PLUMBING("Plumbing"),
  CLIMATE("Heating and ventilation"),
  SANITARY("Bathroom fittings"),
  KITCHEN("Kitchen and appliances"),
  FLOORS("Floors and tiles"),
  PAINT("Paint and sealants"),
  FIXINGS("Fixings and small tools"),
  UTILITIES("Utility connections"),
  OUTSIDE("Outside works"),
  FURNITURE("Furniture");

  private final String label;

  SupplierGroup(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
