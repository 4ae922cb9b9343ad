// @ts-check
/** Reads what the server sent as points, between them. */

/**
 * The value at a place between points that rise, straight on a scale of the place.
 * @param {number[]} points
 * @param {number[]} values as many
 * @param {number} at
 * @param {(point: number) => number} scale such as Math.sqrt: on it the value is straight between two points
 */
export function along(points, values, at, scale) {
  const held = Math.min(points[points.length - 1], Math.max(points[0], at));
  const after = Math.max(1, points.findIndex((point) => point >= held));
  const [low, high] = [scale(points[after - 1]), scale(points[after])];
  const share = high > low ? (scale(held) - low) / (high - low) : 0;
  return values[after - 1] + share * (values[after] - values[after - 1]);
}
