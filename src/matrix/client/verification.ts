// Lets moderators who are named verify us with their app: they compare the emoji that it shows with those in our log.

import type { MatrixClient } from 'matrix-js-sdk'
import { CryptoEvent } from 'matrix-js-sdk/lib/crypto-api/index.js'
import {
  VerificationPhase,
  type VerificationRequest,
  VerificationRequestEvent,
  type Verifier,
  VerifierEvent,
} from 'matrix-js-sdk/lib/crypto-api/verification.js'
import { describeError, type Log } from '../../program/log.ts'

export function acceptVerification(client: MatrixClient, verifiers: readonly string[], log: Log): void {
  /** Held until they end: the SDK itself holds a request only weakly, so one that nobody holds can fall silent midway. */
  const open = new Set<VerificationRequest>()
  const onFault = (error: unknown) => log.warn({ error: describeError(error) }, 'a verification came to no end')

  /** We have no eyes: who compares is the moderator, with the log, and only their word counts for their app. */
  async function verify(verifier: Verifier): Promise<void> {
    verifier.on(VerifierEvent.ShowSas, ({ sas, confirm }) => {
      const emoji = sas.emoji?.map(([, name]) => name).join(', ')
      log.info({ person: verifier.userId, emoji }, 'compare these emoji with those in your app')
      confirm().catch(onFault)
    })
    await verifier.verify()
    log.info({ person: verifier.userId }, 'verified')
  }

  client.on(CryptoEvent.VerificationRequestReceived, (request: VerificationRequest) => {
    const { otherUserId } = request
    if (!verifiers.includes(otherUserId)) {
      log.info({ person: otherUserId }, 'declined a verification: MATRIX_VERIFIERS does not name them')
      request.cancel().catch(onFault)
      return
    }
    let begun: Verifier | undefined
    open.add(request)
    request.on(VerificationRequestEvent.Change, () => {
      if (begun) return
      if (request.phase === VerificationPhase.Started && request.verifier) {
        begun = request.verifier
        verify(begun)
          .catch(onFault)
          .finally(() => open.delete(request))
      } else if (!request.pending) open.delete(request)
    })
    request.accept().catch(onFault)
  })
}
