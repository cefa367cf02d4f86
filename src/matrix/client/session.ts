// Our login: made once, then kept in the data folder for the owner's eyes only.

import { randomBytes } from 'node:crypto'
import { mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { ConnectionError, MatrixClient, MatrixError } from 'matrix-js-sdk'
import { z } from 'zod'
import { ConfigError } from '../../program/config.ts'
import { EndingError } from '../../program/ending.ts'
import type { Log } from '../../program/log.ts'
import { quiet } from './quiet.ts'
import type { MatrixSettings } from './settings.ts'

const schema = z.object({
  homeserver: z.string(),
  userId: z.string(),
  deviceId: z.string(),
  accessToken: z.string(),
  /** Mixed into the key of the message keys. */
  salt: z.string(),
})

export type Session = z.infer<typeof schema>

/**
 * The session in `folder` where it still holds, else a new one. A new session is a new device: the keys of the
 * former one are removed, they would open nothing. Rejects where the server does not let us in.
 */
export async function openSession(settings: MatrixSettings, folder: string, log: Log): Promise<Session> {
  mkdirSync(folder, { recursive: true, mode: 0o700 })
  const file = join(folder, 'session.json')
  const kept = readSession(file)
  const former = kept && fits(kept, settings) ? await stateOf(kept) : 'ended'
  if (kept && former === 'holds') return kept

  const session = {
    ...(await logIn(settings, former === 'paused' ? kept?.deviceId : undefined)),
    homeserver: settings.homeserver,
    salt: randomBytes(16).toString('hex'),
  }
  if (kept?.deviceId === session.deviceId && kept.userId === session.userId) session.salt = kept.salt
  else removeKeys(folder)
  writeSession(file, session)
  log.info({ user: session.userId, device: session.deviceId }, 'logged in to Matrix')
  return session
}

export const keysFile = (folder: string): string => join(folder, 'keys.sqlite')

function removeKeys(folder: string): void {
  for (const ending of ['', '-wal', '-shm']) rmSync(keysFile(folder) + ending, { force: true })
}

function readSession(file: string): Session | undefined {
  try {
    return schema.parse(JSON.parse(readFileSync(file, 'utf8')))
  } catch {
    return undefined
  }
}

/** Written aside and moved into place, so that a crash leaves the old one or the new one. */
function writeSession(file: string, session: Session): void {
  writeFileSync(`${file}.new`, JSON.stringify(session), { mode: 0o600 })
  renameSync(`${file}.new`, file)
}

const fits = ({ homeserver, userId, accessToken }: Session, { homeserver: wanted, login }: MatrixSettings): boolean =>
  homeserver === wanted && ('user' in login ? userId === login.user : accessToken === login.accessToken)

/**
 * Only the server's word ends a session; while it cannot be reached, the session stands. Paused: the device is
 * still known, and a new login may take it up again.
 */
async function stateOf({ homeserver, accessToken }: Session): Promise<'holds' | 'paused' | 'ended'> {
  try {
    await new MatrixClient({ baseUrl: homeserver, accessToken, logger: quiet }).whoami()
    return 'holds'
  } catch (error) {
    if (!(error instanceof MatrixError && error.errcode === 'M_UNKNOWN_TOKEN')) return 'holds'
    return error.data.soft_logout === true ? 'paused' : 'ended'
  }
}

type Identity = Pick<Session, 'userId' | 'deviceId' | 'accessToken'>

async function logIn(settings: MatrixSettings, device: string | undefined): Promise<Identity> {
  const { homeserver, login } = settings
  try {
    return 'accessToken' in login
      ? await withToken(homeserver, login.accessToken)
      : await withPassword(settings, login, device)
  } catch (error) {
    if (error instanceof ConnectionError) {
      throw new EndingError(`MATRIX_HOMESERVER: ${homeserver} cannot be reached for the first login.`, 'later')
    }
    if (!(error instanceof MatrixError)) throw error
    const secret = 'accessToken' in login ? 'MATRIX_ACCESS_TOKEN' : 'MATRIX_PASSWORD'
    throw new EndingError(
      `${secret}: the Matrix server does not let us in (${error.errcode}: ${error.error}).`,
      'refused',
    )
  }
}

async function withToken(baseUrl: string, accessToken: string): Promise<Identity> {
  const client = new MatrixClient({ baseUrl, accessToken, logger: quiet })
  const { user_id: userId, device_id: deviceId } = await client.whoami()
  if (deviceId === undefined) throw new ConfigError('MATRIX_ACCESS_TOKEN: it belongs to no device.')
  return { userId, deviceId, accessToken }
}

async function withPassword(
  { homeserver, deviceName }: MatrixSettings,
  { user, password }: { readonly user: string; readonly password: string },
  device: string | undefined,
): Promise<Identity> {
  const answer = await new MatrixClient({ baseUrl: homeserver, logger: quiet }).loginRequest({
    type: 'm.login.password',
    identifier: { type: 'm.id.user', user },
    password,
    initial_device_display_name: deviceName,
    device_id: device,
  })
  return { userId: answer.user_id, deviceId: answer.device_id, accessToken: answer.access_token }
}
