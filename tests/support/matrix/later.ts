// Imported before the assistant: its clock is ahead by so many seconds, as if it came back after that time.

const ahead_ms = Number(process.env.AHEAD_S ?? 0) * 1000
const Real = Date

globalThis.Date = class extends Real {
  constructor(...of: readonly unknown[]) {
    super(...((of.length === 0 ? [Real.now() + ahead_ms] : of) as [number]))
  }
  static override now(): number {
    return Real.now() + ahead_ms
  }
} as DateConstructor
