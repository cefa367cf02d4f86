// Who asks in the room: whoever sits at the terminal, in the demo club, free to change what the club shares.

import { userInfo } from 'node:os'
import type { Occasion } from '../assistant/occasion.ts'
import { demoClub } from './demo-club.ts'

export function roomOccasion(): Occasion {
  return {
    surface: 'room',
    asker: { id: 'room:pilot', name: nameAtTerminal(), moderates: true },
    community: { id: demoClub.id, name: demoClub.name },
    place: { id: 'room', direct: true },
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
