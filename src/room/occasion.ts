// Who asks in the room: whoever sits at the terminal, in the demo club, free to change what the club shares.

import { userInfo } from 'node:os'
import type { Occasion } from '../assistant/occasion.ts'
import { demoClub } from './demo-club.ts'

interface Asking {
  /** True where not said. */
  readonly moderates?: boolean
  /** Each numbered conversation is a place of its own. */
  readonly conversation?: number
}

export function roomOccasion({ moderates = true, conversation }: Asking = {}): Occasion {
  return {
    surface: 'room',
    asker: { id: 'room:pilot', name: nameAtTerminal(), moderates },
    community: { id: demoClub.id, name: demoClub.name },
    place: { id: conversation === undefined ? 'room' : `room:${conversation}`, direct: true },
  }
}

/** A user without an account entry (as in some containers) makes userInfo throw. */
function nameAtTerminal(): string {
  try {
    return userInfo().username
  } catch {
    return 'pilot'
  }
}
