package longbough.runner.table;

/** From the model's metres to the centimetres of files and pages. */
final class Units {

  private Units() {}

  static double cm(double metres) {
    return metres * 100;
  }

  static double cm2(double squareMetres) {
    return squareMetres * 10_000;
  }
}
