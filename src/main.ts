// Puts the parts together: configuration, memory, commands, surfaces, signals. Nothing else happens here.

import { endOnBrokenPipe } from './room/broken-pipe.ts'
import { openClubhouse } from './room/clubhouse.ts'
import { openRoom } from './room/room.ts'

endOnBrokenPipe(process.stdout)
const clubhouse = await openClubhouse()
await openRoom({ ...clubhouse, input: process.stdin, output: process.stdout })
await clubhouse.close()
