package cornerpost.app;

/** How a run ended; the exit status is the contract with whoever started it. */
enum Outcome {
  DONE,
  INPUT_REFUSED,
  WRONG_USAGE,
  OUR_FAULT;

  int exitStatus() {
    return switch (this) {
      case DONE -> 0;
      case INPUT_REFUSED -> 1;
      case WRONG_USAGE -> 2;
      case OUR_FAULT -> 3;
    };
  }
}
