// A bot in ten thousand servers of 15 channels: it is ready on as many shards as Discord recommends, keeps little of each, and
// answers in all of them. LOAD says how much of it.

import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { expect, test } from 'vitest'
import { slash } from '../../support/discord-events.ts'
import { serverIds } from '../../support/discord-servers.ts'
import { startFakeDiscord } from '../../support/fake-discord.ts'

const servers = Math.ceil(10_000 * Number(process.env.LOAD ?? 1))
const mostOfServer_kB = 35
const asked = 200

test('in ten thousand servers', { timeout: 300_000 }, async () => {
  const discord = await startFakeDiscord({ servers, judging: false, expiry_ms: 60_000 })
  const script = ['--expose-gc', 'tests/support/load/servers-process.ts', discord.api, discord.token]
  const bot = spawn(process.execPath, script, { stdio: ['ignore', 'pipe', 'inherit'] })
  try {
    const [line] = (await Promise.race([
      once(bot.stdout, 'data'),
      once(bot, 'exit').then(([code]) => Promise.reject(new Error(`it ended: ${code}`))),
    ])) as [Buffer]
    const { held_B, rss_B, ready_s } = JSON.parse(String(line))
    const ofServer_kB = held_B / servers / 1000
    const everyNth = serverIds(servers).filter((_, at) => at % Math.ceil(servers / asked) === 0)
    const heard = everyNth.map(guild_id => discord.send({ ...slash('help'), guild_id }))
    await Promise.all(heard.map(({ acknowledgement }) => acknowledgement))
    process.stdout.write(
      `${servers} servers on ${discord.gateway.sessions.identified} shards: ${ofServer_kB.toFixed(1)} kB each, ${(rss_B / 1e6).toFixed(0)} MB in all, ready after ${ready_s.toFixed(1)} s; asked and answered in ${heard.length} of them\n`,
    )
    expect(discord.gateway.sessions).toEqual({ identified: Math.ceil(servers / 1000), resumed: 0 })
    expect(ofServer_kB).toBeLessThanOrEqual(mostOfServer_kB)
    expect(discord.refused).toEqual([])
  } finally {
    bot.kill('SIGKILL')
    await discord.close()
  }
})

test('a connection with too many servers ends with how to mend it', { timeout: 120_000 }, async () => {
  const discord = await startFakeDiscord({ servers: 2501, judging: false })
  const script = ['tests/support/load/servers-process.ts', discord.api, discord.token, '1']
  const bot = spawn(process.execPath, script, { stdio: ['ignore', 'ignore', 'pipe'] })
  let said = ''
  bot.stderr.on('data', chunk => {
    said += chunk
  })
  try {
    expect(await once(bot, 'close')).toEqual([77, null])
    expect(said).toBe(
      'Discord closed the connection for good (4011 ShardingRequired): the bot is in too many servers for its connections. Raise CHARGEHAND_SHARDS, or leave it to Discord: auto.\n',
    )
  } finally {
    await discord.close()
  }
})
