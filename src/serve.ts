// Serves the chats that the configuration names, until it is told to stop.

import { flushCompileCache } from 'node:module'
import { withFairUse } from './assistant/running/fair-use.ts'
import { healthRoutes } from './http/health.ts'
import { createMetrics } from './http/metrics.ts'
import { createHttpServer, type Route } from './http/server.ts'
import { namedIn } from './platforms.ts'
import { type Config, redacted } from './program/config.ts'
import { endOnUncaught } from './program/crash.ts'
import { endingOf } from './program/ending.ts'
import { describeError, type Log } from './program/log.ts'
import { openAssistant } from './program/open-assistant.ts'
import { openWorkers } from './program/workers/workers.ts'

/** Resolves when all surfaces take questions. Rejects where one cannot. */
export async function serve(config: Config, log: Log): Promise<void> {
  endOnUncaught(log)
  log.info({ config: redacted(config) }, 'starting')
  const { CHARGEHAND_DATA: dataFolder, DATABASE_URL: databaseUrl } = config
  const workers = openWorkers()
  const opened = await openAssistant({ dataFolder, databaseUrl }, log, workers)
  const metrics = createMetrics(workers, opened.memory.due)
  const parts = {
    ...opened,
    assistant: metrics.measured(withFairUse(opened.assistant, Date.now)),
    draw: workers.draw,
    config,
    log,
    onClosed: end,
  }
  const platforms = await Promise.all(namedIn(config).map(({ open }) => open(parts)))
  const surfaces = platforms.flatMap(({ surface }) => surface ?? [])
  const routes = platforms.flatMap(platform => platform.routes ?? [])
  const health = healthRoutes(surfaces, opened.memory, metrics, config.CHARGEHAND_HEALTH_TOKEN)
  const { CHARGEHAND_HTTP_HOST: host, CHARGEHAND_HTTP_PORT: own, CHARGEHAND_HEALTH_PORT: ofHealth = own } = config
  const serverOn = (port: number | undefined, on: readonly Route[]) =>
    port === undefined || on.length === 0 ? [] : [createHttpServer({ host, port }, on, log)]
  const servers =
    own === ofHealth ? serverOn(own, [...health, ...routes]) : [...serverOn(own, routes), ...serverOn(ofHealth, health)]
  stopOnSignal(log, async () => {
    await Promise.all([opened.rounds.stop(), ...surfaces.map(surface => surface.stop())])
    await opened.assistant.settled()
    await workers.close()
    await Promise.all(servers.map(server => server.stop()))
    await opened.memory.close()
  })
  for (const server of servers) await server.start()
  for (const surface of surfaces) opened.ways.set(surface.name, surface)
  await Promise.all(surfaces.map(surface => surface.start()))
  opened.rounds.start()
  log.info({ surfaces: surfaces.map(({ name }) => name) }, 'ready')
  // Else it is only written at an end that nobody forces.
  flushCompileCache()
}

/** For good, where no new try would heal it: a process that only seems to live is worse than none. */
const end = (error: unknown) => process.exit(endingOf(error))

/** A container or a service manager kills what takes longer. */
const longestStop_ms = 8000

/** The first signal stops with answers finished, as far as there is time; a second one ends at once. */
function stopOnSignal(log: Log, stop: () => Promise<void>): void {
  let stopping = false
  const onSignal = (signal: string) => {
    if (stopping) process.exit(1)
    stopping = true
    log.info({ signal }, 'stopping')
    setTimeout(() => {
      log.warn('not everything under way was finished in time')
      process.exit(0)
    }, longestStop_ms)
    stop().then(
      () => process.exit(0),
      error => {
        log.error({ error: describeError(error) }, 'could not stop cleanly')
        process.exit(1)
      },
    )
  }
  process.on('SIGTERM', onSignal)
  process.on('SIGINT', onSignal)
}
