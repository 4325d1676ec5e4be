/**
 * The front of cost against heat loss over all combinations of decisions: mathematics alone, no word of houses, no file.
 *
 * <p><b>Problem.</b> A scenario fixes what moves everything else (the build-ups). In it every group is decided by one of its
 * items. An item has a cost, a whole number, and a heat loss that is one number known to lie between two whole numbers. A
 * set, one scenario with one item of each of its groups, costs the sum of the costs, and its loss lies between the sums of
 * the bounds. Which sets are worth knowing?
 *
 * <p><b>What is left out, and why nothing is lost.</b> Of two partial sets a and b over the same groups of one scenario, b is
 * left out where a costs no more and the upper bound of a is no higher than the lower bound of b. What the scenario fixes
 * is in neither sum, since it is one number in both; and two items of one group are held against each other alike, all else
 * being the same. Then, whatever the true numbers are, a loses no more than b. Let r be any decision of the remaining groups. r adds the same cost to both, and
 * the same true loss to both, since its items are the same things in both houses. So a + r costs no more and loses no more
 * than b + r: b can be left out before the rest is known. "Costs no more and loses no more" is transitive, and each step
 * goes to a set that was kept or to one that was left out for another; a finite number of sets has no endless chain. So for
 * every set left out there is a kept one that costs no more and loses no more, for every true value within the intervals.
 * Sets that the intervals cannot tell apart are all kept; of two that cost the same and lose exactly the same one is.
 *
 * <p><b>Where too many cannot be told apart</b> (over {@link coldseam.options.front.Search#MOST}), b is left out, too, where
 * a costs no more, and neither bound of a is higher than that of b. Adding r moves the bounds of both alike, so the same
 * argument holds for the bounds: for every set left out there is a kept one that costs no more and has no higher upper and
 * no higher lower bound. Least proven and least possible loss for every budget, and least proven and least possible cost
 * for every target, are then exact still; what is lost is only the list of all sets that are as good. The front says which
 * of both was done.
 *
 * <p>Numbers are whole, so that sums are exact in any order.
 */
package coldseam.options.front;
