// Whether somebody and we only answer each other: a machine may take each answer of ours for a question to it.

interface Talk {
  readonly answer: string
  readonly answeredAt_ms: number
  /** When each exchange came, by what was answered and said. */
  readonly exchanges: ReadonlyMap<string, readonly number[]>
}

const within_ms = 10 * 60_000
/** More often than people try the same, or tell of the same fire. */
const mostTimes = 10
const mostTalks = 2000
const mostExchanges = 20

/** The last of them. */
const bounded = <K, V>(map: ReadonlyMap<K, V>, most: number): Map<K, V> => new Map([...map].slice(-most))

export function createGoingRound(now_ms: () => number = Date.now) {
  let talks = new Map<string, Talk>()
  return {
    /** An answer was given to this person in this room. */
    answered(room: string, person: string, answer: string) {
      const key = `${room} ${person}`
      const exchanges = talks.get(key)?.exchanges ?? new Map()
      talks.delete(key)
      talks.set(key, { answer, answeredAt_ms: now_ms(), exchanges })
      if (talks.size > mostTalks) talks = bounded(talks, mostTalks / 2)
    },
    /** What they say after it they have said after the same answer too often. */
    again(room: string, person: string, words: string, at_ms: number) {
      const key = `${room} ${person}`
      const talk = talks.get(key)
      // What was said before our answer was seen is none to it.
      if (!talk || at_ms < talk.answeredAt_ms) return false
      const exchange = JSON.stringify([talk.answer, words])
      const before = talk.exchanges.get(exchange) ?? []
      const times = [...before, at_ms].filter(time => time > now_ms() - within_ms)
      const exchanges = bounded(new Map([...talk.exchanges, [exchange, times]]), mostExchanges)
      talks.set(key, { ...talk, exchanges })
      return times.length > mostTimes
    },
  }
}
