package coldseam.options;

import java.util.OptionalDouble;

/**
 * What is asked of the combinations, beside what is always asked.
 *
 * @param budget most that may be spent more than for what is described, in the house's currency
 * @param heatLoss W/K that H_T may not exceed
 * @param energy kWh that the loss of a year may not exceed, by degree days and without gains
 */
public record Wish(OptionalDouble budget, OptionalDouble heatLoss, OptionalDouble energy) {}
