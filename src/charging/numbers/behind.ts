// What arrives behind a resistance.

/** The current at which `power_W` arrive behind `resistance_ohm`, fed with `volts`; undefined where they never can. P = (V - R I) I. */
export function currentBehind_A(volts: number, resistance_ohm: number, power_W: number): number | undefined {
  const discriminant = volts ** 2 - 4 * resistance_ohm * power_W
  return discriminant < 0 ? undefined : (2 * power_W) / (volts + Math.sqrt(discriminant))
}
