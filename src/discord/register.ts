// Tells Discord our slash commands: npm run discord:register. Needed once, and after an upgrade that changes commands.

import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { commands } from '../../commands/index.ts'
import { ownersFolder } from '../memory/opening/owner-only.ts'
import { readConfig } from '../program/config.ts'
import { describeError } from '../program/log.ts'
import { registerCommands } from './commands/registration.ts'

async function main(): Promise<void> {
  const { DISCORD_TOKEN, DISCORD_SERVER_ID, DISCORD_API, CHARGEHAND_DATA: folder } = readConfig()
  if (DISCORD_TOKEN === undefined) throw new Error('DISCORD_TOKEN (or DISCORD_TOKEN_FILE) is needed.')
  const access = { api: DISCORD_API, token: DISCORD_TOKEN }
  const mark = join(folder, 'registering')
  const { invite, count, isNew, emptied } = await registerCommands(access, commands, DISCORD_SERVER_ID, {
    last: () => (existsSync(mark) ? readFileSync(mark, 'utf8') : undefined),
    reached: server => {
      ownersFolder(folder)
      writeFileSync(mark, server)
    },
  })
  rmSync(mark, { force: true })
  const where = DISCORD_SERVER_ID === undefined ? 'everywhere' : `in server ${DISCORD_SERVER_ID}`
  console.log(
    isNew ? `Registered ${count} commands ${where}.` : `All ${count} commands are registered ${where} as they are.`,
  )
  for (const scope of emptied) console.log(`Removed the earlier ones: ${scope}.`)
  console.log(`Invite: ${invite}`)
}

try {
  await main()
} catch (error) {
  // Not the error itself: its fields hold what was sent.
  console.error(`Nothing more was registered; the same command goes on from there. ${describeError(error).message}`)
  process.exitCode = 1
}
