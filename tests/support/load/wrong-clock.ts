// Puts the clock of the whole program wrong by CLOCK_AHEAD_S seconds: --import=./tests/support/load/wrong-clock.ts

const ahead_ms = Number(process.env.CLOCK_AHEAD_S) * 1000
const right = Date.now
const now = () => right() + ahead_ms

globalThis.Date = new Proxy(Date, {
  construct: (target, args, self) => Reflect.construct(target, args.length === 0 ? [now()] : args, self),
  get: (target, name) => (name === 'now' ? now : Reflect.get(target, name)),
})
